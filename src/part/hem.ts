/**
 * Hems: the edge folded back on itself in two strokes, bent as far as the leaf gets, then flattened under the clamp.
 * The finished hem is half a turn about its gap, its neutral line at mid thickness: BA = π·(gap/2 + T/2). For a closed hem that
 * leaves 2T − πT/2 = 0.43 T off the outside dimensions, the shop's rule of 43 % of the thickness (The Fabricator, the basics of hemming
 * sheet metal, hem allowance under .080 in; from memory). Dimensions are to the outermost point of the fold. A teardrop is
 * reckoned as an open hem of its gap.
 */
import type { Deg, Mm } from "../units/quantity.ts";
import type { Bend, Hem } from "./part.ts";

/** The first stroke goes as far as it can, up to the first of these; short of the second the clamp can't flatten it (common practice, no source). */
export const MOST_FOLD_DEG: Deg = 150;
export const LEAST_FOLD_DEG: Deg = 120;

/** Clamp lift that a folded hem wants to go under it: three thicknesses and the gap (common practice, no source). */
export function leastHemLiftMm({ gapMm }: Pick<Hem, "gapMm">, thicknessMm: Mm): Mm {
  return 3 * thicknessMm + gapMm;
}

/** Sheet that the finished hem takes up. @example hemAllowance(0, 1) // Math.PI / 2 */
export function hemAllowance(gapMm: Mm, thicknessMm: Mm): Mm {
  return (Math.PI * (gapMm + thicknessMm)) / 2;
}

/** The finished hem as a bend of half a turn; `fold` is its first stroke as far as the leaf may go. */
export function hemBend(fold: Bend, hem: Hem, thicknessMm: Mm): Bend {
  const { overbendRangeDeg: _, ...made } = fold;
  const allowanceMm = hemAllowance(hem.gapMm, thicknessMm);
  const bendSetbackMm = hem.gapMm / 2 + thicknessMm;
  return {
    ...made,
    angleDeg: 180,
    insideRadiusMm: hem.gapMm / 2,
    allowanceMm,
    bendSetbackMm,
    deductionMm: 2 * bendSetbackMm - allowanceMm,
    pinched: false,
    hem,
  };
}
