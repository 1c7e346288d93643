/**
 * The methods side by side: what K-factor, empirical formula and DIN 6935 each give for one bend.
 * Tells how far the choice of method matters; a spread over the wanted tolerance asks for a test strip.
 * Formulas and sources: allowance.ts, empiricalAllowance.ts, din6935Allowance.ts.
 */
import type { Mm } from "../units/quantity.ts";
import { bendAllowance } from "./allowance.ts";
import type { BendShape } from "./bendSetback.ts";
import { din6935Allowance } from "./din6935Allowance.ts";
import { empiricalAllowance } from "./empiricalAllowance.ts";

export interface AllowanceComparison {
  readonly byKFactorMm: Mm;
  readonly byEmpiricalMm: Mm;
  readonly byDin6935Mm: Mm;
  /** Largest minus smallest of the three. */
  readonly spreadMm: Mm;
}

/**
 * Bend allowance by each method.
 * @example compareAllowances({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1 }, 0.44).spreadMm < 0.2 // true
 */
export function compareAllowances(shape: BendShape, kFactor: number): AllowanceComparison {
  const byKFactorMm = bendAllowance(shape, kFactor);
  const byEmpiricalMm = empiricalAllowance(shape);
  const byDin6935Mm = din6935Allowance(shape);
  const all = [byKFactorMm, byEmpiricalMm, byDin6935Mm];
  return { byKFactorMm, byEmpiricalMm, byDin6935Mm, spreadMm: Math.max(...all) - Math.min(...all) };
}
