/**
 * A side of the sheet as touchable features, piece by piece outward from the bend being made: per element one joint
 * (a formed bend or a still flat strip) and the flat after it. Chain frame: x along the first flat, sheet in 0 ≤ y ≤ T.
 * Placed by a rigid map (mirrored for the side in the throat) into the frame of the leaf's pivot. Exact.
 */
import type { Chain } from "../part/chain.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Features } from "./features.ts";

/** What a tag says: bits 0–1 the kind, the rest the number of the flat or bend, from 0. */
const FACE_OF_FLAT = 0;
export const END_OF_FLAT = 1;
export const INSIDE_OF_BEND = 2;
export const OUTSIDE_OF_BEND = 3;

/** Flats whose height and slope over the first flat's plane are less than this lie in it. */
const COPLANAR = 1e-6;

/** Where a side of the sheet stands: point (x, y) of the chain frame at (ox + xx·x + xy·y, oy + yx·x + yy·y) from the pivot. */
export interface Placement {
  readonly ox: Mm;
  readonly oy: Mm;
  readonly xx: number;
  readonly xy: number;
  readonly yx: number;
  readonly yy: number;
  readonly mirrored: boolean;
}

const AS_DRAWN: Placement = { ox: 0, oy: 0, xx: 1, xy: 0, yx: 0, yy: 1, mirrored: false };

/** The moving side, its tangent line at (startX, startY) from the pivot, turned about the pivot by the given angle. */
export function turnedPlacement(startX: Mm, startY: Mm, cosTurn: number, sinTurn: number): Placement {
  return {
    ox: cosTurn * startX - sinTurn * startY,
    oy: sinTurn * startX + cosTurn * startY,
    xx: cosTurn,
    xy: -sinTurn,
    yx: sinTurn,
    yy: cosTurn,
    mirrored: false,
  };
}

/** How a straight is laid out: how far in from its faces, and its flat. */
interface StraightLook {
  readonly insetMm: Mm;
  readonly flat: number;
  /** It ends the part. */
  readonly freeEnd: boolean;
}

/** The clamped side: x of the chain leads into the throat. */
export function mirroredPlacement(startX: Mm, startY: Mm): Placement {
  return { ox: startX, oy: startY, xx: -1, xy: 0, yx: 0, yy: 1, mirrored: true };
}

export class Strip {
  /** End of the last flat walked to, on the face that lies on bed or leaf, and its direction. */
  x = 0;
  y = 0;
  c = 1;
  s = 0;
  private place: Placement = AS_DRAWN;
  // Where the walks of late ended, flat by flat, and with which joints formed before: the next is often one step on.
  private readonly walkedFormed: Int32Array;
  private readonly walkedX: Float64Array;
  private readonly walkedY: Float64Array;
  private readonly walkedC: Float64Array;
  private readonly walkedS: Float64Array;

  constructor(
    readonly chain: Chain,
    readonly thicknessMm: Mm,
  ) {
    const flats = chain.joints + 1;
    this.walkedFormed = new Int32Array(flats).fill(-1);
    [this.walkedX, this.walkedY] = [new Float64Array(flats), new Float64Array(flats)];
    [this.walkedC, this.walkedS] = [new Float64Array(flats), new Float64Array(flats)];
  }

  /** Sets where what is added from now on stands. */
  standAt(place: Placement): this {
    this.place = place;
    return this;
  }

  /** Walks to the end of flat `k` with the joints in `formed` made; −1 is the bend tangent line itself. */
  walkTo(k: number, formed: number): void {
    let known = k;
    while (known >= 0 && this.walkedFormed[known] !== (formed & ((1 << known) - 1))) known--;
    if (known >= 0) {
      this.x = this.walkedX[known]!;
      this.y = this.walkedY[known]!;
      this.c = this.walkedC[known]!;
      this.s = this.walkedS[known]!;
    } else {
      this.x = this.y = this.s = 0;
      this.c = 1;
    }
    for (let flat = known + 1; flat <= k; flat++) {
      this.step(flat, ((formed >>> (flat - 1)) & 1) === 1);
      this.walkedFormed[flat] = formed & ((1 << flat) - 1);
      this.walkedX[flat] = this.x;
      this.walkedY[flat] = this.y;
      this.walkedC[flat] = this.c;
      this.walkedS[flat] = this.s;
    }
  }

