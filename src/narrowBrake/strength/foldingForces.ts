/**
 * What folding asks of leaf, clamp and setback screws per unit length, from the folding moment and two levers.
 * Statics of the sheet as a lever on the nose: leaf at +a lifts, bed at −b lifts, nose holds down both (moments about the nose).
 * Bound: worst over the swing. The clamp's load is largest at leaf angle 0, the push toward the bar at 90°.
 */
import type { Deg, Mm } from "../../units/quantity.ts";
import { toRad } from "../../units/quantity.ts";
import type { MomentPerLength } from "./sheetMoment.ts";

/** A force per unit length, N/mm. */
export type ForcePerLength = number & { readonly quantity?: "N/mm" };

export interface FoldingForces {
  /** Leaf on the flange, square to the leaf face. */
  readonly leafNPerMm: ForcePerLength;
  /** Bed on the clamped flat, behind the nose. */
  readonly bedNPerMm: ForcePerLength;
  /** Nose on the sheet, down: the sum of both. */
  readonly clampNPerMm: ForcePerLength;
  /** Largest push of the leaf toward the bar, level, over the swing. */
  readonly pushNPerMm: ForcePerLength;
}

/**
 * Forces per unit length for a folding moment.
 * @param leafLeverMm distance from the bend line to the middle of what the leaf bears on
 * @param bedLeverMm distance from the nose back to the middle of what the bed bears on
 * @param overbendDeg leaf angle at the end of the swing
 * @throws RangeError where a lever is not above zero: no lever, no moment
 * @example foldingForces(60, 6, 10, 90) // { leafNPerMm: 10, bedNPerMm: 6, clampNPerMm: 16, pushNPerMm: 10 }
 */
export function foldingForces(
  moment: MomentPerLength,
  leafLeverMm: Mm,
  bedLeverMm: Mm,
  overbendDeg: Deg,
): FoldingForces {
  if (!(leafLeverMm > 0) || !(bedLeverMm > 0)) {
    throw new RangeError(`levers of leaf and bed must be above 0, found ${leafLeverMm} and ${bedLeverMm}`);
  }
  const leafNPerMm = moment / leafLeverMm;
  const bedNPerMm = moment / bedLeverMm;
  return {
    leafNPerMm,
    bedNPerMm,
    clampNPerMm: leafNPerMm + bedNPerMm,
    pushNPerMm: leafNPerMm * Math.sin(toRad(Math.min(overbendDeg, 90))),
  };
}
