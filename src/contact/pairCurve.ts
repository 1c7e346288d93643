/**
 * The distance between two features as a function of the leaf angle φ, in one form for every kind of pair:
 * f = k0 + k1·cos φ + k2·sin φ + s·(k3 + k4·cos φ + k5·sin φ + k6·s), with s = s(φ) the slide (motion/swing.ts).
 * Derived by writing the moving point (U + s, V) turned by φ; f is a distance (straight edges) or a squared one (arcs).
 */
import type { Swing } from "../motion/swing.ts";

/** Seven coefficients k0 … k6. */
export type PairCurve = Float64Array;

export function makePairCurve(): PairCurve {
  return new Float64Array(7);
}

/** Moving point (U, V) over a fixed line n·p = off: f = signed distance outside the line, less `less`. */
export function pointOverLine(
  k: PairCurve,
  U: number,
  V: number,
  nx: number,
  ny: number,
  off: number,
  less: number,
): void {
  k[0] = -off - less;
  k[1] = U * nx + V * ny;
  k[2] = U * ny - V * nx;
  k[3] = 0;
  k[4] = nx;
  k[5] = ny;
  k[6] = 0;
}

/** Fixed point (x, y) over a moving line m·p = off: f = signed distance outside the line, less `less`. */
export function lineOverPoint(
  k: PairCurve,
  x: number,
  y: number,
  mx: number,
  my: number,
  off: number,
  less: number,
): void {
  k[0] = -off - less;
  k[1] = mx * x + my * y;
  k[2] = mx * y - my * x;
  k[3] = -mx;
  k[4] = 0;
  k[5] = 0;
  k[6] = 0;
}

/** Squared distance between a moving point (U, V) and a fixed point (x, y), less `less`; `sign` −1 turns it over. */
export function pointFromPoint(
  k: PairCurve,
  U: number,
  V: number,
  x: number,
  y: number,
  less: number,
  sign: number,
): void {
  k[0] = sign * (U * U + V * V + x * x + y * y - less);
  k[1] = -2 * sign * (U * x + V * y);
  k[2] = -2 * sign * (U * y - V * x);
  k[3] = 2 * sign * U;
  k[4] = -2 * sign * x;
  k[5] = -2 * sign * y;
  k[6] = sign;
}

/** f where cos φ = c, sin φ = s and the slide is u. */
export function curveValue(k: PairCurve, c: number, s: number, u: number): number {
  return k[0]! + k[1]! * c + k[2]! * s + u * (k[3]! + k[4]! * c + k[5]! * s + k[6]! * u);
}

/** f′ there, with u1 the slide's rate; `turns` 0 for a motion that only slides. */
export function curveRate(k: PairCurve, turns: number, c: number, s: number, u: number, u1: number): number {
  return (
    u1 * (k[3]! + k[4]! * c + k[5]! * s + 2 * k[6]! * u) +
    turns * (k[2]! * c - k[1]! * s + u * (k[5]! * c - k[4]! * s))
  );
}

/** A bound on |f″| over the whole swing. */
export function curveBend(k: PairCurve, swing: Swing): number {
  const turning = Math.sqrt(k[1]! * k[1]! + k[2]! * k[2]!);
  const sliding = Math.sqrt(k[4]! * k[4]! + k[5]! * k[5]!);
  const { maxSlide, maxSlideRate, maxSlideBend, turns } = swing;
  return (
    turns * (turning + sliding * (2 * maxSlideRate + maxSlide)) +
    (Math.abs(k[3]!) + sliding) * maxSlideBend +
    2 * Math.abs(k[6]!) * (maxSlideRate * maxSlideRate + maxSlide * maxSlideBend)
  );
}
