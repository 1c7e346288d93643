/**
 * Overlap and distance of two shapes. Overlap is JSTS's word: an intersection of some area; touching is none.
 * A plain vertex-against-edge distance, written here, says cheaply when two shapes are surely apart.
 */
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import RelateOp from "jsts/org/locationtech/jts/operation/relate/RelateOp.js";
import { boxOf, placed, type Shape } from "./shape.ts";

/** Area in mm² under which two shapes only touch: what rounding leaves of shapes of this size, and never more than … */
const NO_AREA_OF_SQUARE = 1e-14;
const NO_AREA = 1e-10;

function noArea(a: Shape, b: Shape): number {
  let size = 0;
  for (const shape of [a, b]) for (const at of shape) size = Math.max(size, Math.abs(at));
  return Math.min(NO_AREA, NO_AREA_OF_SQUARE * size * size);
}

const factory = new GeometryFactory();

/** The shape as a JSTS polygon. */
export function toJsts(shape: Shape) {
  const ring: Coordinate[] = [];
  for (let i = 0; i < shape.length; i += 2) ring.push(new Coordinate(shape[i]!, shape[i + 1]!));
  ring.push(new Coordinate(shape[0]!, shape[1]!));
  return factory.createPolygon(factory.createLinearRing(ring));
}

/** True where the two shapes share some area. */
export function overlaps(a: Shape, b: Shape): boolean {
  try {
    return shareArea(a, b);
  } catch {
    // JSTS gives up where two borders meet in too many places at once; a nudge parts them.
    return shareArea(placed(a, 0, 1.3e-8, 0.7e-8), b);
  }
}

/** Depth in mm up to which two shapes, one of them convex, touch for sure: rounding at the size of a metre is less. */
const NO_DEPTH = 1e-11;

/**
 * How far apart two shapes surely are; 0 where they touch, −1 where they share some area. Where an edge of a convex shape
 * leaves the other on its far side nothing is shared, and JSTS need not be asked.
 */
export function roomBetween(a: Shape, aConvex: boolean, b: Shape, bConvex: boolean): number {
  const box = boxGap(boxOf(a), boxOf(b));
  if (box > 0) return box;
  const gap = Math.max(aConvex ? edgeGap(a, b) : -Infinity, bConvex ? edgeGap(b, a) : -Infinity);
  if (gap > -NO_DEPTH) return Math.max(0, gap);
  const { gap: apart } = distance(a, b);
  if (apart > 0) return apart;
  return overlaps(a, b) ? -1 : 0;
}

function shareArea(a: Shape, b: Shape): boolean {
  const [ga, gb] = [toJsts(a), toJsts(b)];
  return RelateOp.intersects(ga, gb) && OverlayOp.intersection(ga, gb).getArea() > noArea(a, b);
}

/** Widest gap that an edge of the first (convex) shape leaves to the second; above 0 they are surely apart. */
function edgeGap(convex: Shape, other: Shape): number {
  let widest = -Infinity;
  for (let i = 0; i < convex.length; i += 2) {
    const j = i + 2 === convex.length ? 0 : i + 2;
    const [x, y] = [convex[i]!, convex[i + 1]!];
    const [ex, ey] = [convex[j]! - x, convex[j + 1]! - y];
    const length = Math.hypot(ex, ey);
    // An edge this short has no direction worth the name.
    if (length < 1e-6) continue;
    let nearest = Infinity;
    for (let k = 0; k < other.length; k += 2) {
      const out = (ey * (other[k]! - x) - ex * (other[k + 1]! - y)) / length;
      if (out < nearest) nearest = out;
      if (nearest <= widest) break;
    }
    if (nearest > widest) widest = nearest;
  }
  return widest;
}

/** Distance between the boxes round two shapes; 0 where they overlap. */
export function boxGap(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(Math.max(0, a[0]! - b[2]!, b[0]! - a[2]!), Math.max(0, a[1]! - b[3]!, b[1]! - a[3]!));
}

/** A lower bound of the distance between two shapes, above 0 only where they are surely apart. */
export function separation(a: Shape, aConvex: boolean, b: Shape, bConvex: boolean): number {
  const box = boxGap(boxOf(a), boxOf(b));
  if (box > 0) return box;
  if (aConvex) {
    const gap = edgeGap(a, b);
    if (gap > 0) return gap;
  }
  if (bConvex) {
    const gap = edgeGap(b, a);
    if (gap > 0) return gap;
  }
  return distance(a, b).gap;
}

