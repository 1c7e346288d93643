/**
 * The area that two outlines share. An outline is what lies under its edges led to the left less what lies under those led to
 * the right; so the shared area is the signed sum, over pairs of edges, of what lies under both. Exact for straight edges,
 * arcs in chords within 0.001 mm. For where something is looked over once.
 */
import type { Mm } from "../units/quantity.ts";
import type { Outline } from "./outline.ts";
import type { Point } from "./point.ts";

const STRAY_MM: Mm = 0.001;

interface Chord {
  readonly from: Point;
  readonly to: Point;
}

/** Area that two outlines share, in mm²; 0 within rounding where they only touch. */
export function commonArea(a: Outline, b: Outline): number {
  const [chordsA, chordsB] = [chordsOf(a), chordsOf(b)];
  const base = Math.min(...[...chordsA, ...chordsB].map(({ from }) => from.y));
  let area = 0;
  for (const one of chordsA) for (const other of chordsB) area += underBoth(one, other, base);
  return area;
}

function chordsOf({ edges }: Outline): Chord[] {
  return edges.flatMap((edge): Chord[] => {
    if (edge.kind === "line") return [edge];
    const { center, radius, startRad, sweepRad, from, to } = edge;
    const most = 2 * Math.acos(Math.max(0, 1 - STRAY_MM / radius));
    const count = Math.max(1, Math.ceil(Math.abs(sweepRad) / most));
    const points = Array.from({ length: count + 1 }, (_, i): Point => {
      if (i === 0 || i === count) return i === 0 ? from : to;
      const turned = startRad + (sweepRad * i) / count;
      return { x: center.x + radius * Math.cos(turned), y: center.y + radius * Math.sin(turned) };
    });
    return points.slice(1).map((point, i) => ({ from: points[i]!, to: point }));
  });
}

/** What lies above `base` and under both, less than 0 where they are led opposite ways. */
function underBoth(a: Chord, b: Chord, base: Mm): number {
  const left = Math.max(Math.min(a.from.x, a.to.x), Math.min(b.from.x, b.to.x));
  const right = Math.min(Math.max(a.from.x, a.to.x), Math.max(b.from.x, b.to.x));
  if (right <= left) return 0;
  const sign = Math.sign(a.to.x - a.from.x) * Math.sign(b.to.x - b.from.x);
  const [a0, a1, b0, b1] = [at(a, left), at(a, right), at(b, left), at(b, right)].map((y) => y - base) as [
    number,
    number,
    number,
    number,
  ];
  const [before, after] = [a0 - b0, a1 - b1];
  const wide = right - left;
  if (before * after >= 0) return sign * (wide / 2) * (before + after <= 0 ? a0 + a1 : b0 + b1);
  // They cross: up to there the one is lower, from there the other.
  const part = before / (before - after);
  const crossing = a0 + part * (a1 - a0);
  const [low, high] = before < 0 ? [a0, b1] : [b0, a1];
  return sign * (wide / 2) * (part * (low + crossing) + (1 - part) * (crossing + high));
}

function at({ from, to }: Chord, x: Mm): Mm {
  return from.y + ((x - from.x) / (to.x - from.x)) * (to.y - from.y);
}
