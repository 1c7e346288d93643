/**
 * Whether and where a pair of features meets at one leaf angle: the foot within the edge, the direction within the
 * arc, the moving flat's start past the bend zone. Frames: `moving` turns and slides, `fixed` stands (section frame
 * less the pivot). Ends count as met, with a millionth of a micrometre to spare, so that neighbours leave no gap between them.
 */
import type { Swing } from "../motion/swing.ts";
import type { Features } from "./features.ts";

const SPARE = 1e-9;

export type PairKind = "roundOnEdge" | "edgeOnRound" | "roundOnRound" | "roundInHollow" | "hollowOnRound";

/** One pair under test; the kernel fills it in place. */
export class Meeting {
  kind: PairKind = "roundOnEdge";
  moving!: Features;
  fixed!: Features;
  a = 0;
  b = 0;
  /** Points of the last meeting found: on the moving body, on the fixed one, relative to the pivot. */
  movingX = 0;
  movingY = 0;
  fixedX = 0;
  fixedY = 0;

  meets(phi: number, c: number, s: number, u: number): boolean {
    if (!cutAllows(this, phi, u)) return false;
    switch (this.kind) {
      case "roundOnEdge":
        return this.roundOnEdge(c, s, u);
      case "edgeOnRound":
        return this.edgeOnRound(phi, c, s, u);
      case "roundOnRound":
        return this.roundOnRound(c, s, u);
      case "roundInHollow":
        return this.roundInHollow(c, s, u);
      default:
        return this.hollowOnRound(c, s, u);
    }
  }

  private roundOnEdge(c: number, s: number, u: number): boolean {
    const { moving: A, fixed: B, a, b } = this;
    const U = A.roundX[a]! + u;
    const V = A.roundY[a]!;
    const x = U * c - V * s;
    const y = U * s + V * c;
    const ux = B.segUx[b]!;
    const uy = B.segUy[b]!;
    const along = (x - B.segX[b]!) * ux + (y - B.segY[b]!) * uy;
    if (along < -SPARE || along > B.segLength[b]! + SPARE) return false;
    // Toward the edge is against its outward normal (uy, −ux).
    if (!within(A, a, -uy, ux, c, s)) return false;
    const r = A.roundR[a]!;
    this.movingX = x - r * uy;
    this.movingY = y + r * ux;
    this.fixedX = B.segX[b]! + along * ux;
    this.fixedY = B.segY[b]! + along * uy;
    return true;
  }

  private edgeOnRound(phi: number, c: number, s: number, u: number): boolean {
    const { moving: A, fixed: B, a, b } = this;
    const x = B.roundX[b]!;
    const y = B.roundY[b]!;
    const qx = x * c + y * s - u;
    const qy = -x * s + y * c;
    const ux = A.segUx[a]!;
    const uy = A.segUy[a]!;
    const along = (qx - A.segX[a]!) * ux + (qy - A.segY[a]!) * uy;
    if (along < -SPARE || along > A.segLength[a]! + SPARE) return false;
    if (A.cutRule === "pastZone" && qx + u < A.cutTan * Math.tan(phi / 2) - SPARE) return false;
    // Toward the moving edge is against its outward normal (uy, −ux), turned by φ.
    const dx = -(uy * c + ux * s);
    const dy = -(uy * s - ux * c);
    const cone = B.roundCos[b]!;
    if (cone > -1.5 && dx * B.roundMx[b]! + dy * B.roundMy[b]! < cone - SPARE) return false;
    const fx = A.segX[a]! + along * ux + u;
    const fy = A.segY[a]! + along * uy;
    this.movingX = fx * c - fy * s;
    this.movingY = fx * s + fy * c;
    const r = B.roundR[b]!;
    this.fixedX = x + r * dx;
    this.fixedY = y + r * dy;
    return true;
  }

