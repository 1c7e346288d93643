/**
 * Clearances and positions in the user's unit as decimals, so that a column of them can be read down.
 * Hundredths of a mm, thousandths of an inch (0.025 mm): finer than a shop-made bend holds.
 */
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** The figure alone. @example lengthFigure(25.4, "in") // "1.000" */
export function lengthFigure(lengthMm: Mm, units: LengthUnit): string {
  return units === "in" ? (lengthMm / MM_PER_INCH).toFixed(3) : lengthMm.toFixed(2);
}

/** Figure and unit. @example lengthWords(1.0312, "mm") // "1.03 mm" */
export function lengthWords(lengthMm: Mm, units: LengthUnit): string {
  return `${lengthFigure(lengthMm, units)} ${units}`;
}
