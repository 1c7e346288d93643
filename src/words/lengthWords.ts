/**
 * Clearances and positions in the user's unit as decimals, so that a column of them can be read down.
 * Hundredths of a mm, thousandths of an inch (0.025 mm): finer than a shop-made bend holds.
 */
import { FRACTION_WITHIN_IN, type LengthUnit, MM_PER_INCH, nearestSixtyFourth } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** The figure alone. @example lengthFigure(25.4, "in") // "1.000" */
export function lengthFigure(lengthMm: Mm, units: LengthUnit): string {
  return units === "in" ? (lengthMm / MM_PER_INCH).toFixed(3) : lengthMm.toFixed(2);
}

/** Figure and unit. @example lengthWords(1.0312, "mm") // "1.03 mm" */
export function lengthWords(lengthMm: Mm, units: LengthUnit): string {
  return `${lengthFigure(lengthMm, units)} ${units}`;
}

/**
 * A position in decimals, and in inches the 64th that it is, where it is one. Millimetres have no 64ths.
 * @example placeFigures(9.525, "in") // ["0.375", "(3/8)"]
 * @example placeFigures(10, "in") // ["0.394"]
 */
export function placeFigures(lengthMm: Mm, units: LengthUnit): readonly string[] {
  const decimal = lengthFigure(lengthMm, units);
  const { words, roundingMm } = nearestSixtyFourth(lengthMm);
  const isOne = units === "in" && Math.abs(roundingMm) <= FRACTION_WITHIN_IN * MM_PER_INCH;
  return isOne && words.includes("/") ? [decimal, `(${words})`] : [decimal];
}

/** The same with its unit. @example placeWords(9.525, "in") // "0.375 in (3/8)" */
export function placeWords(lengthMm: Mm, units: LengthUnit): string {
  const [decimal, ...fraction] = placeFigures(lengthMm, units);
  return [`${decimal} ${units}`, ...fraction].join(" ");
}

/** For a rule with 64ths, where it was asked for: the nearest one, and what it adds (+) or takes (−). @example sixtyFourth(10) // ["25/64", "−0.003"] */
export function sixtyFourth(lengthMm: Mm): readonly [nearest: string, adds: string] {
  const { words, roundingMm } = nearestSixtyFourth(lengthMm);
  const off = lengthFigure(Math.abs(roundingMm), "in");
  return [words, `${Number(off) === 0 ? " " : roundingMm > 0 ? "+" : "−"}${off}`];
}

/** A least size in decimals, rounded up. @example leastFigure(3.7755, "in") // "0.149" */
export function leastFigure(lengthMm: Mm, units: LengthUnit): string {
  return figure(lengthMm, units, Math.ceil);
}

/** A largest size in decimals, rounded down: 5/16 in must not be read where 0.311 in is the limit. @example largestFigure(7.8994, "in") // "0.311" */
export function largestFigure(lengthMm: Mm, units: LengthUnit): string {
  return figure(lengthMm, units, Math.floor);
}

function figure(lengthMm: Mm, units: LengthUnit, round: (value: number) => number): string {
  const decimals = units === "in" ? 3 : 2;
  const scale = 10 ** decimals;
  return (round((units === "in" ? lengthMm / MM_PER_INCH : lengthMm) * scale) / scale).toFixed(decimals);
}
