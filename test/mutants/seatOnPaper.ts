/**
 * Seats of a bend worked out on paper, with any chains on its two sides, for truths that need no job file.
 * Source: src/model.md, section 5, written out again: SB = (r + T)·tan(θ/2), BA = θ·(r + k·T), apex Px + Py·tan(θ/2).
 */
import type { Seat } from "../../src/motion/seat.ts";
import type { Chain } from "../../src/part/chain.ts";

export const T = 1;
export const R = 1;
export const K = 0.5;
/** Of every joint laid flat. */
export const STRIP = 2;

export interface Joint {
  readonly turn: 1 | -1;
  readonly angleDeg: number;
}

const UP: Joint = { turn: 1, angleDeg: 90 };

const rad = (deg: number) => (deg * Math.PI) / 180;

/** Flats between tangents, with a joint between each two; numbers of flats from `flat`, of bends from `bend`. */
export function chainWith(flats: readonly number[], joints: readonly Joint[], flat = 10, bend = 20): Chain {
  const of = (f: (joint: Joint) => number) => Float64Array.from(joints, f);
  return {
    joints: joints.length,
    flatMm: Float64Array.from(flats),
    flatNumber: Int32Array.from(flats, (_, i) => flat + i),
    bendNumber: Int32Array.from(joints, (_, i) => bend + i),
    allowanceMm: of(() => STRIP),
    insideRadiusMm: of(() => R),
    angleRad: of(({ angleDeg }) => rad(angleDeg)),
    cosAngle: of(({ angleDeg }) => Math.cos(rad(angleDeg))),
    sinAngle: of(({ angleDeg }) => Math.sin(rad(angleDeg))),
    cosHalfAngle: of(({ angleDeg }) => Math.cos(rad(angleDeg) / 2)),
    sinHalfAngle: of(({ angleDeg }) => Math.sin(rad(angleDeg) / 2)),
    turn: Int8Array.from(joints, ({ turn }) => turn),
  };
}

export interface SeatOnPaper {
  readonly angleDeg?: number;
  readonly sweepDeg?: number;
  readonly fromDeg?: number;
  readonly pivot?: readonly [number, number];
  readonly radius?: number;
  readonly kFactor?: number;
  readonly moving?: Chain;
  readonly clamped?: Chain;
}

export function seatOnPaper(of: SeatOnPaper = {}): Seat {
  const { angleDeg = 90, sweepDeg = angleDeg, fromDeg = 0, radius = R, kFactor = K } = of;
  const [x, y] = of.pivot ?? [0, 0];
  const half = Math.tan(rad(angleDeg) / 2);
  const allowanceMm = rad(angleDeg) * (radius + kFactor * T);
  const clampedTangentX = x + y * half - (radius + T) * half;
  return {
    bend: 5,
    clamped: "start",
    thicknessMm: T,
    insideRadiusMm: radius,
    angleRad: rad(angleDeg),
    overbendRad: rad(angleDeg),
    fromRad: rad(fromDeg),
    sweepRad: rad(sweepDeg),
    allowanceMm,
    pivot: { x, y },
    clampedTangentX,
    movingTangentX: clampedTangentX + allowanceMm,
    slideTan: 2 * (radius + T - y),
    slideTurn: radius + kFactor * T,
    bendZoneTan: radius + T,
    noseSetbackMm: radius,
    pinched: false,
    relaxedTangentMm: (radius + T) * half,
    movingChain: of.moving ?? chainWith([20, 10], [UP]),
    clampedChain: of.clamped ?? chainWith([20, 10], [UP], 30, 40),
  };
}

/** Along the leaf from the pivot, with the leaf at φ: where the moving flat starts, and where the bend zone ends. */
export function startAndZone(seat: Seat, phi: number): readonly [start: number, zone: number] {
  const half = Math.tan(phi / 2);
  const start = seat.movingTangentX - seat.pivot.x + seat.slideTan * half - seat.slideTurn * phi;
  return [start, (seat.bendZoneTan - seat.pivot.y) * half];
}