/** True where no corner of a counter-clockwise shape is hollow. */
export function isConvex(shape: Shape): boolean {
  const n = shape.length;
  for (let i = 0; i < n; i += 2) {
    const [j, k] = [(i + 2) % n, (i + 4) % n];
    const [ax, ay] = [shape[j]! - shape[i]!, shape[j + 1]! - shape[i + 1]!];
    const [bx, by] = [shape[k]! - shape[j]!, shape[k + 1]! - shape[j + 1]!];
    if (ax * by - ay * bx < -1e-12) return false;
  }
  return true;
}

export interface Nearest {
  gap: number;
  /** Nearest point of the first shape. */
  from: [number, number];
  /** Nearest point of the second shape. */
  to: [number, number];
}

function crosses(a: Shape, b: Shape): boolean {
  for (let i = 0; i < a.length; i += 2) {
    const j = i + 2 === a.length ? 0 : i + 2;
    const [px, py, qx, qy] = [a[i]!, a[i + 1]!, a[j]!, a[j + 1]!];
    for (let k = 0; k < b.length; k += 2) {
      const l = k + 2 === b.length ? 0 : k + 2;
      const [rx, ry, sx, sy] = [b[k]!, b[k + 1]!, b[l]!, b[l + 1]!];
      const side1 = (qx - px) * (ry - py) - (qy - py) * (rx - px);
      const side2 = (qx - px) * (sy - py) - (qy - py) * (sx - px);
      if (side1 > 0 === side2 > 0) continue;
      const side3 = (sx - rx) * (py - ry) - (sy - ry) * (px - rx);
      const side4 = (sx - rx) * (qy - ry) - (sy - ry) * (qx - rx);
      if (side3 > 0 !== side4 > 0) return true;
    }
  }
  return false;
}

function holds(shape: Shape, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = shape.length - 2; i < shape.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [shape[i]!, shape[i + 1]!, shape[j]!, shape[j + 1]!];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

/** How far the deepest vertex of `a` lies within `b`; 0 where none does. Tells what shares too little area to be seen. */
export function depthOf(a: Shape, b: Shape): number {
  const box = boxOf(b);
  let deepest = 0;
  for (let i = 0; i < a.length; i += 2) {
    const [x, y] = [a[i]!, a[i + 1]!];
    if (boxGap([x, y, x, y], box) > 0 || !holds(b, x, y)) continue;
    const off: Nearest = { gap: Infinity, from: [0, 0], to: [0, 0] };
    vertexToEdge(Float64Array.of(x, y), b, off, false);
    deepest = Math.max(deepest, off.gap);
  }
  return deepest;
}

/** Nearest vertex of `a` to an edge of `b`, if nearer than `best`. */
function vertexToEdge(a: Shape, b: Shape, best: Nearest, swapped: boolean): void {
  const box = boxOf(b);
  for (let i = 0; i < a.length; i += 2) {
    const [x, y] = [a[i]!, a[i + 1]!];
    if (boxGap([x, y, x, y], box) >= best.gap) continue;
    for (let k = 0; k < b.length; k += 2) {
      const l = k + 2 === b.length ? 0 : k + 2;
      const [rx, ry] = [b[k]!, b[k + 1]!];
      const [ex, ey] = [b[l]! - rx, b[l + 1]! - ry];
      const square = ex * ex + ey * ey;
      const along = square > 0 ? Math.min(1, Math.max(0, ((x - rx) * ex + (y - ry) * ey) / square)) : 0;
      const [dx, dy] = [rx + along * ex - x, ry + along * ey - y];
      const gap = Math.sqrt(dx * dx + dy * dy);
      if (gap >= best.gap) continue;
      best.gap = gap;
      best.from = swapped ? [x + dx, y + dy] : [x, y];
      best.to = swapped ? [x, y] : [x + dx, y + dy];
    }
  }
}

/** Distance of two shapes and the two points; gap 0 where they cross or one holds the other. */
export function distance(a: Shape, b: Shape): Nearest {
  if (boxGap(boxOf(a), boxOf(b)) === 0) {
    const inB = holds(b, a[0]!, a[1]!);
    const inA = holds(a, b[0]!, b[1]!);
    if (inB || inA || crosses(a, b)) {
      const at: [number, number] = inA ? [b[0]!, b[1]!] : [a[0]!, a[1]!];
      return { gap: 0, from: at, to: at };
    }
  }
  const best: Nearest = { gap: Infinity, from: [0, 0], to: [0, 0] };
  vertexToEdge(a, b, best, false);
  vertexToEdge(b, a, best, true);
  return best;
}
