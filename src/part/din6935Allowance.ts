/**
 * Bend allowance after DIN 6935: the neutral line lies at k·s/2 from the inside face, k = 0.65 + 0.5·log10(r/s) up to
 * r/s = 5, else 1. The standard's correction v is what the outside dimensions are longer than the flat sheet; it counts the
 * opening angle β = 180° − θ, and for β up to 90° it measures flanges over the bend, not to the mold line.
 */
import { type Mm, toRad } from "../units/quantity.ts";
import type { BendShape } from "./bendSetback.ts";

const MID_THICKNESS_FROM = 5;

/** From this opening angle on the standard leaves the correction out. */
const NEGLECTED_FROM_BETA = 165;

/**
 * The standard's k for a ratio of inside radius to thickness: 1 puts the neutral line at mid thickness, 0 on the inside
 * face. Under r/s = 0.05 the formula would leave the sheet; it is held at 0 there.
 * @example din6935Factor(1) // 0.65
 */
export function din6935Factor(radiusOverThickness: number): number {
  if (radiusOverThickness > MID_THICKNESS_FROM) return 1;
  return Math.max(0, 0.65 + 0.5 * Math.log10(radiusOverThickness));
}

/**
 * Bend allowance: the neutral line's arc, θ·(r + k·s/2).
 * @example din6935Allowance({ angleDeg: 90, insideRadiusMm: 2, thicknessMm: 2 }) // 4.162610266006475
 */
export function din6935Allowance({ angleDeg, insideRadiusMm, thicknessMm }: BendShape): Mm {
  const k = din6935Factor(insideRadiusMm / thicknessMm);
  return toRad(angleDeg) * (insideRadiusMm + (k * thicknessMm) / 2);
}

/**
 * The standard's correction v, so that the flat length is a + b − v with the outside dimensions a and b. For a bend of
 * 90° or more (β ≤ 90°) a and b reach to the outermost point of the bend; under 15° of bend v is 0.
 * @example din6935Correction({ angleDeg: 90, insideRadiusMm: 2, thicknessMm: 2 }) // 3.8373897339935246
 */
export function din6935Correction(shape: BendShape): Mm {
  const beta = 180 - shape.angleDeg;
  if (beta > NEGLECTED_FROM_BETA) return 0;
  const reach = beta <= 90 ? 1 : Math.tan(toRad(shape.angleDeg) / 2);
  return 2 * (shape.insideRadiusMm + shape.thicknessMm) * reach - din6935Allowance(shape);
}
