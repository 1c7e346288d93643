/**
 * Boxes and pieces of line in canvas points (y down), for finding labels a place. Exact; a line counts as inside a box as
 * soon as it runs through it or within `air` of it, square at the corners.
 */
import type { Point } from "../../src/plane/point.ts";

export interface Box {
  /** Its middle. */
  readonly x: number;
  readonly y: number;
  readonly halfWide: number;
  readonly halfHigh: number;
}

export type Piece = readonly [Point, Point];

/** Whether two boxes share room, or stand nearer than `air` in both ways. */
export function boxesOverlap(a: Box, b: Box, air = 0): boolean {
  return (
    Math.abs(a.x - b.x) < a.halfWide + b.halfWide + air - 1e-6 &&
    Math.abs(a.y - b.y) < a.halfHigh + b.halfHigh + air - 1e-6
  );
}

/** Whether a box lies in a canvas from 0, 0 to its size, at least 2 points off the rim. */
export function boxInside(box: Box, width: number, height: number): boolean {
  return (
    box.x >= box.halfWide + 2 &&
    box.x <= width - box.halfWide - 2 &&
    box.y >= box.halfHigh + 2 &&
    box.y <= height - box.halfHigh - 2
  );
}

/** The share of a piece from which to which it lies in a box wider by `air`; null where it misses. After Liang and Barsky. */
export function shareInBox([a, b]: Piece, box: Box, air = 0): readonly [number, number] | null {
  let [from, to] = [0, 1];
  for (const [start, end, middle, half] of [
    [a.x, b.x, box.x, box.halfWide + air],
    [a.y, b.y, box.y, box.halfHigh + air],
  ] as const) {
    const run = end - start;
    const [low, high] = [middle - half - start, middle + half - start];
    if (Math.abs(run) < 1e-12) {
      if (low > 0 || high < 0) return null;
      continue;
    }
    from = Math.max(from, Math.min(low / run, high / run));
    to = Math.min(to, Math.max(low / run, high / run));
    if (from > to) return null;
  }
  return [from, to];
}

/** Whether a piece runs through a box, or within `air` of it: no line along the box's sides or the piece parts them. */
export function throughBox([a, b]: Piece, box: Box, air = 0): boolean {
  const [wide, high] = [box.halfWide + air, box.halfHigh + air];
  const x = (a.x + b.x) / 2 - box.x;
  const y = (a.y + b.y) / 2 - box.y;
  const runX = Math.abs(b.x - a.x) / 2;
  const runY = Math.abs(b.y - a.y) / 2;
  if (Math.abs(x) > wide + runX || Math.abs(y) > high + runY) return false;
  return Math.abs(((b.x - a.x) * y - (b.y - a.y) * x) / 2) <= wide * runY + high * runX;
}

/** How far a box reaches from its middle in a direction. */
export function reachOf({ halfWide, halfHigh }: Pick<Box, "halfWide" | "halfHigh">, { x, y }: Point): number {
  return Math.min(halfWide / Math.max(Math.abs(x), 1e-9), halfHigh / Math.max(Math.abs(y), 1e-9));
}

/** Distance of a point from a piece of line. */
export function awayFrom(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}

/** Whether two pieces cross. */
export function cross([a, b]: Piece, [c, d]: Piece): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Whether two pieces come within `air` of each other. */
export function near(one: Piece, other: Piece, air: number): boolean {
  if (apart(one[0].x, one[1].x, other[0].x, other[1].x, air)) return false;
  if (apart(one[0].y, one[1].y, other[0].y, other[1].y, air)) return false;
  return (
    cross(one, other) ||
    awayFrom(one[0], other[0], other[1]) < air ||
    awayFrom(one[1], other[0], other[1]) < air ||
    awayFrom(other[0], one[0], one[1]) < air ||
    awayFrom(other[1], one[0], one[1]) < air
  );
}

const apart = (a: number, b: number, c: number, d: number, air: number) =>
  Math.max(a, b) + air < Math.min(c, d) || Math.max(c, d) + air < Math.min(a, b);