  /** Walks on over element k: its joint, formed or flat, and flat k; the first element has no joint, whatever is said of it. */
  step(k: number, jointFormed: boolean): void {
    if (k > 0) {
      if (jointFormed) this.turnJoint(k - 1);
      else this.advance(this.chain.allowanceMm[k - 1]!);
    }
    this.advance(this.chain.flatMm[k]!);
  }

  /** Whether the sheet at the point walked to lies in the plane of the first flat and leads outward. */
  inFirstPlane(): boolean {
    return this.c > 0 && Math.abs(this.s) < COPLANAR && Math.abs(this.y) < COPLANAR;
  }

  private advance(length: Mm): void {
    this.x += length * this.c;
    this.y += length * this.s;
  }

  turnJoint(j: number): void {
    const { chain, thicknessMm } = this;
    const up = chain.turn[j]!;
    const underR = up > 0 ? chain.insideRadiusMm[j]! + thicknessMm : chain.insideRadiusMm[j]!;
    const cx = this.x - up * underR * this.s;
    const cy = this.y + up * underR * this.c;
    const [ca, sa] = [chain.cosAngle[j]!, up * chain.sinAngle[j]!];
    const c = this.c * ca - this.s * sa;
    this.s = this.s * ca + this.c * sa;
    this.c = c;
    this.x = cx + up * underR * this.s;
    this.y = cy - up * underR * this.c;
  }

  /**
   * Adds the formed joint j that follows the point walked to, and walks over it. `insetMm` draws the faces in;
   * `ends` adds its two tangent cross-sections with their corners (bit 0 near, bit 1 far).
   */
  addBend(F: Features, j: number, insetMm: Mm, ends: number): void {
    const { chain, thicknessMm: T } = this;
    const up = chain.turn[j]!;
    const r = chain.insideRadiusMm[j]!;
    const underR = up > 0 ? r + T : r;
    const cx = this.x - up * underR * this.s;
    const cy = this.y + up * underR * this.c;
    // From the centre toward the under face, turned by half the angle.
    const [dx, dy] = [up * this.s, -up * this.c];
    const [ch, sh] = [chain.cosHalfAngle[j]!, up * chain.sinHalfAngle[j]!];
    const mx = dx * ch - dy * sh;
    const my = dx * sh + dy * ch;
    const tag = chain.bendNumber[j]! << 2;
    const [px, py] = [this.placeX(cx, cy), this.placeY(cx, cy)];
    const { xx, xy, yx, yy } = this.place;
    const [qx, qy] = [xx * mx + xy * my, yx * mx + yy * my];
    const arc = { x: px, y: py, mx: qx, my: qy, cosHalf: ch };
    F.addRound(arc, r + T - insetMm, tag | OUTSIDE_OF_BEND);
    F.addHollow(arc, r + insetMm, tag | INSIDE_OF_BEND);
    if (ends & 1) this.addCrossSection(F, up, insetMm, tag, true);
    this.turnJoint(j);
    if (ends & 2) this.addCrossSection(F, up, insetMm, tag, false);
  }

  /** Adds the cross-section at which joint j starts, the point walked to, with its corners. */
  addBendStart(F: Features, j: number, insetMm: Mm): void {
    this.addCrossSection(F, this.chain.turn[j]!, insetMm, this.chain.bendNumber[j]! << 2, true);
  }

