/**
 * Bend allowance by the aircraft handbooks' empirical formula, (0.01743·R + 0.0078·T) for each degree of bend
 * (FAA-H-8083-31, making straight line bends; bend allowance charts are worked out from it).
 * Made for aircraft aluminium; its neutral line lies at 0.4475 T.
 */
import type { Mm } from "../units/quantity.ts";
import type { BendShape } from "./bendSetback.ts";

const PER_DEGREE_OF_RADIUS = 0.01743;
const PER_DEGREE_OF_THICKNESS = 0.0078;

/**
 * Bend allowance by the empirical formula.
 * @example empiricalAllowance({ angleDeg: 60, insideRadiusMm: 3.9624, thicknessMm: 1.016 }) // 4.61936592
 */
export function empiricalAllowance({ angleDeg, insideRadiusMm, thicknessMm }: BendShape): Mm {
  return angleDeg * (PER_DEGREE_OF_RADIUS * insideRadiusMm + PER_DEGREE_OF_THICKNESS * thicknessMm);
}
