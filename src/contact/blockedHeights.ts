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
    const hi = to;
    const lo = from < -TOUCH_MM ? -1 : Math.max(0, from);
    if (hi <= TOUCH_MM || hi - lo <= TOUCH_MM) return;
    // Most intervals fall into one that is known: the edges of one body block neighbouring heights.
    if (!this.blocksAll(lo, hi)) this.merge(lo, hi);
  }

  /** Whether all heights between two are blocked already. */
  blocksAll(from: number, to: number): boolean {
    const b = this.bounds;
    for (let i = 0; i < b.length; i += 2) if (b[i]! <= from && b[i + 1]! >= to) return true;
    return false;
  }

  private merge(from: number, to: number): void {
    const b = this.bounds;
    let [lo, hi] = [from, to];
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

  /** Least height from `from` up that is free; Infinity if none is. */
  leastFree(from: number): number {
    const b = this.bounds;
    let height = from;
    for (let i = 0; i < b.length; i += 2)
      if (b[i]! < height && b[i + 1]! > height) height = b[i + 1]!;
      else if (b[i]! < 0 && height === 0) height = b[i + 1]!;
    return height;
  }
}

/** The body that blocks, which way it passes (`up` +1: the sheet rises past it; −1: it rises past the sheet), how far. */
interface Passing {
  readonly body: SolidBody;
  readonly up: 1 | -1;
  readonly liftMm: number;
  readonly out: BlockedHeights;
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
  const passing = { body, up, liftMm, out };
  if (addsNothing(passing, piece.minX, piece.minY, piece.maxY)) return;
  for (let i = 0; i < piece.segments; i++) {
    const [x, y, length] = [piece.segX[i]!, piece.segY[i]!, piece.segLength[i]!];
    edge(passing, x, y, x + length * piece.segUx[i]!, y + length * piece.segUy[i]!);
  }
  for (let i = 0; i < piece.rounds; i++) {
    const r = piece.roundR[i]!;
    if (r === 0) continue;
    arc(
      passing,
      piece.roundX[i]!,
      piece.roundY[i]!,
      r,
      piece.roundMx[i]!,
      piece.roundMy[i]!,
      piece.roundCos[i]!,
      false,
    );
  }
  for (let i = 0; i < piece.hollows; i++) {
    const [x, y, r] = [piece.hollowX[i]!, piece.hollowY[i]!, piece.hollowR[i]!];
    arc(passing, x, y, r, piece.hollowMx[i]!, piece.hollowMy[i]!, piece.hollowCos[i]!, true);
  }
}

/** Whether a box of sheet is right of the body, or already past it, or out of its reach: then it blocks no height. */
export function outOfTheWay(
  body: SolidBody,
  up: number,
  liftMm: number,
  minX: number,
  minY: number,
  maxY: number,
): boolean {
  const B = body.features;
  if (minX >= B.maxX) return true;
  if (up > 0) return minY >= B.maxY || maxY + liftMm <= B.minY;
  return maxY <= B.minY || minY - liftMm >= B.maxY;
}

/** Whether a box of sheet is out of the way, or what it may block at most is blocked already. */
function addsNothing(p: Passing, minX: number, minY: number, maxY: number): boolean {
  if (outOfTheWay(p.body, p.up, p.liftMm, minX, minY, maxY)) return true;
  const B = p.body.features;
  const least = p.up > 0 ? B.minY - maxY : minY - B.maxY;
  return p.out.blocksAll(Math.max(-1, least), p.liftMm);
}

function arc(
  p: Passing,
  x: number,
  y: number,
  r: number,
  mx: number,
  my: number,
  cosHalf: number,
  hollow: boolean,
): void {
  if (addsNothing(p, x - r, y - r, y + r)) return;
  const half = Math.acos(cosHalf);
  const n = arcPieces(r, 2 * half);
  // Turn by equal steps from the arc's start; the start is the middle direction turned back by half the sweep.
  const sinHalf = Math.sin(half);
  let dx = mx * cosHalf + my * sinHalf;
  let dy = my * cosHalf - mx * sinHalf;
  const [c, s] = [Math.cos((2 * half) / n), Math.sin((2 * half) / n)];
  for (let i = 0; i < n; i++) {
    const [ex, ey] = [dx * c - dy * s, dx * s + dy * c];
    // A hollow is run the other way round, so that its material too lies to the left.
    if (hollow) edge(p, x + r * ex, y + r * ey, x + r * dx, y + r * dy);
    else edge(p, x + r * dx, y + r * dy, x + r * ex, y + r * ey);
    dx = ex;
    dy = ey;
  }
}

