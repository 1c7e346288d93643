/**
 * What the other ways to reckon a bend allowance would make of a blank: wider (+) or narrower (−) than it was laid out.
 * Sums over all bends; formulas and sources: empiricalAllowance.ts, din6935Allowance.ts.
 * Exact to the formulas; which of them is nearest to the sheet at hand only a test strip can say.
 */
import { compareAllowances } from "../part/compareAllowances.ts";
import type { Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

export interface BlankByMethod {
  /** By how much the K-factor would widen the blank; 0 where it was laid out by it. */
  readonly kFactorOffMm: Mm;
  /** By how much the aircraft handbooks' empirical formula would widen the blank. */
  readonly empiricalOffMm: Mm;
  /** The same for DIN 6935. */
  readonly din6935OffMm: Mm;
  /** The larger of both, without its sign. */
  readonly mostOffMm: Mm;
}

/**
 * How far each method would put this part's developed width from the one that it has; a bend without an allowance of its own
 * counts as laid out by the K-factor.
 * @example blankByMethod({ thicknessMm: 1, kFactor: 0.44, bends: [] }).mostOffMm // 0
 */
export function blankByMethod({
  bends,
  thicknessMm,
  kFactor,
}: Pick<Part, "thicknessMm" | "kFactor"> & {
  readonly bends: readonly (Pick<Part["bends"][number], "angleDeg" | "insideRadiusMm"> & {
    readonly allowanceMm?: Mm;
  })[];
}): BlankByMethod {
  const compared = bends.map((bend) => {
    const by = compareAllowances({ ...bend, thicknessMm }, kFactor);
    return { ...by, laidOutMm: bend.allowanceMm ?? by.byKFactorMm };
  });
  const kFactorOffMm = sum(compared.map(({ byKFactorMm, laidOutMm }) => byKFactorMm - laidOutMm));
  const empiricalOffMm = sum(compared.map(({ byEmpiricalMm, laidOutMm }) => byEmpiricalMm - laidOutMm));
  const din6935OffMm = sum(compared.map(({ byDin6935Mm, laidOutMm }) => byDin6935Mm - laidOutMm));
  const mostOffMm = Math.max(...[kFactorOffMm, empiricalOffMm, din6935OffMm].map(Math.abs));
  return { kFactorOffMm, empiricalOffMm, din6935OffMm, mostOffMm };
}

function sum(lengthsMm: readonly Mm[]): Mm {
  return lengthsMm.reduce((total, mm) => total + mm, 0);
}
