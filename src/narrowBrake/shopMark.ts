/**
 * Lengths as they are marked out: up to the next sixteenth or whole millimetre, since they may be longer but not shorter.
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
