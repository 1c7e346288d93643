/**
 * How much of the leaf angle a bend keeps: published springback factors k_R = finished angle / bent angle by family of
 * metals, over inside radius / thickness, straight between the printed columns; where no curve is printed, the formula of
 * springback.ts. Factors are printed to 0.01, which is 0.9° of a right angle; `range` says how far to trust them.
 */
import type { Mm } from "../units/quantity.ts";
import type { Metal, SpringbackRow } from "./metal.ts";
import { springbackRatio } from "./springback.ts";

/** Columns of the table: inside radius of the part over thickness (a Renard series; the headings are from memory). */
const RADIUS_OVER_THICKNESS = [1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100];

export const SPRINGBACK_TABLE =
  "Tabellenbuch Metall (Europa-Lehrmittel), manufacturing, bending: springback factor kR by material and r2 : s";

/** Rows of the table, as printed: sheet metals by their standard names. */
const ROWS: Readonly<Record<SpringbackRow, readonly number[]>> = {
  DC04: [0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83],
  DC01: [0.99, 0.99, 0.99, 0.97, 0.96, 0.96, 0.93, 0.9, 0.85, 0.77, 0.66],
  "X12CrNi18-8": [0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63],
  "E-Cu": [0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.9, 0.85, 0.79, 0.72, 0.6],
  CuZn33: [0.97, 0.97, 0.96, 0.95, 0.94, 0.93, 0.89, 0.86, 0.83, 0.77, 0.73],
  "Al99.0": [0.99, 0.99, 0.99, 0.99, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93],
  AlCuMg1: [0.98, 0.98, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.91, 0.87],
  AlSiMgMn: [0.98, 0.98, 0.97, 0.96, 0.95, 0.93, 0.9, 0.86, 0.82, 0.76, 0.72],
};

/** Parts of the leaf angle that stay, between 0 and 1: `most` springs back least. */
export interface KeptShare {
  readonly most: number;
  readonly likely: number;
  readonly least: number;
}

/** A factor printed to 0.01 may be off by half of that. */
const ROUNDING = 0.005;

/** Yield of one sheet and the next differ by 10 % and more, and springback with it: common practice, no source. */
const SCATTER = 0.15;

/** The formula leaves the sheet's hardening and the sharp bend's elastic core out: twice the scatter, and a printed step. */
const FORMULA_SCATTER = 0.3;
const FORMULA_SHORT = 0.01;

/**
 * The share of the leaf angle that a bend of this inside radius and thickness keeps, with the range to reckon with. Under
 * the first column the first is taken; past the last printed factor the formula, but no more than that factor.
 * @throws RangeError as springbackRatio
 * @example keptShare({ name: "304", yieldMpa: 290, modulusMpa: 193000, springback: { row: "X12CrNi18-8" } }, 4, 1).likely // 0.95
 */
export function keptShare(metal: Metal, insideRadiusMm: Mm, thicknessMm: Mm): KeptShare {
  const { yieldMpa, modulusMpa, springback } = metal;
  const byFormula = springbackRatio({ insideRadiusMm, thicknessMm, yieldMpa, modulusMpa });
  if (springback === undefined) {
    const lost = 1 - byFormula;
    return {
      most: 1 - (1 - FORMULA_SCATTER) * lost,
      likely: byFormula,
      least: Math.max(0, 1 - (1 + FORMULA_SCATTER) * lost - FORMULA_SHORT),
    };
  }
  const ratio = insideRadiusMm / thicknessMm;
  const likely = factorAt(springback.row, ratio) ?? Math.min(byFormula, ROWS[springback.row].at(-1) ?? 1);
  const softer = (springback.softer && factorAt(springback.softer, ratio)) ?? likely;
  const doubt = ROUNDING + SCATTER * (1 - likely);
  return {
    most: Math.min(1, Math.max(likely + doubt, softer)),
    likely,
    least: Math.max(0, likely - doubt),
  };
}

/** The printed factor, straight between columns; undefined past the last one. */
function factorAt(row: SpringbackRow, ratio: number): number | undefined {
  const factors = ROWS[row];
  const above = RADIUS_OVER_THICKNESS.findIndex((column) => column >= ratio);
  if (above < 0 || above >= factors.length) return undefined;
  if (above === 0) return factors[0];
  const [from, to] = [RADIUS_OVER_THICKNESS[above - 1]!, RADIUS_OVER_THICKNESS[above]!];
  const part = (ratio - from) / (to - from);
  return factors[above - 1]! + part * (factors[above]! - factors[above - 1]!);
}