  private roundOnRound(c: number, s: number, u: number): boolean {
    const { moving: A, fixed: B, a, b } = this;
    const U = A.roundX[a]! + u;
    const V = A.roundY[a]!;
    const x = U * c - V * s;
    const y = U * s + V * c;
    let dx = B.roundX[b]! - x;
    let dy = B.roundY[b]! - y;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d < 1e-12) return false;
    dx /= d;
    dy /= d;
    if (!within(A, a, dx, dy, c, s)) return false;
    const cone = B.roundCos[b]!;
    if (cone > -1.5 && -dx * B.roundMx[b]! - dy * B.roundMy[b]! < cone - SPARE) return false;
    this.movingX = x + dx * A.roundR[a]!;
    this.movingY = y + dy * A.roundR[a]!;
    this.fixedX = B.roundX[b]! - dx * B.roundR[b]!;
    this.fixedY = B.roundY[b]! - dy * B.roundR[b]!;
    return true;
  }

  private roundInHollow(c: number, s: number, u: number): boolean {
    const { moving: A, fixed: B, a, b } = this;
    const U = A.roundX[a]! + u;
    const V = A.roundY[a]!;
    const x = U * c - V * s;
    const y = U * s + V * c;
    let dx = x - B.hollowX[b]!;
    let dy = y - B.hollowY[b]!;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d < 1e-12) return false;
    dx /= d;
    dy /= d;
    if (dx * B.hollowMx[b]! + dy * B.hollowMy[b]! < B.hollowCos[b]! - SPARE) return false;
    if (!within(A, a, dx, dy, c, s)) return false;
    this.movingX = x + dx * A.roundR[a]!;
    this.movingY = y + dy * A.roundR[a]!;
    this.fixedX = B.hollowX[b]! + dx * B.hollowR[b]!;
    this.fixedY = B.hollowY[b]! + dy * B.hollowR[b]!;
    return true;
  }

  private hollowOnRound(c: number, s: number, u: number): boolean {
    const { moving: A, fixed: B, a, b } = this;
    const U = A.hollowX[a]! + u;
    const V = A.hollowY[a]!;
    const x = U * c - V * s;
    const y = U * s + V * c;
    let dx = B.roundX[b]! - x;
    let dy = B.roundY[b]! - y;
    const d = Math.sqrt(dx * dx + dy * dy);
    if (d < 1e-12) return false;
    dx /= d;
    dy /= d;
    const cone = B.roundCos[b]!;
    if (cone > -1.5 && dx * B.roundMx[b]! + dy * B.roundMy[b]! < cone - SPARE) return false;
    const ax = dx * c + dy * s;
    const ay = dy * c - dx * s;
    if (ax * A.hollowMx[a]! + ay * A.hollowMy[a]! < A.hollowCos[a]! - SPARE) return false;
    this.movingX = x + dx * A.hollowR[a]!;
    this.movingY = y + dy * A.hollowR[a]!;
    this.fixedX = B.roundX[b]! + dx * B.roundR[b]!;
    this.fixedY = B.roundY[b]! + dy * B.roundR[b]!;
    return true;
  }
}

/** Whether the direction (dx, dy), given in the fixed frame, lies within the arc of moving round `a`. */
function within(A: Features, a: number, dx: number, dy: number, c: number, s: number): boolean {
  const cone = A.roundCos[a]!;
  if (cone < -1.5) return true;
  const ax = dx * c + dy * s;
  const ay = dy * c - dx * s;
  return ax * A.roundMx[a]! + ay * A.roundMy[a]! >= cone - SPARE;
}

/** Whether the moving flat's start, or a point of the flat, is past the bend zone at this angle. */
function cutAllows(meeting: Meeting, phi: number, u: number): boolean {
  const A = meeting.moving;
  if (A.cutRule === "none") return true;
  const half = Math.tan(phi / 2);
  if (A.cutRule === "pastZone") {
    // An edge is judged at its foot, where that is known.
    if (meeting.kind === "edgeOnRound" || meeting.kind === "hollowOnRound") return true;
    return A.roundX[meeting.a]! + u >= A.cutTan * half - SPARE;
  }
  const past = A.cutTan * half - (A.cutStart + A.cutSlideTan * half - A.cutSlideTurn * phi);
  return A.cutRule === "onlyCut" ? past > 1e-12 && past < A.cutLength : past <= 1e-12;
}

/** Whether node j of a swing is a meeting. */
export function meetsAtNode(meeting: Meeting, swing: Swing, j: number): boolean {
  const phi = j === swing.steps ? swing.sweepRad : j * swing.stepRad;
  return meeting.meets(phi, swing.cos[j]!, swing.sin[j]!, swing.slide[j]!);
}
