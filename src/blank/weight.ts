/**
 * Weight of a blank: (width × length − what is cut away) × thickness × density.
 * The sheet's own thickness tolerance (a few per cent) is the larger doubt.
 */
import type { Mm } from "../units/quantity.ts";

/**
 * Kilograms of a blank; density in kg/m³. `takenMm2` is the area that cut-outs and holes take away, none if not given.
 * @throws RangeError when a size or the density is not above zero, or nothing of the sheet is left
 * @example blankWeightKg({ widthMm: 1000, lengthMm: 1000, thicknessMm: 1 }, 7850) // 7.85
 */
export function blankWeightKg(
  blank: {
    readonly widthMm: Mm;
    readonly lengthMm: Mm;
    readonly thicknessMm: Mm;
    readonly takenMm2?: number;
  },
  densityKgM3: number,
): number {
  const figures = [blank.widthMm, blank.lengthMm, blank.thicknessMm, densityKgM3];
  if (!figures.every((figure) => figure > 0)) {
    throw new RangeError("width, length, thickness and density of a blank must be above zero");
  }
  const leftMm2 = blank.widthMm * blank.lengthMm - (blank.takenMm2 ?? 0);
  if (!(leftMm2 > 0)) throw new RangeError("more is cut away than the blank has");
  return (leftMm2 * blank.thicknessMm * densityKgM3) / 1e9;
}
