/**
 * Bend allowance from the user's own test strip: its width before, both outside flanges after. BD = a + b − width,
 * BA = 2·SB − BD, K = (BA/θ − r)/T. Flanges go to the outside mold line, so bend the strip to 90°, where a calliper reads it.
 * A reading off by 0.1 mm moves the deduction by 0.1 mm, and K by 0.064/T.
 */
import type { Mm } from "../units/quantity.ts";
import { kFactorOf } from "./allowance.ts";
import { type BendShape, outsideBendSetback } from "./bendSetback.ts";

export interface TestStrip extends BendShape {
  readonly widthBeforeMm: Mm;
  readonly outsideFlangesMm: readonly [Mm, Mm];
}

export interface StripResult {
  readonly deductionMm: Mm;
  readonly allowanceMm: Mm;
  readonly kFactor: number;
  /** Why the figures should be measured again; absent when they can be true. */
  readonly doubt?: string;
}

/**
 * Bend deduction, allowance and K-factor of a test strip, with a doubt where the neutral line would lie outside the
 * inner half of the sheet.
 * @throws RangeError when a length or the angle is not positive
 * @example readTestStrip({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1, widthBeforeMm: 48, outsideFlangesMm: [25, 25] }).deductionMm // 2
 */
export function readTestStrip(strip: TestStrip): StripResult {
  const [one, other] = strip.outsideFlangesMm;
  const positive = [strip.widthBeforeMm, one, other, strip.thicknessMm, strip.angleDeg];
  if (!positive.every((size) => size > 0 && size < Infinity))
    throw new RangeError("a test strip wants width, flanges, thickness and angle above 0");
  const deductionMm = one + other - strip.widthBeforeMm;
  const allowanceMm = 2 * outsideBendSetback(strip) - deductionMm;
  const kFactor = kFactorOf(strip, allowanceMm);
  if (kFactor >= 0 && kFactor <= 0.5) return { deductionMm, allowanceMm, kFactor };
  const lean = kFactor < 0 ? "inside the bend" : "in the outer half of the sheet";
  const doubt = `The strip puts the neutral line ${lean} (K ${kFactor.toFixed(2)}; 0.3 to 0.5 is usual): measure flanges, width and inside radius again.`;
  return { deductionMm, allowanceMm, kFactor, doubt };
}
