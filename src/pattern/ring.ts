/**
 * Closed rings of points in the blank: arcs made into chords, areas, what lies within. A ring run counter-clockwise has
 * its sheet inside; a hole is run clockwise, so that the sheet lies to the left of both.
 * Chords leave their arcs by at most 0.005 mm; all else is exact to rounding.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

export type Ring = readonly Point[];

/** Sheet in the plane: its outer ring, counter-clockwise, and its holes, clockwise. */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

/** Half the 0.01 mm to which curves of a pattern are flattened. */
const CHORD_OFF_MM: Mm = 0.005;

/** The outline's corners, its arcs in chords; run as the outline is. */
export function ringOf({ edges }: Outline): Ring {
  return edges.flatMap((edge): Point[] => {
    if (edge.kind === "line") return [edge.from];
    const { center, radius, startRad, sweepRad } = edge;
    const step = 2 * Math.acos(Math.max(0.5, 1 - CHORD_OFF_MM / radius));
    const count = Math.max(2, Math.ceil(Math.abs(sweepRad) / step));
    return Array.from({ length: count }, (_, i) => {
      const at = startRad + (sweepRad * i) / count;
      return { x: center.x + radius * Math.cos(at), y: center.y + radius * Math.sin(at) };
    });
  });
}

/** Area by the shoelace sum: positive where the ring runs counter-clockwise. */
export function signedArea(ring: Ring): number {
  const base = ring[0]!;
  let twice = 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[i + 1]!];
    twice += (a.x - base.x) * (b.y - base.y) - (b.x - base.x) * (a.y - base.y);
  }
  return twice / 2;
}

/** Area of the sheet in mm². */
export function regionArea({ outer, holes }: Region): number {
  return holes.reduce((sum, hole) => sum + signedArea(hole), signedArea(outer));
}

/** Whether a point lies inside a ring, whichever way it runs: a ray to the right crosses it an odd number of times. */
export function ringHolds(ring: Ring, { x, y }: Point): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [a, b] = [ring[i]!, ring[j]!];
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)) inside = !inside;
  }
  return inside;
}

/** Whether a point lies in the sheet. @example regionHolds({ outer: square, holes: [] }, { x: 1, y: 1 }) */
export function regionHolds({ outer, holes }: Region, point: Point): boolean {
  return ringHolds(outer, point) && !holes.some((hole) => ringHolds(hole, point));
}

/** Distance from a point to the nearest edge of a ring. */
export function distanceToRing(ring: Ring, { x, y }: Point): Mm {
  let best = Infinity;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const long = dx * dx + dy * dy;
    const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / long));
    best = Math.min(best, Math.hypot(x - a.x - t * dx, y - a.y - t * dy));
  });
  return best;
}

/** The ring without points that lie in line with their neighbours, within 1e-7 mm. */
export function withoutInLine(ring: Ring): Ring {
  const kept = [...ring];
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const before = kept[(i + kept.length - 1) % kept.length]!;
    const after = kept[(i + 1) % kept.length]!;
    const [point, long] = [kept[i]!, Math.hypot(after.x - before.x, after.y - before.y)];
    const off = (point.x - before.x) * (after.y - before.y) - (point.y - before.y) * (after.x - before.x);
    if (Math.abs(off) > 1e-7 * Math.max(long, 1e-7)) i++;
    else {
      kept.splice(i, 1);
      i = Math.max(0, i - 1);
    }
  }
  return kept;
}
