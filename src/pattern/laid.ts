/**
 * Pieces of sheet laid out as touchable features for the contact kernel (contact/features), from the leaf's pivot: convex
 * polygons, thin runs that lie on bed or leaf, arcs. Exact; free ends are never drawn in, faces by the inset given.
 */
import { Features } from "../contact/features.ts";
import { bordersOverlap, type Spot, sheetOverlapsBody } from "../contact/overlap.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { ArcFrame } from "./bentSlices.ts";

/** A piece ready for the kernel; `hull` is its outline from the pivot where it is convex. */
export interface Laid {
  readonly features: Features;
  readonly hull?: readonly Point[];
}

/** Overlaps less deep than this are touching (contact/overlap). */
const TOUCH_MM: Mm = 1e-7;

/** A convex polygon of the section, counter-clockwise. */
export function laidHull(ring: readonly Point[], pivot: Point): Laid {
  const hull = ring.map(({ x, y }) => ({ x: x - pivot.x, y: y - pivot.y }));
  const features = new Features(hull.length, hull.length, 0);
  hull.forEach(({ x, y }, i) => {
    const next = hull[(i + 1) % hull.length]!;
    features.addSegment(x, y, next.x, next.y, 0);
    features.addCorner(x, y, 0);
  });
  return { features, hull };
}

/** A run of sheet flat between y = 0 and y = T; `bareStart` closes it at its start too. */
export function laidRun(
  { from, to }: { readonly from: Mm; readonly to: Mm },
  thicknessMm: Mm,
  insetMm: Mm,
  pivot: Point,
  bareStart: boolean,
): Laid {
  const features = new Features(4, 4, 0);
  const [low, high] = [insetMm - pivot.y, thicknessMm - insetMm - pivot.y];
  const [start, end] = [from - pivot.x, to - pivot.x];
  // The first edge stands for the straight (contact/overlap).
  features.addSegment(start, low, end, low, 0);
  features.addSegment(end, high, start, high, 0);
  features.setCore(start, (low + high) / 2, end, (low + high) / 2);
  features.addSegment(end, low, end, high, 0);
  features.addCorner(end, low, 0);
  features.addCorner(end, high, 0);
  if (bareStart) {
    features.addSegment(start, high, start, low, 0);
    features.addCorner(start, low, 0);
    features.addCorner(start, high, 0);
  }
  return { features };
}

/** Part of a made bend's arc, between two angles from its start, closed at both ends. */
export function laidArc(
  arc: ArcFrame,
  thicknessMm: Mm,
  insetMm: Mm,
  pivot: Point,
  turnedRad: { readonly from: number; readonly to: number },
): Laid {
  const features = new Features(2, 5, 1);
  const [x, y] = [arc.center.x - pivot.x, arc.center.y - pivot.y];
  const [inner, outer] = [arc.insideRadiusMm + insetMm, arc.insideRadiusMm + thicknessMm - insetMm];
  const middle = arc.startRad + (arc.way * (turnedRad.from + turnedRad.to)) / 2;
  const [mx, my] = [Math.cos(middle), Math.sin(middle)];
  const cosHalf = Math.cos((turnedRad.to - turnedRad.from) / 2);
  features.addRound({ x, y, mx, my, cosHalf }, outer, 0);
  features.addHollow({ x, y, mx, my, cosHalf }, inner, 0);
  for (const end of ["from", "to"] as const) {
    const at = arc.startRad + arc.way * turnedRad[end];
    const [dx, dy] = [Math.cos(at), Math.sin(at)];
    const [a, b] = [
      { x: x + inner * dx, y: y + inner * dy },
      { x: x + outer * dx, y: y + outer * dy },
    ];
    features.addCorner(a.x, a.y, 0);
    features.addCorner(b.x, b.y, 0);
    // Led inward or outward so that the sheet lies to the left.
    if ((end === "from") === arc.way > 0) features.addSegment(a.x, a.y, b.x, b.y, 0);
    else features.addSegment(b.x, b.y, a.x, a.y, 0);
  }
  return { features };
}

/** Whether a piece overlaps a body of the brake where it stands. */
export function overlapsBody({ features, hull }: Laid, body: SolidBody, spot: Spot): boolean {
  if (!hull) return sheetOverlapsBody(features, body, spot);
  const B = body.features;
  if (features.minX >= B.maxX || B.minX >= features.maxX) return false;
  if (features.minY >= B.maxY || B.minY >= features.maxY) return false;
  if (bordersOverlap(features, B, spot)) return true;
  // Borders that only run along each other don't cross: what of the body lies in the hull tells.
  const shared = clippedTo(hull, body);
  if (shared.length < 3) return false;
  spot.x = shared.reduce((sum, { x }) => sum + x, 0) / shared.length;
  spot.y = shared.reduce((sum, { y }) => sum + y, 0) / shared.length;
  return true;
}

/** What of a body lies in a convex hull by more than a touch; of a hollow body bridges of no width may be left. */
function clippedTo(hull: readonly Point[], body: SolidBody): Point[] {
  let ring: Point[] = [];
  for (let i = 0; i < body.pieces.length; i += 4) ring.push({ x: body.pieces[i]!, y: body.pieces[i + 1]! });
  for (const [i, from] of hull.entries()) {
    const to = hull[(i + 1) % hull.length]!;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const depth = ({ x, y }: Point) =>
      ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / length - TOUCH_MM;
    ring = ring.flatMap((point, j) => {
      const next = ring[(j + 1) % ring.length]!;
      const [a, b] = [depth(point), depth(next)];
      const kept = a > 0 ? [point] : [];
      if (a > 0 === b > 0) return kept;
      const t = a / (a - b);
      return [...kept, { x: point.x + t * (next.x - point.x), y: point.y + t * (next.y - point.y) }];
    });
    if (ring.length < 3) return [];
  }
  const area = ring.reduce((sum, { x, y }, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return sum + x * next.y - y * next.x;
  }, 0);
  return Math.abs(area) > 2 * LEAST_AREA_MM2 ? ring : [];
}

/** Less shared area is the rounding of bridges. */
const LEAST_AREA_MM2 = 1e-7;

/** Whether two pieces of sheet overlap where they stand. */
export function laidOverlap(a: Laid, b: Laid, spot: Spot): boolean {
  if (bordersOverlap(a.features, b.features, spot)) return true;
  if (!a.hull || !b.hull || parted(a.hull, b.hull) || parted(b.hull, a.hull)) return false;
  [spot.x, spot.y] = [a.hull[0]!.x, a.hull[0]!.y];
  return true;
}

/** Whether an edge of one convex hull has all of the other on its outer side. */
function parted(a: readonly Point[], b: readonly Point[]): boolean {
  return a.some((from, i) => {
    const to = a[(i + 1) % a.length]!;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return b.every(
      ({ x, y }) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) <= TOUCH_MM * length,
    );
  });
}
