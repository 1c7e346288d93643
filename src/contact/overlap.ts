/**
 * Whether two bodies overlap where they stand: boundaries that cross, or one body inside the other.
 * Straight edges, rounds and hollows against each other in closed form; touching within 1e-7 mm is no overlap.
 */
import type { Features } from "./features.ts";
import type { SolidBody } from "./solidBody.ts";

const TOUCH = 1e-7;

/** Where an overlap was seen. */
export interface Spot {
  x: number;
  y: number;
}

/** Whether a piece of sheet overlaps a fixed body of the brake. */
export function sheetOverlapsBody(piece: Features, body: SolidBody, at: Spot): boolean {
  const B = body.features;
  if (!boxesMeet(piece, B)) return false;
  if (bordersCross(piece, B, at)) return true;
  // No border crosses: one may lie wholly in the other.
  [at.x, at.y] = [body.pieces[0]!, body.pieces[1]!];
  if (sheetHolds(piece, at.x, at.y)) return true;
  if (piece.hasCore) {
    at.x = piece.coreX1;
    at.y = piece.coreY1;
  } else {
    at.x = piece.roundX[0]! + piece.roundR[0]! * piece.roundMx[0]!;
    at.y = piece.roundY[0]! + piece.roundR[0]! * piece.roundMy[0]!;
  }
  return body.contains(at.x, at.y);
}

/** Whether a point lies in the thickness of a piece: between the faces of its straight part, or between its bend's arcs. */
function sheetHolds(piece: Features, x: number, y: number): boolean {
  for (let i = 0; i < piece.hollows; i++) {
    const dx = x - piece.hollowX[i]!;
    const dy = y - piece.hollowY[i]!;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d <= piece.hollowR[i]! || dx * piece.hollowMx[i]! + dy * piece.hollowMy[i]! < d * piece.hollowCos[i]!)
      continue;
    // A piece has one bend at most: its other rounds are corners, of no radius.
    for (let a = 0; a < piece.rounds; a++) if (d < piece.roundR[a]!) return true;
  }
  if (!piece.hasCore) return false;
  const [ux, uy] = [piece.segUx[0]!, piece.segUy[0]!];
  const half = Math.abs(ux * (piece.coreY1 - piece.segY[0]!) - uy * (piece.coreX1 - piece.segX[0]!));
  const along = ux * (x - piece.coreX1) + uy * (y - piece.coreY1);
  const end = ux * (piece.coreX2 - piece.coreX1) + uy * (piece.coreY2 - piece.coreY1);
  const across = Math.abs(ux * (y - piece.coreY1) - uy * (x - piece.coreX1));
  return across < half && along > Math.min(0, end) && along < Math.max(0, end);
}

/** Whether two pieces of the sheet, or two bodies neither of which can hold the other, overlap. */
export function bordersOverlap(A: Features, B: Features, at: Spot): boolean {
  return boxesMeet(A, B) && bordersCross(A, B, at);
}

function boxesMeet(A: Features, B: Features): boolean {
  return A.minX < B.maxX && B.minX < A.maxX && A.minY < B.maxY && B.minY < A.maxY;
}

function bordersCross(A: Features, B: Features, at: Spot): boolean {
  for (let a = 0; a < A.segments; a++) {
    if (lineCrossesBorder(lineOf(A, a), B, at)) return true;
  }
  for (let b = 0; b < B.segments; b++) {
    if (lineCrossesArcs(lineOf(B, b), A, at)) return true;
  }
  if (A.hasCore && coreCrosses(A, B, at)) return true;
  if (B.hasCore && coreCrosses(B, A, at)) return true;
  return arcsCross(A, B, at);
}

/** The middle line tells pieces apart that lie in one line, where faces only run along each other. */
function coreCrosses(A: Features, B: Features, at: Spot): boolean {
  const [dx, dy] = [A.coreX2 - A.coreX1, A.coreY2 - A.coreY1];
  const length = Math.sqrt(dx * dx + dy * dy);
  const core = { x: A.coreX1, y: A.coreY1, ux: dx / length, uy: dy / length, length };
  return length > TOUCH && lineCrossesBorder(core, B, at);
}

/** A straight edge by its start, direction and length. */
interface Line {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly length: number;
}

function lineOf(F: Features, i: number): Line {
  return { x: F.segX[i]!, y: F.segY[i]!, ux: F.segUx[i]!, uy: F.segUy[i]!, length: F.segLength[i]! };
}

