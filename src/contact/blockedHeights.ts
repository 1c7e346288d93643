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
    const b = this.bounds;
    // Most intervals fall into one that is known: the edges of one body block neighbouring heights.
    for (let i = 0; i < b.length; i += 2) if (b[i]! <= lo && b[i + 1]! >= hi) return;
    this.merge(lo, hi);
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

  /** Least height from 0 up that is free; Infinity if none is. */
  leastFree(): number {
    const b = this.bounds;
    return b.length === 0 || b[0]! >= 0 ? 0 : b[1]!;
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
  if (outOfTheWay(body, up, liftMm, piece.minX, piece.minY, piece.maxY)) return;
  const passing = { body, up, liftMm, out };
  for (let i = 0; i < piece.segments; i++) {
    const [x, y, length] = [piece.segX[i]!, piece.segY[i]!, piece.segLength[i]!];
    edge(passing, x, y, x + length * piece.segUx[i]!, y + length * piece.segUy[i]!);
  }
  for (let i = 0; i < piece.rounds; i++) {
    const r = piece.roundR[i]!;
    if (r === 0) continue;
    arc(passing, piece.roundX[i]!, piece.roundY[i]!, r, piece.roundMx[i]!, piece.roundMy[i]!, piece.roundCos[i]!);
  }
  for (let i = 0; i < piece.hollows; i++) {
    const [x, y, r] = [piece.hollowX[i]!, piece.hollowY[i]!, piece.hollowR[i]!];
    arc(passing, x, y, r, piece.hollowMx[i]!, piece.hollowMy[i]!, piece.hollowCos[i]!);
  }
}

/** Whether a box of sheet is right of the body, or already past it, or out of its reach. */
function outOfTheWay(body: SolidBody, up: number, liftMm: number, minX: number, minY: number, maxY: number): boolean {
  const B = body.features;
  if (minX >= B.maxX) return true;
  if (up > 0) return minY >= B.maxY || maxY + liftMm <= B.minY;
  return maxY <= B.minY || minY - liftMm >= B.maxY;
}

function arc(p: Passing, x: number, y: number, r: number, mx: number, my: number, cosHalf: number): void {
  if (outOfTheWay(p.body, p.up, p.liftMm, x - r, y - r, y + r)) return;
  const half = Math.acos(cosHalf);
  const n = arcPieces(r, 2 * half);
  // Turn by equal steps from the arc's start; the start is the middle direction turned back by half the sweep.
  const sinHalf = Math.sin(half);
  let dx = mx * cosHalf + my * sinHalf;
  let dy = my * cosHalf - mx * sinHalf;
  const [c, s] = [Math.cos((2 * half) / n), Math.sin((2 * half) / n)];
  for (let i = 0; i < n; i++) {
    const [ex, ey] = [dx * c - dy * s, dx * s + dy * c];
    edge(p, x + r * dx, y + r * dy, x + r * ex, y + r * ey);
    dx = ex;
    dy = ey;
  }
}

/** One straight edge of the sheet against every straight piece of the body. */
function edge(p: Passing, px1: number, py1: number, px2: number, py2: number): void {
  const [minY, maxY] = py1 < py2 ? [py1, py2] : [py2, py1];
  const minX = px1 < px2 ? px1 : px2;
  if (outOfTheWay(p.body, p.up, p.liftMm, minX, minY, maxY)) return;
  const { pieces } = p.body;
  for (let f = 0; f < pieces.length; f += 4) {
    const [qx1, qy1, qx2, qy2] = [pieces[f]!, pieces[f + 1]!, pieces[f + 2]!, pieces[f + 3]!];
    if (qx1 <= minX && qx2 <= minX) continue;
    // Heights between the two edges, the way they pass.
    const least = p.up > 0 ? Math.min(qy1, qy2) - maxY : minY - Math.max(qy1, qy2);
    const most = p.up > 0 ? Math.max(qy1, qy2) - minY : maxY - Math.min(qy1, qy2);
    if (most <= TOUCH_MM || least >= p.liftMm) continue;
    pair(px1, py1, px2, py2, qx1, qy1, qx2, qy2, p.up, p.out);
  }
}

/** What two straight edges block: the image of the part of a square where q is right of p, and where q is straight above. */
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
  let [lo, hi] = [Infinity, -Infinity];
  let [above, below] = [Infinity, -Infinity];
  // Round the corners of the square: which end of the sheet's edge, which end of the body's.
  let d = qx1 - px2;
  let h = up * (qy1 - py2);
  for (let corner = 0; corner < 4; corner++) {
    const d2 = (corner === 0 || corner === 3 ? qx1 : qx2) - (corner < 2 ? px1 : px2);
    const h2 = up * ((corner === 0 || corner === 3 ? qy1 : qy2) - (corner < 2 ? py1 : py2));
    if (d > 0 !== d2 > 0 && d !== d2) {
      const at = h + ((h2 - h) * d) / (d - d2);
      if (at < above) above = at;
      if (at > below) below = at;
    }
    if (d2 > 0) {
      if (h2 < lo) lo = h2;
      if (h2 > hi) hi = h2;
    }
    d = d2;
    h = h2;
  }
  out.add(Math.min(lo, above), Math.max(hi, below));
  // Straight above the sheet's edge: rising stops there for good.
  if (below > TOUCH_MM && xRunsMeet(px1, px2, qx1, qx2)) out.add(Math.max(0, above), Infinity);
}

function xRunsMeet(px1: number, px2: number, qx1: number, qx2: number): boolean {
  const from = Math.max(Math.min(px1, px2), Math.min(qx1, qx2));
  const to = Math.min(Math.max(px1, px2), Math.max(qx1, qx2));
  return to - from > TOUCH_MM;
}
