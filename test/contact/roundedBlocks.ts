/**
 * Blocks with rounded corners, anywhere and askew, and how far apart two of them are: a rounded block is its inner block grown
 * by the radius, so two are as far apart as their inner blocks less both radii. Source: Minkowski sums; plane geometry.
 */
import fc from "fast-check";
import { type Features, featuresOf } from "../../src/contact/features.ts";
import { between } from "./roughJob.ts";
import { outlineOf } from "./shapes.ts";

export type Point = readonly [number, number];

export interface RoundedBlock {
  /** Corners of the inner block, counter-clockwise. */
  readonly inner: readonly Point[];
  readonly radius: number;
  readonly features: Features;
}

export function roundedBlock(
  x: number,
  y: number,
  halfLong: number,
  halfHigh: number,
  radius: number,
  askew: number,
): RoundedBlock {
  const corners = (less: number): Point[] =>
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ].map(([sx, sy]): Point => turned([sx! * (halfLong - less), sy! * (halfHigh - less)], askew, x, y));
  const outline = outlineOf(...corners(0).map(([px, py]) => [px, py, radius] as const));
  return { inner: corners(radius), radius, features: featuresOf(outline, { x: 0, y: 0 }) };
}

/** A point turned about the origin, then shifted. */
export function turned([x, y]: Point, angle: number, dx = 0, dy = 0): Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * x - s * y + dx, s * x + c * y + dy];
}

export function pointToSegment([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((px - ax) * dx + (py - ay) * dy) / square));
  return Math.hypot(px - ax - t * dx, py - ay - t * dy);
}

/** Distance of two convex polygons; 0 where they overlap, by separating lines along their sides. */
export function polygonDistance(A: readonly Point[], B: readonly Point[]): number {
  if (!sideParts(A, B) && !sideParts(B, A)) return 0;
  let least = Infinity;
  for (const [one, other] of [
    [A, B],
    [B, A],
  ] as const)
    for (const point of one)
      for (let i = 0; i < other.length; i++)
        least = Math.min(least, pointToSegment(point, other[i]!, other[(i + 1) % other.length]!));
  return least;
}

/** Whether all of B lies beyond the line of some side of A. */
function sideParts(A: readonly Point[], B: readonly Point[]): boolean {
  return A.some(([ax, ay], i) => {
    const [bx, by] = A[(i + 1) % A.length]!;
    return B.every(([x, y]) => (bx - ax) * (y - ay) - (by - ay) * (x - ax) <= 0);
  });
}

/** Distance from a point to the block's border. */
export function offBorder(point: Point, { inner, radius }: RoundedBlock): number {
  return Math.abs(
    Math.min(...inner.map((a, i) => pointToSegment(point, a, inner[(i + 1) % inner.length]!))) - radius,
  );
}

/** Sizes of 1 to 8, sharp or rounded, straight or askew. */
const sizes = fc.record({
  long: between(0.5, 4),
  high: between(0.5, 4),
  round: fc.oneof(fc.constant(0), between(0.05, 0.9)),
  askew: fc.oneof(fc.constant(0), between(0, Math.PI)),
});

/** A block `out` from the origin in the direction `at`, to be given a size. */
export function blockOf(
  out: number,
  at: number,
  { long, high, round, askew }: { long: number; high: number; round: number; askew: number },
): RoundedBlock {
  const radius = round * Math.min(long, high);
  return roundedBlock(out * Math.cos(at), out * Math.sin(at), long, high, radius, askew);
}

/** Two blocks, the second ahead of the first by the angle `ahead` and `beyond` farther out. */
export function blockPairs(
  out: readonly [number, number],
  ahead: readonly [number, number],
  beyond: number,
): fc.Arbitrary<readonly [RoundedBlock, RoundedBlock]> {
  return fc
    .record({
      out: between(...out),
      at: between(-0.5, 2),
      ahead: between(...ahead),
      beyond: between(-beyond, beyond),
      one: sizes,
      other: sizes,
    })
    .map(({ out, at, ahead, beyond, one, other }) => [
      blockOf(out, at, one),
      blockOf(Math.abs(out + beyond), at + ahead, other),
    ]);
}
