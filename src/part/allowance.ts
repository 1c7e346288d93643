/**
 * Bend allowance by K-factor: the length of the neutral line, BA = θ_rad·(r + k·T), and what follows from it, the
 * bend deduction BD = 2·SB − BA. K runs from 0 (inside face) to 1/2 (mid thickness).
 * The formula is exact; the K-factor is not: 0.05 of K is 0.08 T in a 90° bend.
 */
import { type Mm, toRad } from "../units/quantity.ts";
import { type BendShape, outsideBendSetback } from "./bendSetback.ts";

/**
 * Bend allowance for a K-factor.
 * @example bendAllowance({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 0.8 }, 0.44) // 2.1237166338267
 */
export function bendAllowance({ angleDeg, insideRadiusMm, thicknessMm }: BendShape, kFactor: number): Mm {
  return toRad(angleDeg) * (insideRadiusMm + kFactor * thicknessMm);
}

/**
 * What the outside dimensions of the two sides are longer than the flat sheet, once the allowance is known.
 * @example bendDeduction({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 0.8 }, 2.123717) // 1.476283
 */
export function bendDeduction(shape: BendShape, allowanceMm: Mm): Mm {
  return 2 * outsideBendSetback(shape) - allowanceMm;
}

/**
 * The K-factor that gives this allowance: the way back from any other method or a measured bend.
 * @example kFactorOf({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1 }, 2) // 4 / Math.PI - 1
 */
export function kFactorOf({ angleDeg, insideRadiusMm, thicknessMm }: BendShape, allowanceMm: Mm): number {
  return (allowanceMm / toRad(angleDeg) - insideRadiusMm) / thicknessMm;
}
