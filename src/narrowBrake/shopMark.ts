/**
 * Lengths as they are marked out (up to the next sixteenth or whole millimetre), and limits rounded to the safe side.
 * Lengths to saw go always up, since they may be longer but not shorter.
 * Exact; a length within a ten-thousandth of a mark stays on it, so that 12 in doesn't become 12 1/16.
 */
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

const ON_THE_MARK = 1e-4;

/** The next mark up. @example upToMark(12.1, "mm") // 13 */
export function upToMark(lengthMm: Mm, units: LengthUnit): Mm {
  const markMm = units === "in" ? MM_PER_INCH / 16 : 1;
  return Math.ceil(lengthMm / markMm - ON_THE_MARK) * markMm;
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
