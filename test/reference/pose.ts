/**
 * Where the two sides of the part stand at leaf angle φ. Apex a(φ) = Px + Py·tan(φ/2); clamped tangent X = −(s + Rn); the
 * moving tangent is d(φ) = BA + X − a(φ) + 2(r+T)·tan(φ/2) − φ(r+kT) from the apex, along the leaf face. Closed formulas, exact.
 */
import { type Piece, zoneOf } from "./chain.ts";
import type { Machine } from "./machine.ts";
import { mirrored, placed, rightOf, type Shape } from "./shape.ts";
import { apexAt, type Sheet, type SheetBend } from "./sheet.ts";

/** The motion of one bend: what the pieces of both sides do while the leaf swings. Angles in radians. */
export class Motion {
  readonly sheet: Sheet;
  readonly index: number;
  readonly bend: SheetBend;
  readonly pivot: readonly [number, number];
  /** Where the clamped tangent stands on the bed. */
  readonly tangentX: number;

  constructor(sheet: Sheet, index: number, machine: Pick<Machine, "pivot" | "noseRun">) {
    this.sheet = sheet;
    this.index = index;
    this.bend = sheet.bends[index]!;
    this.pivot = machine.pivot;
    this.tangentX = -(this.bend.noseSetback + machine.noseRun);
  }

  /** Distance of the moving tangent from the apex, along the leaf. */
  slide(phi: number): number {
    const { allowance, radius, neutral } = this.bend;
    const wide = 2 * (radius + this.sheet.thickness) * Math.tan(phi / 2);
    return allowance + this.tangentX - apexAt(this.pivot, phi) + wide - phi * neutral;
  }

  /** A piece of the clamped side, from the chain frame to the section frame. */
  clamped(shape: Shape): Shape {
    return placed(mirrored(shape), 0, this.tangentX, 0);
  }

  /** A moving piece seen from the leaf at rest, in the section frame; what the bend zone takes is cut off. */
  onLeaf(shape: Shape, phi: number, onFace: boolean): Shape | null {
    const reach = this.slide(phi);
    const from = (this.bend.radius + this.sheet.thickness) * Math.tan(phi / 2);
    const whole = placed(shape, 0, reach, 0);
    const left = onFace && reach < from ? rightOf(whole, from) : whole;
    return left === null ? null : placed(left, 0, this.pivot[0] - this.pivot[1] * Math.tan(phi / 2), 0);
  }

  /** The leaf's own motion: the section at rest turned by φ about the pivot. */
  swung(shape: Shape, phi: number): Shape {
    const [px, py] = this.pivot;
    const [c, s] = [Math.cos(phi), Math.sin(phi)];
    return placed(shape, phi, px - c * px + s * py, py - s * px - c * py);
  }

  /** A moving piece in the section frame. */
  moving(shape: Shape, phi: number, onFace: boolean): Shape | null {
    const rested = this.onLeaf(shape, phi, onFace);
    return rested === null ? null : this.swung(rested, phi);
  }

  /** The seated sheet before the bend (flat zone) or after it (finished arc), as pieces in the section frame. */
  seated(
    clamped: readonly Piece[],
    moving: readonly Piece[],
    formed: boolean,
    inset: number,
    chordMm: number,
  ) {
    const zone = zoneOf(this.sheet, this.index, formed, inset, chordMm);
    const { theta, radius, allowance } = this.bend;
    const turn = formed ? theta : 0;
    const high = this.sheet.thickness + radius;
    const endX = this.tangentX + (formed ? high * Math.sin(theta) : allowance);
    const endY = formed ? high - high * Math.cos(theta) : 0;
    return [
      ...clamped.map((piece) => this.clamped(piece.shape)),
      placed(zone, 0, this.tangentX, 0),
      ...moving.map((piece) => placed(piece.shape, turn, endX, endY)),
    ];
  }

  /** Upper bound of the speed, in mm per radian, of a moving point up to `reachMm` from the apex, up to angle φ. */
  speed(reachMm: number, phi: number): number {
    const steep = 1 / Math.cos(phi / 2) ** 2;
    const sheetDepth = this.bend.radius + this.sheet.thickness;
    return reachMm + this.slideSpeed(phi) + Math.abs(this.pivot[1]) * steep + sheetDepth * steep;
  }

  /** Upper bound of the speed of a moving point seen from the leaf, up to angle φ. */
  slideSpeed(phi: number): number {
    const steep = 1 / Math.cos(phi / 2) ** 2;
    const sheetDepth = this.bend.radius + this.sheet.thickness;
    return sheetDepth * steep + this.bend.neutral + Math.abs(this.pivot[1]) * steep;
  }
}

/** How many leading pieces the bend zone may cut into: the straight stretch up to the first formed bend. */
export function nearBend(pieces: readonly Piece[]): number {
  const first = pieces.findIndex((piece) => piece.kind === "bend");
  return first < 0 ? pieces.length : first;
}
