/**
 * Heights at which a piece of sheet can't rise to, or can't slide out from, because a body of the brake is in the way.
 * A point p of the sheet, raised by η and slid along +x, meets q of the body where q.y − p.y = η and q.x > p.x; over
 * two straight edges that is the image of a convex set, an interval with its ends at corners or where q.x = p.x.
 */
import type { Features } from "./features.ts";
import { arcPieces, type SolidBody } from "./solidBody.ts";

const TOUCH_MM = 1e-6;

/** A union of open intervals of heights, kept sorted and merged; one that reaches under 0 blocks the height 0 too. */
export class BlockedHeights {
  /** lo0, hi0, lo1, hi1, … */
  readonly bounds: number[] = [];

  add(from: number, to: number): void {
    let lo = from < -TOUCH_MM ? -1 : Math.max(0, from);
    let hi = to;
    if (hi <= TOUCH_MM || hi - lo <= TOUCH_MM) return;
    const b = this.bounds;
    let i = 0;
    while (i < b.length && b[i + 1]! < lo) i += 2;
    let gone = 0;
    while (i + gone < b.length && b[i + gone]! <= hi) {
      lo = Math.min(lo, b[i + gone]!);
      hi = Math.max(hi, b[i + gone + 1]!);
      gone += 2;
    }
    b.splice(i, gone, lo, hi);
  }

  addAll(other: BlockedHeights): void {
    for (let i = 0; i < other.bounds.length; i += 2) this.add(other.bounds[i]!, other.bounds[i + 1]!);
  }

  /** Least height from 0 up that is free; Infinity if none is. */
  leastFree(): number {
    const b = this.bounds;
    return b.length === 0 || b[0]! >= 0 ? 0 : b[1]!;
  }
}

/**
 * Adds the heights that `body` blocks for `piece`. `up` +1: the sheet rises past the body; −1: the body (the clamp)
 * rises past the sheet. Heights above `liftMm` are of no use and may be left out.
 */
export function blockHeights(
  piece: Features,
  body: SolidBody,
  up: 1 | -1,
  liftMm: number,
  out: BlockedHeights,
): void {
  const B = body.features;
  if (piece.minX >= B.maxX) return;
  if (
    up > 0
      ? piece.minY >= B.maxY || piece.maxY + liftMm <= B.minY
      : piece.maxY <= B.minY || piece.minY - liftMm >= B.maxY
  ) {
    return;
  }
  const edges = straightened(piece);
  const { pieces } = body;
  for (let e = 0; e < edges.length; e += 4) {
    const [px1, py1, px2, py2] = [edges[e]!, edges[e + 1]!, edges[e + 2]!, edges[e + 3]!];
    for (let f = 0; f < pieces.length; f += 4) {
      pair(px1, py1, px2, py2, pieces[f]!, pieces[f + 1]!, pieces[f + 2]!, pieces[f + 3]!, up, out);
    }
  }
}

function pair(
  px1: number,
  py1: number,
  px2: number,
  py2: number,
  qx1: number,
  qy1: number,
  qx2: number,
  qy2: number,
  up: number,
  out: BlockedHeights,
): void {
  // Corners of the square (which end of the sheet's edge, which end of the body's), run round.
  const d = [qx1 - px1, qx2 - px1, qx2 - px2, qx1 - px2];
  if (d[0]! <= 0 && d[1]! <= 0 && d[2]! <= 0 && d[3]! <= 0) return;
  const h = [up * (qy1 - py1), up * (qy2 - py1), up * (qy2 - py2), up * (qy1 - py2)];
  let [lo, hi] = [Infinity, -Infinity];
  let [above, below] = [Infinity, -Infinity];
  for (let i = 0; i < 4; i++) {
    const j = (i + 1) % 4;
    if (d[i]! > 0) {
      lo = Math.min(lo, h[i]!);
      hi = Math.max(hi, h[i]!);
    }
    if (d[i]! > 0 !== d[j]! > 0 && d[i] !== d[j]) {
      const at = h[i]! + ((h[j]! - h[i]!) * d[i]!) / (d[i]! - d[j]!);
      lo = Math.min(lo, at);
      hi = Math.max(hi, at);
      above = Math.min(above, at);
      below = Math.max(below, at);
    }
  }
  out.add(lo, hi);
  // Straight above the sheet's edge: rising stops there for good.
  if (below > TOUCH_MM && xRunsMeet(px1, px2, qx1, qx2)) out.add(Math.max(0, above), Infinity);
}

function xRunsMeet(px1: number, px2: number, qx1: number, qx2: number): boolean {
  const from = Math.max(Math.min(px1, px2), Math.min(qx1, qx2));
  const to = Math.min(Math.max(px1, px2), Math.max(qx1, qx2));
  return to - from > TOUCH_MM;
}

function straightened(piece: Features): number[] {
  const edges: number[] = [];
  for (let i = 0; i < piece.segments; i++) {
    const [x, y, length] = [piece.segX[i]!, piece.segY[i]!, piece.segLength[i]!];
    edges.push(x, y, x + length * piece.segUx[i]!, y + length * piece.segUy[i]!);
  }
  const arc = (x: number, y: number, r: number, mx: number, my: number, cosHalf: number) => {
    if (r === 0) return;
    const half = Math.acos(cosHalf);
    const middle = Math.atan2(my, mx);
    const n = arcPieces(r, 2 * half);
    for (let i = 0; i < n; i++) {
      const [a, b] = [middle - half + (2 * half * i) / n, middle - half + (2 * half * (i + 1)) / n];
      edges.push(x + r * Math.cos(a), y + r * Math.sin(a), x + r * Math.cos(b), y + r * Math.sin(b));
    }
  };
  for (let i = 0; i < piece.rounds; i++) {
    arc(
      piece.roundX[i]!,
      piece.roundY[i]!,
      piece.roundR[i]!,
      piece.roundMx[i]!,
      piece.roundMy[i]!,
      piece.roundCos[i]!,
    );
  }
  for (let i = 0; i < piece.hollows; i++) {
    arc(
      piece.hollowX[i]!,
      piece.hollowY[i]!,
      piece.hollowR[i]!,
      piece.hollowMx[i]!,
      piece.hollowMy[i]!,
      piece.hollowCos[i]!,
    );
  }
  return edges;
}
