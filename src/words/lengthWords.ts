/**
 * Clearances and positions in the user's unit as decimals, so that a column of them can be read down.
 * Hundredths of a mm, thousandths of an inch (0.025 mm): finer than a shop-made bend holds.
 */
import { type LengthUnit, MM_PER_INCH, nearestSixtyFourth } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** The figure alone. @example lengthFigure(25.4, "in") // "1.000" */
export function lengthFigure(lengthMm: Mm, units: LengthUnit): string {
  return units === "in" ? (lengthMm / MM_PER_INCH).toFixed(3) : lengthMm.toFixed(2);
}

/** Figure and unit. @example lengthWords(1.0312, "mm") // "1.03 mm" */
export function lengthWords(lengthMm: Mm, units: LengthUnit): string {
  return `${lengthFigure(lengthMm, units)} ${units}`;
}

/** A position as read off a rule: decimal, and in inches the nearest 64th. @example placeFigures(10, "in") // ["0.394", "(25/64)"] */
export function placeFigures(lengthMm: Mm, units: LengthUnit): readonly string[] {
  const decimal = lengthFigure(lengthMm, units);
  return units === "in" ? [decimal, `(${nearestSixtyFourth(lengthMm).words})`] : [decimal];
}

/** The same with its unit. @example placeWords(10, "in") // "0.394 in (25/64)" */
export function placeWords(lengthMm: Mm, units: LengthUnit): string {
  const [decimal, ...fraction] = placeFigures(lengthMm, units);
  return [`${decimal} ${units}`, ...fraction].join(" ");
}
