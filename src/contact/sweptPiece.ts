/**
 * Where a piece of sheet can be when the flats before it are longer or shorter by up to so much: the convex outline of
 * all its places. A bend is taken in pieces of an eighth of a turn at most, each a little larger than it is (its hollow
 * filled to the chord, its round to the tangents): what misses the outline is missed by every place of the piece.
 */
import { convexHull } from "../plane/convexHull.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { Features } from "./features.ts";
import { bordersOverlap, type Spot } from "./overlap.ts";
import type { SolidBody } from "./solidBody.ts";

const LARGEST_PIECE_RAD = Math.PI / 8;

/** Directions nearer than this are one. */
const SAME_DIRECTION = 1e-9;

/** How far what lies beyond some flats may be shifted: for each direction the sum of their doubts, either way. */
export class Drift {
  private readonly ways: Point[] = [];

  /** Adds a flat that leads in the unit direction (ux, uy) and may be off by `halfMm`. */
  add(ux: number, uy: number, halfMm: Mm): void {
    if (halfMm === 0) return;
    const at = this.ways.findIndex(
      ({ x, y }) => Math.abs(x * uy - y * ux) < SAME_DIRECTION * Math.hypot(x, y),
    );
    const known = this.ways[at];
    if (known === undefined) {
      this.ways.push({ x: ux * halfMm, y: uy * halfMm });
      return;
    }
    const way = known.x * ux + known.y * uy > 0 ? 1 : -1;
    this.ways[at] = { x: known.x + way * ux * halfMm, y: known.y + way * uy * halfMm };
  }

  /** All places of a convex piece. */
  over(corners: readonly Point[]): Point[] {
    let hull = convexHull(corners);
    for (const { x, y } of this.ways) {
      hull = convexHull(
        hull.flatMap((one) => [-1, 1].map((way) => ({ x: one.x + way * x, y: one.y + way * y }))),
      );
    }
    return hull;
  }
}

/** The bend in a laid out piece, as convex corners: none where it has no bend. */
export function bendCorners(piece: Features): Point[][] {
  // A bend is the only thing hollow in a piece, and laid first of its rounds (strip.ts).
  if (piece.hollows === 0) return [];
  const outer = piece.roundR[0]!;
  const inner = piece.hollowR[0]!;
  const half = Math.acos(piece.roundCos[0]!);
  const middle = Math.atan2(piece.roundMy[0]!, piece.roundMx[0]!);
  const count = Math.max(1, Math.ceil((2 * half) / LARGEST_PIECE_RAD));
  const step = (2 * half) / count;
  const at = (radius: Mm, angle: number): Point => ({
    x: piece.roundX[0]! + radius * Math.cos(angle),
    y: piece.roundY[0]! + radius * Math.sin(angle),
  });
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [middle - half + i * step, middle - half + (i + 1) * step];
    const beyond = outer / Math.cos(step / 2);
    return [at(inner, from), at(outer, from), at(beyond, (from + to) / 2), at(outer, to), at(inner, to)];
  });
}

/** A straight piece from its middle line, longer by `moreMm` at its far end. */
export function straightCorners(piece: Features, halfThickMm: Mm, moreMm: Mm): Point[] {
  const { coreX1: x1, coreY1: y1, coreX2: x2, coreY2: y2 } = piece;
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  return [
    [x1, y1],
    [x2 + moreMm * ux, y2 + moreMm * uy],
  ].flatMap(([x, y]) => [-halfThickMm, halfThickMm].map((off) => ({ x: x! - off * uy, y: y! + off * ux })));
}

/** A convex outline as a piece for the checks. */
export function pieceOf(hull: readonly Point[]): Features {
  const F = new Features(hull.length, 0, 0);
  hull.forEach((from, i) => {
    const to = hull[(i + 1) % hull.length]!;
    F.addSegment(from.x, from.y, to.x, to.y, 0);
  });
  return F;
}

/** Whether a convex outline and a body overlap. */
export function hullOverlaps(hull: readonly Point[], piece: Features, body: SolidBody, spot: Spot): boolean {
  if (bordersOverlap(piece, body.features, spot)) return true;
  const [first] = hull;
  if (first && body.contains(first.x, first.y)) return true;
  const [x, y] = [body.pieces[0]!, body.pieces[1]!];
  return hull.every((from, i) => {
    const to = hull[(i + 1) % hull.length]!;
    return (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) > 0;
  });
}
