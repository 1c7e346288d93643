/**
 * The convex hull of points, counter-clockwise: lowest chain from the left, then back along the top (Andrew's monotone
 * chain, from memory). Exact but for rounding; points within 1e-12 mm² of an edge are left out.
 */
import type { Point } from "./point.ts";

const FLAT_MM2 = 1e-12;

/** @example convexHull([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 1, y: 0.5 }, { x: 1, y: 2 }]).length // 3 */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const hull: Point[] = [];
  for (const point of sorted) addTo(hull, point, 1);
  const low = hull.length;
  for (let i = sorted.length - 2; i >= 0; i--) addTo(hull, sorted[i]!, low);
  // Back at the start.
  hull.pop();
  return hull;
}

/** Goes on round the hull; corners before `kept` stay. */
function addTo(hull: Point[], point: Point, kept: number): void {
  while (hull.length > kept && turn(hull[hull.length - 2]!, hull[hull.length - 1]!, point) <= FLAT_MM2)
    hull.pop();
  hull.push(point);
}

/** Twice the area to the left of a→b→c. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
