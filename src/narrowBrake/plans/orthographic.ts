/**
 * The whole brake from the front and from the top with hidden edges dashed: every piece shows as its box or as a circle, and
 * an edge is hidden where a nearer piece covers it. Third-angle projection.
 * Exact for boxes and for rounds seen along or square to their axis, which all of them are.
 */
import type { Mark } from "../../drawing/model.ts";
import type { Point } from "../../plane/point.ts";
import type { Mm } from "../../units/quantity.ts";
import { type Box, boxOfShape, isRound, type Piece } from "../solid.ts";

export type Side = "front" | "top";

interface Flat {
  readonly min: Point;
  readonly max: Point;
  /** How near to the viewer. */
  readonly near: Mm;
  /** Radius where it is seen as a circle. */
  readonly radius: Mm;
}

/** Marks of a view; w runs to the right, y (or −x, from the top) up. */
export function viewFrom(side: Side, pieces: readonly Piece[]): Mark[] {
  const flats = pieces.map((piece) => flatOf(side, piece));
  return flats.flatMap((flat, i) => {
    const covers = flats.filter((other, k) => k !== i && other.near > flat.near + 1e-6);
    return flat.radius > 0
      ? circleMarks(flat, covers)
      : edgesOf(flat).flatMap((edge) => splitEdge(edge, covers));
  });
}

/** The box of a piece as seen. */
export function seenBox(side: Side, box: Box): { readonly min: Point; readonly max: Point } {
  return side === "front"
    ? { min: { x: box.min[2], y: box.min[1] }, max: { x: box.max[2], y: box.max[1] } }
    : { min: { x: box.min[2], y: -box.max[0] }, max: { x: box.max[2], y: -box.min[0] } };
}

function flatOf(side: Side, { shape }: Piece): Flat {
  const box = boxOfShape(shape);
  const axis = side === "front" ? 0 : 1;
  const seenAlong = isRound(shape) && Math.abs(shape.to[axis] - shape.from[axis]) > 1e-6;
  return { ...seenBox(side, box), near: box.max[axis], radius: seenAlong ? shape.diameter / 2 : 0 };
}

type Edge = readonly [Point, Point];

function edgesOf({ min, max }: Flat): Edge[] {
  const corners = [min, { x: max.x, y: min.y }, max, { x: min.x, y: max.y }];
  return corners.map((from, i) => [from, corners[(i + 1) % 4]!] as const);
}

/** The parts of an edge that nearer pieces cover are hidden. */
function splitEdge([a, b]: Edge, covers: readonly Flat[]): Mark[] {
  const cuts = new Set([0, 1]);
  const spans = covers.flatMap((cover) => {
    const span = coveredSpan(a, b, cover);
    if (span === undefined) return [];
    cuts.add(span[0]).add(span[1]);
    return [span];
  });
  const at = (t: number) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
  const sorted = [...cuts].sort((p, q) => p - q);
  const runs: { hidden: boolean; from: number; to: number }[] = [];
  for (let i = 1; i < sorted.length; i++) {
    const [from, to] = [sorted[i - 1]!, sorted[i]!];
    const middle = (from + to) / 2;
    const hidden = spans.some(([low, high]) => middle > low && middle < high);
    const last = runs.at(-1);
    if (last && last.hidden === hidden) last.to = to;
    else runs.push({ hidden, from, to });
  }
  return runs.map(({ hidden, from, to }) => ({
    kind: "line",
    layer: hidden ? "hidden" : "edge",
    from: at(from),
    to: at(to),
  }));
}

/** Where along an upright or level edge a nearer piece covers it; edges on its rim stay seen. */
function coveredSpan(a: Point, b: Point, { min, max, radius }: Flat): readonly [number, number] | undefined {
  const level = Math.abs(a.y - b.y) < 1e-9;
  const fixed = level ? a.y : a.x;
  const [low, high] = level ? [min.y, max.y] : [min.x, max.x];
  if (fixed <= low + 1e-6 || fixed >= high - 1e-6) return undefined;
  let [from, to] = level ? [min.x, max.x] : [min.y, max.y];
  if (radius > 0) {
    const half = Math.sqrt(Math.max(0, radius ** 2 - (fixed - (low + high) / 2) ** 2));
    const middle = (from + to) / 2;
    [from, to] = [middle - half, middle + half];
  }
  const [start, end] = level ? [a.x, b.x] : [a.y, b.y];
  if (Math.abs(end - start) < 1e-9) return undefined;
  const ts = [(from - start) / (end - start), (to - start) / (end - start)].sort((p, q) => p - q);
  const [t0, t1] = [Math.max(0, ts[0]!), Math.min(1, ts[1]!)];
  return t1 > t0 + 1e-9 ? [t0, t1] : undefined;
}

/** A circle is hidden as a whole where its middle is covered. */
function circleMarks({ min, max, radius }: Flat, covers: readonly Flat[]): Mark[] {
  const center = { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 };
  const hidden = covers.some((cover) =>
    cover.radius > 0
      ? false
      : center.x > cover.min.x && center.x < cover.max.x && center.y > cover.min.y && center.y < cover.max.y,
  );
  return [
    { kind: "arc", layer: hidden ? "hidden" : "edge", center, radius, startRad: 0, sweepRad: 2 * Math.PI },
  ];
}
