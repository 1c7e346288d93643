/**
 * The convex hull of points, counter-clockwise: lowest chain from the left, then back along the top (Andrew's monotone
 * chain, from memory). Exact but for rounding; points within 1e-12 mm² of an edge are left out.
 */
import type { Point } from "./point.ts";

const FLAT_MM2 = 1e-12;

/** @example convexHull([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 1, y: 0.5 }, { x: 1, y: 2 }]).length // 3 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const low = halfHull(sorted);
  const high = halfHull(sorted.reverse());
  return [...low.slice(0, -1), ...high.slice(0, -1)];
}

function halfHull(sorted: readonly Point[]): Point[] {
  const run: Point[] = [];
  for (const point of sorted) {
    while (run.length > 1 && turn(run.at(-2) as Point, run.at(-1) as Point, point) <= FLAT_MM2) run.pop();
    run.push(point);
  }
  return run;
}

/** Twice the area to the left of a→b→c. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
