/**
 * Straight pieces and bends of a sheet laid anywhere, for the kernel's own tests, with their geometry worked out by hand:
 * where a point of the chain frame comes to lie, and whether it lies in the thickness. Source: plane geometry.
 */
import { Features } from "../../src/contact/features.ts";
import { Strip } from "../../src/contact/strip.ts";
import type { Chain } from "../../src/part/chain.ts";

export const T = 2;
export const R = 3;
export const LONG = 20;
export const INSET = 0.25;
export const FLAT_NUMBER = 5;
export const BEND_NUMBER = 6;

export type Point = readonly [number, number];

/** Flat, bend, flat; `turn` +1 up, −1 down. */
export function chainOf(turn: 1 | -1, angleRad: number): Chain {
  const one = (value: number) => Float64Array.of(value);
  return {
    joints: 1,
    flatMm: Float64Array.of(LONG, 10),
    flatNumber: Int32Array.of(FLAT_NUMBER, FLAT_NUMBER + 1),
    bendNumber: Int32Array.of(BEND_NUMBER),
    allowanceMm: one(4),
    insideRadiusMm: one(R),
    angleRad: one(angleRad),
    cosAngle: one(Math.cos(angleRad)),
    sinAngle: one(Math.sin(angleRad)),
    cosHalfAngle: one(Math.cos(angleRad / 2)),
    sinHalfAngle: one(Math.sin(angleRad / 2)),
    turn: Int8Array.of(turn),
  };
}

/** How a chain is laid: turned after a shift, or mirrored about a vertical and shifted. */
export interface Laying {
  readonly name: string;
  readonly lay: (strip: Strip) => void;
  readonly place: (point: Point) => Point;
  readonly mirrored: boolean;
}

/** A 3-4-5 turn, a quarter turn, and the mirror: all exact. */
export const LAYINGS: readonly Laying[] = [
  {
    name: "as it is",
    lay: (strip) => strip.placeTurned(0, 0, 1, 0),
    place: (point) => point,
    mirrored: false,
  },
  {
    name: "turned",
    lay: (strip) => strip.placeTurned(-3, 1, 0.8, 0.6),
    place: ([x, y]) => [0.8 * (x - 3) - 0.6 * (y + 1), 0.6 * (x - 3) + 0.8 * (y + 1)],
    mirrored: false,
  },
  {
    name: "upright",
    lay: (strip) => strip.placeTurned(2, -1, 0, 1),
    place: ([x, y]) => [1 - y, x + 2],
    mirrored: false,
  },
  {
    name: "mirrored",
    lay: (strip) => strip.placeMirrored(-1.5, 0.75),
    place: ([x, y]) => [-1.5 - x, 0.75 + y],
    mirrored: true,
  },
];

/** The first flat alone, its cross-sections added as `ends` says. */
export function straightPiece(laying: Laying, insetMm: number, ends: number, freeEnd: boolean): Features {
  const strip = new Strip(chainOf(1, 1), T);
  laying.lay(strip);
  strip.walkTo(-1, 0);
  const F = new Features(4, 4, 1);
  strip.addStraight(F, LONG, insetMm, FLAT_NUMBER, ends, freeEnd);
  return F;
}

/** The formed bend alone, at the end of the first flat. */
export function bendPiece(
  laying: Laying,
  turn: 1 | -1,
  angleRad: number,
  insetMm: number,
  ends: number,
): Features {
  const strip = new Strip(chainOf(turn, angleRad), T);
  laying.lay(strip);
  strip.walkTo(0, 0);
  const F = new Features(4, 6, 1);
  strip.addBend(F, 0, insetMm, ends);
  return F;
}

/** The point of the bend's sheet `depth` above its under face, `turned` on from its start. */
export function inBend(turn: 1 | -1, depth: number, turned: number): Point {
  // Turning up, the under face is outside, R + T from a centre above; turning down it is inside, R from a centre below.
  const radius = turn > 0 ? R + T - depth : R + depth;
  const centerY = turn > 0 ? R + T : -R;
  return [LONG + radius * Math.sin(turned), centerY - turn * radius * Math.cos(turned)];
}
