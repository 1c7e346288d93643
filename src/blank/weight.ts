/**
 * Weight of a blank: width × length × thickness × density, holes and notches not taken off.
 * The sheet's own thickness tolerance (a few per cent) is the larger doubt.
 */
import type { Mm } from "../units/quantity.ts";

/**
 * Kilograms of a plain rectangular blank; density in kg/m³.
 * @throws RangeError when a size or the density is not above zero
 * @example blankWeightKg({ widthMm: 1000, lengthMm: 1000, thicknessMm: 1 }, 7850) // 7.85
 */
export function blankWeightKg(
  blank: { readonly widthMm: Mm; readonly lengthMm: Mm; readonly thicknessMm: Mm },
  densityKgM3: number,
): number {
  const figures = [blank.widthMm, blank.lengthMm, blank.thicknessMm, densityKgM3];
  if (!figures.every((figure) => figure > 0)) {
    throw new RangeError("width, length, thickness and density of a blank must be above zero");
  }
  return (blank.widthMm * blank.lengthMm * blank.thicknessMm * densityKgM3) / 1e9;
}
