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
  if (addsNothing(passing, piece)) return;
  for (let i = 0; i < piece.segments; i++) {
    const [x, y, length] = [piece.segX[i]!, piece.segY[i]!, piece.segLength[i]!];
    edge(passing, { x1: x, y1: y, x2: x + length * piece.segUx[i]!, y2: y + length * piece.segUy[i]! });
  }
  for (let i = 0; i < piece.rounds; i++) if (piece.roundR[i]! > 0) arc(passing, piece, i, false);
  for (let i = 0; i < piece.hollows; i++) arc(passing, piece, i, true);
}

/** What a box of sheet must be known by. */
type SheetBox = Pick<Features, "minX" | "minY" | "maxY">;

/** A straight edge of the sheet, material to its left. */
interface SheetEdge {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Whether a box of sheet is right of the body, or already past it, or out of its reach: then it blocks no height. */
export function outOfTheWay(
  { features: B }: SolidBody,
  up: number,
  liftMm: number,
  { minX, minY, maxY }: SheetBox,
): boolean {
  if (minX >= B.maxX) return true;
  if (up > 0) return minY >= B.maxY || maxY + liftMm <= B.minY;
  return maxY <= B.minY || minY - liftMm >= B.maxY;
}

/** Whether a box of sheet is out of the way, or what it may block at most is blocked already. */
function addsNothing(p: Passing, box: SheetBox): boolean {
  if (outOfTheWay(p.body, p.up, p.liftMm, box)) return true;
  const B = p.body.features;
  const least = p.up > 0 ? B.minY - box.maxY : box.minY - B.maxY;
  return p.out.blocksAll(Math.max(-1, least), p.liftMm);
}

/** Round or hollow `i` of the sheet, as short straight edges. */
function arc(p: Passing, piece: Features, i: number, hollow: boolean): void {
  const [x, y] = hollow ? [piece.hollowX[i]!, piece.hollowY[i]!] : [piece.roundX[i]!, piece.roundY[i]!];
  const r = hollow ? piece.hollowR[i]! : piece.roundR[i]!;
  if (addsNothing(p, { minX: x - r, minY: y - r, maxY: y + r })) return;
  const [mx, my] = hollow ? [piece.hollowMx[i]!, piece.hollowMy[i]!] : [piece.roundMx[i]!, piece.roundMy[i]!];
  const cosHalf = hollow ? piece.hollowCos[i]! : piece.roundCos[i]!;
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
    const [from, to] = hollow
      ? [[ex, ey] as const, [dx, dy] as const]
      : [[dx, dy] as const, [ex, ey] as const];
    edge(p, { x1: x + r * from[0], y1: y + r * from[1], x2: x + r * to[0], y2: y + r * to[1] });
    dx = ex;
    dy = ey;
  }
}

/**
 * Sliding, an edge of the sheet that faces left meets one of the body that faces right first; rising, one that faces up
 * meets one that faces down. No other pairs need be looked at.
 */
function edge(p: Passing, sheet: SheetEdge): void {
  const { x1, y1, x2, y2 } = sheet;
  const box = { minX: Math.min(x1, x2), minY: Math.min(y1, y2), maxY: Math.max(y1, y2) };
  if (addsNothing(p, box)) return;
  if (y1 > y2) {
    const { facingRight } = p.body;
    for (let f = 0; f < facingRight.length; f += 4) {
      const [qx1, qy1, qx2, qy2] = [
        facingRight[f]!,
        facingRight[f + 1]!,
        facingRight[f + 2]!,
        facingRight[f + 3]!,
      ];
      if (qx1 <= box.minX && qx2 <= box.minX) continue;
      // The body's edge runs up: heights between the two edges, the way they pass.
      const least = p.up > 0 ? qy1 - box.maxY : box.minY - qy2;
      const most = p.up > 0 ? qy2 - box.minY : box.maxY - qy1;
      if (most <= TOUCH_MM || least >= p.liftMm) continue;
      if (p.out.blocksAll(Math.max(-1, least), Math.min(most, p.liftMm))) continue;
      slide(p, sheet, facingRight, f);
    }
  }
  // An edge with its material to the left faces up where it runs to the left.
  if (p.up > 0 ? x1 <= x2 : x1 >= x2) return;
  if (Math.max(x1, x2) <= p.body.features.minX) return;
  const against = p.up > 0 ? p.body.facingDown : p.body.facingUp;
  for (let f = 0; f < against.length; f += 4) rise(p, sheet, against, f);
}

/** What two straight edges block for sliding, the body's at `f`: the image of the part of a square where q is right of p. */
function slide(
  { up, out }: Passing,
  { x1, y1, x2, y2 }: SheetEdge,
  body: ArrayLike<number>,
  f: number,
): void {
  const [qx1, qy1, qx2, qy2] = [body[f]!, body[f + 1]!, body[f + 2]!, body[f + 3]!];
  let [lo, hi] = [Infinity, -Infinity];
  // Round the corners of the square: which end of the sheet's edge, which end of the body's.
  let d = qx1 - x2;
  let h = up * (qy1 - y2);
  for (let corner = 0; corner < 4; corner++) {
    const d2 = (corner === 0 || corner === 3 ? qx1 : qx2) - (corner < 2 ? x1 : x2);
    const h2 = up * ((corner === 0 || corner === 3 ? qy1 : qy2) - (corner < 2 ? y1 : y2));
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
function rise({ up, out }: Passing, { x1, y1, x2, y2 }: SheetEdge, body: ArrayLike<number>, f: number): void {
  const [qx1, qy1, qx2, qy2] = [body[f]!, body[f + 1]!, body[f + 2]!, body[f + 3]!];
  const from = Math.max(Math.min(x1, x2), Math.min(qx1, qx2));
  const to = Math.min(Math.max(x1, x2), Math.max(qx1, qx2));
  if (to - from <= TOUCH_MM) return;
  const pRise = (y2 - y1) / (x2 - x1);
  const qRise = (qy2 - qy1) / (qx2 - qx1);
  const atFrom = up * (qy1 + (from - qx1) * qRise - y1 - (from - x1) * pRise);
  const atTo = up * (qy1 + (to - qx1) * qRise - y1 - (to - x1) * pRise);
  if (Math.max(atFrom, atTo) > TOUCH_MM) out.add(Math.max(0, Math.min(atFrom, atTo)), Infinity);
}