  /** Adds `length` of straight sheet from the point walked to, and walks over it; `ends` looked at: 1 near, 2 far, 3 both. */
  addStraight(F: Features, length: Mm, { insetMm, flat, freeEnd }: StraightLook, ends: number): void {
    const T = this.thicknessMm;
    const tag = (flat << 2) | FACE_OF_FLAT;
    // Along the sheet and up from its under face, as placed.
    const { xx, xy, yx, yy, mirrored } = this.place;
    const ux = xx * this.c + xy * this.s;
    const uy = yx * this.c + yy * this.s;
    const vx = xy * this.c - xx * this.s;
    const vy = yy * this.c - yx * this.s;
    const x1 = this.placeX(this.x, this.y);
    const y1 = this.placeY(this.x, this.y);
    this.advance(length);
    const x2 = x1 + length * ux;
    const y2 = y1 + length * uy;
    const over = T - insetMm;
    if (mirrored) {
      F.addEdge({ x: x2 + insetMm * vx, y: y2 + insetMm * vy, ux: -ux, uy: -uy, length: length }, tag);
      F.addEdge({ x: x1 + over * vx, y: y1 + over * vy, ux: ux, uy: uy, length: length }, tag);
    } else {
      F.addEdge({ x: x1 + insetMm * vx, y: y1 + insetMm * vy, ux: ux, uy: uy, length: length }, tag);
      F.addEdge({ x: x2 + over * vx, y: y2 + over * vy, ux: -ux, uy: -uy, length: length }, tag);
    }
    F.setCore(x1 + (T / 2) * vx, y1 + (T / 2) * vy, x2 + (T / 2) * vx, y2 + (T / 2) * vy);
    // Across the sheet, counter-clockwise: up at the far end, down at the near one, the other way round when mirrored.
    const way = mirrored ? -1 : 1;
    if (ends & 1) {
      const from = mirrored ? insetMm : over;
      F.addCorner(x1 + insetMm * vx, y1 + insetMm * vy, tag);
      F.addCorner(x1 + over * vx, y1 + over * vy, tag);
      F.addEdge(
        { x: x1 + from * vx, y: y1 + from * vy, ux: -way * vx, uy: -way * vy, length: T - 2 * insetMm },
        tag,
      );
    }
    if (!freeEnd && !(ends & 2)) return;
    const endTag = freeEnd ? (flat << 2) | END_OF_FLAT : tag;
    const from = mirrored ? over : insetMm;
    F.addCorner(x2 + insetMm * vx, y2 + insetMm * vy, endTag);
    F.addCorner(x2 + over * vx, y2 + over * vy, endTag);
    F.addEdge(
      { x: x2 + from * vx, y: y2 + from * vy, ux: way * vx, uy: way * vy, length: T - 2 * insetMm },
      endTag,
    );
  }

  /** The cross-section where the first flat starts: its edge toward the bend and the two corners. */
  addStart(F: Features, insetMm: Mm, flat: number): void {
    const T = this.thicknessMm;
    const tag = (flat << 2) | FACE_OF_FLAT;
    this.addFace(F, { x: 0, y: T - insetMm }, { x: 0, y: insetMm }, tag);
    F.addCorner(this.placeX(0, insetMm), this.placeY(0, insetMm), tag);
    F.addCorner(this.placeX(0, T - insetMm), this.placeY(0, T - insetMm), tag);
  }

  private addCrossSection(F: Features, up: number, insetMm: Mm, bendTag: number, near: boolean): void {
    const { x, y, c, s, thicknessMm: T } = this;
    const [lowX, lowY] = [x - s * insetMm, y + c * insetMm];
    const [highX, highY] = [x - s * (T - insetMm), y + c * (T - insetMm)];
    const [under, over] = up > 0 ? [OUTSIDE_OF_BEND, INSIDE_OF_BEND] : [INSIDE_OF_BEND, OUTSIDE_OF_BEND];
    F.addCorner(this.placeX(lowX, lowY), this.placeY(lowX, lowY), bendTag | under);
    F.addCorner(this.placeX(highX, highY), this.placeY(highX, highY), bendTag | over);
    // The material lies past the near cross-section and before the far one.
    const [low, high] = [
      { x: lowX, y: lowY },
      { x: highX, y: highY },
    ];
    if (near) this.addFace(F, high, low, bendTag | under);
    else this.addFace(F, low, high, bendTag | under);
  }

  private addFace(F: Features, from: Point, to: Point, tag: number): void {
    const [ax, ay, bx, by] = [
      this.placeX(from.x, from.y),
      this.placeY(from.x, from.y),
      this.placeX(to.x, to.y),
      this.placeY(to.x, to.y),
    ];
    // Mirroring swaps the side on which the material lies.
    if (this.place.mirrored) F.addSegment(bx, by, ax, ay, tag);
    else F.addSegment(ax, ay, bx, by, tag);
  }

  /** Where a point of the chain frame is placed. */
  placeX(x: Mm, y: Mm): Mm {
    const { ox, xx, xy } = this.place;
    return ox + xx * x + xy * y;
  }

  placeY(x: Mm, y: Mm): Mm {
    const { oy, yx, yy } = this.place;
    return oy + yx * x + yy * y;
  }
}