/**
 * One straight edge of the sheet, material to its left. Sliding, an edge that faces left meets one of the body that faces
 * right first; rising, one that faces up meets one that faces down. No other pairs need be looked at.
 */
function edge(p: Passing, px1: number, py1: number, px2: number, py2: number): void {
  const minX = Math.min(px1, px2);
  const minY = Math.min(py1, py2);
  const maxY = Math.max(py1, py2);
  if (addsNothing(p, minX, minY, maxY)) return;
  if (py1 > py2) {
    const { facingRight } = p.body;
    for (let f = 0; f < facingRight.length; f += 4) {
      const [qx1, qy1, qx2, qy2] = [
        facingRight[f]!,
        facingRight[f + 1]!,
        facingRight[f + 2]!,
        facingRight[f + 3]!,
      ];
      if (qx1 <= minX && qx2 <= minX) continue;
      // The body's edge runs up: heights between the two edges, the way they pass.
      const least = p.up > 0 ? qy1 - maxY : minY - qy2;
      const most = p.up > 0 ? qy2 - minY : maxY - qy1;
      if (most <= TOUCH_MM || least >= p.liftMm) continue;
      if (p.out.blocksAll(Math.max(-1, least), Math.min(most, p.liftMm))) continue;
      slide(px1, py1, px2, py2, qx1, qy1, qx2, qy2, p.up, p.out);
    }
  }
  // An edge with its material to the left faces up where it runs to the left.
  if (p.up > 0 ? px1 <= px2 : px1 >= px2) return;
  if (Math.max(px1, px2) <= p.body.features.minX) return;
  const against = p.up > 0 ? p.body.facingDown : p.body.facingUp;
  for (let f = 0; f < against.length; f += 4) {
    rise(px1, py1, px2, py2, against[f]!, against[f + 1]!, against[f + 2]!, against[f + 3]!, p.up, p.out);
  }
}

/** What two straight edges block for sliding: the image of the part of a square where q is right of p. */
function slide(
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
  let [lo, hi] = [Infinity, -Infinity];
  // Round the corners of the square: which end of the sheet's edge, which end of the body's.
  let d = qx1 - px2;
  let h = up * (qy1 - py2);
  for (let corner = 0; corner < 4; corner++) {
    const d2 = (corner === 0 || corner === 3 ? qx1 : qx2) - (corner < 2 ? px1 : px2);
    const h2 = up * ((corner === 0 || corner === 3 ? qy1 : qy2) - (corner < 2 ? py1 : py2));
    if (d > 0 !== d2 > 0 && d !== d2) {
      const at = h + ((h2 - h) * d) / (d - d2);
      if (at < lo) lo = at;
      if (at > hi) hi = at;
    }
    if (d2 > 0) {
      if (h2 < lo) lo = h2;
      if (h2 > hi) hi = h2;
    }
    d = d2;
    h = h2;
  }
  out.add(lo, hi);
}

/** Where one edge stands straight above the other, rising stops for good at their least height. */
function rise(
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
  const from = Math.max(Math.min(px1, px2), Math.min(qx1, qx2));
  const to = Math.min(Math.max(px1, px2), Math.max(qx1, qx2));
  if (to - from <= TOUCH_MM) return;
  const pRise = (py2 - py1) / (px2 - px1);
  const qRise = (qy2 - qy1) / (qx2 - qx1);
  const atFrom = up * (qy1 + (from - qx1) * qRise - py1 - (from - px1) * pRise);
  const atTo = up * (qy1 + (to - qx1) * qRise - py1 - (to - px1) * pRise);
  if (Math.max(atFrom, atTo) > TOUCH_MM) out.add(Math.max(0, Math.min(atFrom, atTo)), Infinity);
}
