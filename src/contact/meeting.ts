/**
 * Whether and where a pair of features meets at one leaf angle: the foot within the edge, the direction within the
 * arc, the moving flat's start past the bend zone. Frames: `moving` turns and slides, `fixed` stands (section frame
 * less the pivot). Ends count as met, with a millionth of a micrometre to spare, so that neighbours leave no gap between them.
 */
import { slideBy } from "../motion/slide.ts";
import type { Features } from "./features.ts";

const SPARE = 1e-9;

export type PairKind = "roundOnEdge" | "edgeOnRound" | "roundOnRound" | "roundInHollow" | "hollowOnRound";

/** One pair under test; a search of pairs fills in its own. */
export class Meeting {
  kind: PairKind = "roundOnEdge";
  moving!: Features;
  fixed!: Features;
  a = 0;
  b = 0;
  /** Points where it met last: on the moving body, on the fixed one, relative to the pivot. */
  movingX = 0;
  movingY = 0;
  fixedX = 0;
  fixedY = 0;

  meets(phi: number, c: number, s: number, u: number): boolean {
    if (!cutAllows(this, phi, u)) return false;
    if (this.kind === "roundOnEdge") return this.roundOnEdge(c, s, u);
    if (this.kind === "edgeOnRound") return this.edgeOnRound(phi, c, s, u);
    return this.arcOnArc(c, s, u);
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
    if (!this.inMovingArc(-uy * c + ux * s, ux * c + uy * s)) return false;
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

  /** Two arcs (or corners) touch on the line through their centres: outside each other, or one inside a hollow. */
  private arcOnArc(c: number, s: number, u: number): boolean {
    const { moving: A, fixed: B, a, b, kind } = this;
    const hollowA = kind === "hollowOnRound";
    const hollowB = kind === "roundInHollow";
    const U = (hollowA ? A.hollowX[a]! : A.roundX[a]!) + u;
    const V = hollowA ? A.hollowY[a]! : A.roundY[a]!;
    const x = U * c - V * s;
    const y = U * s + V * c;
    const bx = hollowB ? B.hollowX[b]! : B.roundX[b]!;
    const by = hollowB ? B.hollowY[b]! : B.roundY[b]!;
    const apart = Math.sqrt((bx - x) * (bx - x) + (by - y) * (by - y));
    if (apart < 1e-12) return false;
    // From the moving centre to its touching point: toward the other centre, away from it inside a fixed hollow.
    const way = hollowB ? -1 / apart : 1 / apart;
    const dx = way * (bx - x);
    const dy = way * (by - y);
    // From the fixed centre: the same way where one lies inside the other, else against it.
    const back = kind === "roundOnRound" ? -1 : 1;
    const coneB = hollowB ? B.hollowCos[b]! : B.roundCos[b]!;
    const mxB = hollowB ? B.hollowMx[b]! : B.roundMx[b]!;
    const myB = hollowB ? B.hollowMy[b]! : B.roundMy[b]!;
    if (coneB > -1.5 && back * (dx * mxB + dy * myB) < coneB - SPARE) return false;
    if (hollowA) {
      const inArc = (dx * c + dy * s) * A.hollowMx[a]! + (dy * c - dx * s) * A.hollowMy[a]!;
      if (inArc < A.hollowCos[a]! - SPARE) return false;
    } else if (!this.inMovingArc(dx * c + dy * s, dy * c - dx * s)) return false;
    const ra = hollowA ? A.hollowR[a]! : A.roundR[a]!;
    const rb = back * (hollowB ? B.hollowR[b]! : B.roundR[b]!);
    this.movingX = x + dx * ra;
    this.movingY = y + dy * ra;
    this.fixedX = bx + dx * rb;
    this.fixedY = by + dy * rb;
    return true;
  }

  get movingTag(): number {
    const { moving: A, a, kind } = this;
    if (kind === "edgeOnRound") return A.segTag[a]!;
    return kind === "hollowOnRound" ? A.hollowTag[a]! : A.roundTag[a]!;
  }

  get fixedTag(): number {
    const { fixed: B, b, kind } = this;
    if (kind === "roundOnEdge") return B.segTag[b]!;
    return kind === "roundInHollow" ? B.hollowTag[b]! : B.roundTag[b]!;
  }

  /** Whether a direction, given in the moving frame, lies within the arc of the moving round. */
  private inMovingArc(dx: number, dy: number): boolean {
    const { moving: A, a } = this;
    const cone = A.roundCos[a]!;
    return cone < -1.5 || dx * A.roundMx[a]! + dy * A.roundMy[a]! >= cone - SPARE;
  }
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
  const past = A.cutTan * half - (A.cutStart + slideBy(A.cutSlide, half, phi));
  return A.cutRule === "onlyCut" ? past > A.cutFrom + 1e-12 && past < A.cutTo : past <= 1e-12;
}