function lineCrossesBorder(line: Line, B: Features, at: Spot): boolean {
  const { x, y, ux, uy, length } = line;
  for (let b = 0; b < B.segments; b++) {
    const [bx, by, vx, vy] = [B.segX[b]!, B.segY[b]!, B.segUx[b]!, B.segUy[b]!];
    const from = ux * (by - y) - uy * (bx - x);
    const to = from + B.segLength[b]! * (ux * vy - uy * vx);
    if (!((from > TOUCH && to < -TOUCH) || (from < -TOUCH && to > TOUCH))) continue;
    const mine = vx * (y - by) - vy * (x - bx);
    const other = mine + length * (vx * uy - vy * ux);
    if (!((mine > TOUCH && other < -TOUCH) || (mine < -TOUCH && other > TOUCH))) continue;
    const t = (length * mine) / (mine - other);
    at.x = x + t * ux;
    at.y = y + t * uy;
    return true;
  }
  return lineCrossesArcs(line, B, at);
}

function lineCrossesArcs(line: Line, B: Features, at: Spot): boolean {
  for (let b = 0; b < B.rounds; b++) {
    if (B.roundR[b]! > 0 && lineCrossesArc(line, B, b, false, at)) return true;
  }
  for (let b = 0; b < B.hollows; b++) if (lineCrossesArc(line, B, b, true, at)) return true;
  return false;
}

/** Whether a line crosses round or hollow `b` of a body. */
function lineCrossesArc(
  { x, y, ux, uy, length }: Line,
  B: Features,
  b: number,
  hollow: boolean,
  at: Spot,
): boolean {
  const cx = hollow ? B.hollowX[b]! : B.roundX[b]!;
  const cy = hollow ? B.hollowY[b]! : B.roundY[b]!;
  const r = hollow ? B.hollowR[b]! : B.roundR[b]!;
  const off = ux * (cy - y) - uy * (cx - x);
  if (Math.abs(off) >= r - TOUCH) return false;
  const mx = hollow ? B.hollowMx[b]! : B.roundMx[b]!;
  const my = hollow ? B.hollowMy[b]! : B.roundMy[b]!;
  const cosHalf = hollow ? B.hollowCos[b]! : B.roundCos[b]!;
  const foot = ux * (cx - x) + uy * (cy - y);
  const half = Math.sqrt(r * r - off * off);
  for (let side = -1; side <= 1; side += 2) {
    const t = foot + side * half;
    if (t <= TOUCH || t >= length - TOUCH) continue;
    const dx = (x + t * ux - cx) / r;
    const dy = (y + t * uy - cy) / r;
    if (dx * mx + dy * my <= cosHalf + TOUCH) continue;
    at.x = x + t * ux;
    at.y = y + t * uy;
    return true;
  }
  return false;
}

function arcsCross(A: Features, B: Features, at: Spot): boolean {
  const arcsA = A.rounds + A.hollows;
  const arcsB = B.rounds + B.hollows;
  for (let a = 0; a < arcsA; a++) {
    const hollowA = a >= A.rounds;
    const i = hollowA ? a - A.rounds : a;
    const ra = hollowA ? A.hollowR[i]! : A.roundR[i]!;
    if (ra === 0) continue;
    const [ax, ay] = hollowA ? [A.hollowX[i]!, A.hollowY[i]!] : [A.roundX[i]!, A.roundY[i]!];
    const [amx, amy] = hollowA ? [A.hollowMx[i]!, A.hollowMy[i]!] : [A.roundMx[i]!, A.roundMy[i]!];
    const acos = hollowA ? A.hollowCos[i]! : A.roundCos[i]!;
    for (let b = 0; b < arcsB; b++) {
      const hollowB = b >= B.rounds;
      const j = hollowB ? b - B.rounds : b;
      const rb = hollowB ? B.hollowR[j]! : B.roundR[j]!;
      if (rb === 0) continue;
      const [bx, by] = hollowB ? [B.hollowX[j]!, B.hollowY[j]!] : [B.roundX[j]!, B.roundY[j]!];
      const dx = bx - ax;
      const dy = by - ay;
      const d2 = dx * dx + dy * dy;
      const d = Math.sqrt(d2);
      if (d >= ra + rb - TOUCH || d <= Math.abs(ra - rb) + TOUCH) continue;
      const [bmx, bmy] = hollowB ? [B.hollowMx[j]!, B.hollowMy[j]!] : [B.roundMx[j]!, B.roundMy[j]!];
      const bcos = hollowB ? B.hollowCos[j]! : B.roundCos[j]!;
      const along = (d2 + ra * ra - rb * rb) / (2 * d);
      const across = Math.sqrt(Math.max(0, ra * ra - along * along));
      for (let side = -1; side <= 1; side += 2) {
        const px = (along * dx - side * across * dy) / d;
        const py = (along * dy + side * across * dx) / d;
        if ((px * amx + py * amy) / ra <= acos + TOUCH) continue;
        if (((px - dx) * bmx + (py - dy) * bmy) / rb <= bcos + TOUCH) continue;
        at.x = ax + px;
        at.y = ay + py;
        return true;
      }
    }
  }
  return false;
}
