/**
 * Bend allowance after DIN 6935: the neutral line lies at k·s/2 from the inside face, k = 0.65 + 0.5·log10(r/s) up to
 * r/s = 5, else 1.
 */
import { type Mm, toRad } from "../units/quantity.ts";
import type { BendShape } from "./bendSetback.ts";

const MID_THICKNESS_FROM = 5;

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
