/**
 * The pattern's sheet as rings: outline counter-clockwise, holes clockwise, each hole inside the outline and clear of the
 * others. Corners are rounded as written (plane/fillet), arcs then made into chords.
 */
import { type Corner, filletedOutline } from "../plane/fillet.ts";
import type { Point } from "../plane/point.ts";
import type { PatternFault } from "./pattern.ts";
import { distanceToRing, type Region, type Ring, ringHolds, ringOf } from "./ring.ts";

export type RegionResult =
  | { readonly ok: true; readonly region: Region }
  | { readonly ok: false; readonly fault: PatternFault };

/** Sheet nearer than this to its own other edge is torn: rings that touch are one ring. */
const APART_MM = 1e-4;

/** The region, or what keeps the shapes from being one. */
export function outlineRegion(
  outline: readonly Corner[],
  holes: readonly (readonly Corner[])[],
): RegionResult {
  const shapes = [outline, ...holes].map((corners) => filletedOutline(corners));
  const rings: Ring[] = [];
  for (const [i, shape] of shapes.entries()) {
    if (!shape.ok) return refused({ kind: "shape", why: shape.fault.kind, ...(i > 0 && { hole: i - 1 }) });
    rings.push(ringOf(shape.outline));
  }
  const [outer, ...inner] = rings as [Ring, ...Ring[]];
  for (const [hole, ring] of inner.entries()) {
    const outside = ring.find((point) => !ringHolds(outer, point)) ?? touching(ring, outer);
    if (outside) return refused({ kind: "holeOutside", hole, at: outside });
    for (const [other, before] of inner.slice(0, hole).entries()) {
      const shared =
        ring.find((point) => ringHolds(before, point)) ??
        before.find((point) => ringHolds(ring, point)) ??
        touching(ring, before);
      if (shared) return refused({ kind: "holesMeet", hole: other, other: hole, at: shared });
    }
  }
  return { ok: true, region: { outer, holes: inner.map((ring) => ring.toReversed()) } };
}

/** A place where two rings cross or touch. */
function touching(a: Ring, b: Ring): Point | undefined {
  const crossing = a.findIndex((from, i) => {
    const to = a[(i + 1) % a.length]!;
    return b.some((c, j) => stepsCross(from, to, c, b[(j + 1) % b.length]!));
  });
  if (crossing >= 0) return a[crossing];
  return (
    a.find((point) => distanceToRing(b, point) < APART_MM) ??
    b.find((point) => distanceToRing(a, point) < APART_MM)
  );
}

function stepsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) > 0 !== side(a, b, d) > 0 && side(c, d, a) > 0 !== side(c, d, b) > 0;
}

function refused(fault: PatternFault): RegionResult {
  return { ok: false, fault };
}
