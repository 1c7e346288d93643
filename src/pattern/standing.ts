/**
 * Heights at which a piece of sheet, raised where it stands, overlaps a body of the brake: for sliding it out along the
 * bend line. Between two corners both outlines are straight, so the heights of such a strip are one interval; together
 * they are all. Bends are taken in convex pieces a hair larger than they are (contact/sweptPiece).
 */
import type { BlockedHeights } from "../contact/blockedHeights.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import { bendCorners } from "../contact/sweptPiece.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Laid } from "./laid.ts";

/** Strips narrower than this hold nothing. */
const NARROW_MM: Mm = 1e-7;

/**
 * Adds the heights at which a piece overlaps a body: `up` +1 where the piece rises past it, −1 where the body (the clamp)
 * rises past the piece. With `forGood` every height above is blocked too: what rises can't pass.
 */
export function blockStanding(
  laid: Laid,
  body: SolidBody,
  up: 1 | -1,
  out: BlockedHeights,
  forGood: boolean,
): void {
  for (const hull of hullsOf(laid)) {
    const mine = edgesOf(hull);
    const its: Edge[] = [];
    for (let i = 0; i < body.pieces.length; i += 4) {
      const [x1, y1, x2, y2] = body.pieces.subarray(i, i + 4) as unknown as [number, number, number, number];
      its.push({ x1, y1, x2, y2 });
    }
    const [from, to] = [Math.min(...hull.map(({ x }) => x)), Math.max(...hull.map(({ x }) => x))];
    const xs = [...hull.map(({ x }) => x), ...its.map(({ x1 }) => x1)].filter((x) => x >= from && x <= to);
    xs.sort((a, b) => a - b);
    for (let i = 1; i < xs.length; i++) {
      const [left, right] = [xs[i - 1]!, xs[i]!];
      if (right - left < NARROW_MM) continue;
      const [low, high] = across(mine, left, right) as [Edge, Edge];
      const borders = across(its, left, right);
      for (let b = 0; b + 1 < borders.length; b += 2) {
        const [under, over] = [borders[b]!, borders[b + 1]!];
        const heights = [left, right].map((x) => {
          const [a1, a2, b1, b2] = [low, high, under, over].map((edge) => heightAt(edge, x)) as [
            number,
            number,
            number,
            number,
          ];
          return up > 0 ? [b1 - a2, b2 - a1] : [a1 - b2, a2 - b1];
        });
        const least = Math.min(...heights.map(([lo]) => lo!));
        const most = Math.max(...heights.map(([, hi]) => hi!));
        if (most > 0) out.add(least, forGood ? Infinity : most);
      }
    }
  }
}

interface Edge {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** A piece as convex outlines. */
function hullsOf({ features, hull }: Laid): (readonly Point[])[] {
  if (hull) return [hull];
  if (features.hollows > 0) return bendCorners(features);
  const { minX, minY, maxX, maxY } = features;
  return [
    [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ],
  ];
}

function edgesOf(hull: readonly Point[]): Edge[] {
  return hull.map(({ x, y }, i) => {
    const next = hull[(i + 1) % hull.length]!;
    return { x1: x, y1: y, x2: next.x, y2: next.y };
  });
}

/** Edges that lead over a strip, from low to high. */
function across(edges: readonly Edge[], left: number, right: number): Edge[] {
  const middle = (left + right) / 2;
  return edges
    .filter(({ x1, x2 }) => Math.min(x1, x2) < middle && Math.max(x1, x2) > middle)
    .sort((a, b) => heightAt(a, middle) - heightAt(b, middle));
}

function heightAt({ x1, y1, x2, y2 }: Edge, x: number): number {
  return y1 + ((x - x1) * (y2 - y1)) / (x2 - x1);
}
