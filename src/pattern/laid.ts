/**
 * Pieces of sheet laid out as touchable features for the contact kernel (contact/features), from the leaf's pivot: convex
 * polygons, thin runs that lie on bed or leaf, arcs. Exact; free ends are never drawn in, faces by the inset given.
 */
import { Features } from "../contact/features.ts";
import { bordersOverlap, type Spot, sheetOverlapsBody } from "../contact/overlap.ts";
import type { Box } from "../contact/sector.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { ArcFrame } from "./bentSlices.ts";
import { boxesApart } from "./boxesApart.ts";

/** A piece of sheet: the box round it and its nearest and farthest from the pivot, and what of it can touch. */
export interface Laid extends Box {
  readonly near: Mm;
  readonly far: Mm;
  readonly features: Features;
  /** Its outline from the pivot where it is convex. */
  readonly hull?: readonly Point[];
}

/** Overlaps less deep than this are touching (contact/overlap). */
const TOUCH_MM: Mm = 1e-7;

/** A convex polygon of the section, counter-clockwise. Most are told apart by their boxes: the rest is made when asked for. */
class LaidHull implements Laid {
  readonly hull: readonly Point[];
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
  readonly near: Mm;
  readonly far: Mm;
  private made: Features | undefined;

  constructor(ring: readonly Point[], pivot: Point) {
    const hull: Point[] = [];
    let [minX, minY, maxX, maxY, far] = [Infinity, Infinity, -Infinity, -Infinity, 0];
    for (const point of ring) {
      const [x, y] = [point.x - pivot.x, point.y - pivot.y];
      hull.push({ x, y });
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
      far = Math.max(far, x * x + y * y);
    }
    this.hull = hull;
    [this.minX, this.minY, this.maxX, this.maxY] = [minX, minY, maxX, maxY];
    // Of what lies all to one side of the pivot the box is no nearer.
    this.near = Math.hypot(Math.max(minX, -maxX, 0), Math.max(minY, -maxY, 0));
    this.far = Math.sqrt(far);
  }

  get features(): Features {
    this.made ??= hullFeatures(this.hull);
    return this.made;
  }
}

function hullFeatures(hull: readonly Point[]): Features {
  const features = new Features(hull.length, hull.length, 0);
  hull.forEach(({ x, y }, i) => {
    const next = hull[(i + 1) % hull.length]!;
    features.addSegment(x, y, next.x, next.y, 0);
    features.addCorner(x, y, 0);
  });
  return features;
}

/** A convex polygon of the section, counter-clockwise. */
export function laidHull(ring: readonly Point[], pivot: Point): Laid {
  return new LaidHull(ring, pivot);
}

/** A piece of which all that can touch is known. */
export function laidAs(features: Features): Laid {
  const { minX, minY, maxX, maxY, near, far } = features;
  return { minX, minY, maxX, maxY, near, far, features };
}

/** Whether a piece keeps nearer to the pivot, or farther from it, than all of another, by more than it slides. */
export function isOutOfReach(
  { near, far }: Pick<Laid, "near" | "far">,
  fixed: Pick<Laid, "near" | "far">,
  slideMm: Mm,
): boolean {
  return near - slideMm > fixed.far || far + slideMm < fixed.near;
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
  return laidAs(features);
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
  return laidAs(features);
}

/** Whether a piece overlaps a body of the brake where it stands. */
export function overlapsBody(laid: Laid, body: SolidBody, spot: Spot): boolean {
  const B = body.features;
  if (boxesApart(laid, B)) return false;
  const { features, hull } = laid;
  if (!hull) return sheetOverlapsBody(features, body, spot);
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
  if (boxesApart(a, b)) return false;
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
