/**
 * A length as it goes into a job file: as the shop writes it where that is exact, else in decimals.
 * Bound: decimals of a millimetre to 0.0001 mm, of an inch to 0.000025 mm.
 */
import { type LengthUnit, MM_PER_INCH, nearestSixtyFourth, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** @example writtenLength(9.525, "in") // "3/8" */
export function writtenLength(lengthMm: Mm, units: LengthUnit): number | string {
  // Nothing added makes 0 of -0.
  if (units === "mm") return Number(lengthMm.toFixed(4)) + 0;
  const { words, roundingMm } = nearestSixtyFourth(lengthMm);
  return Math.abs(roundingMm) < 1e-6 ? words : Number((lengthMm / MM_PER_INCH).toFixed(6));
}

/** More than any rounding of the decimals takes away. */
const OVER_ROUNDING_MM: Mm = 0.0002;

/** The same, never read back as less: for what must be enough. @example writtenAtLeast(1.21412, "mm") // 1.2143 */
export function writtenAtLeast(lengthMm: Mm, units: LengthUnit): number | string {
  const written = writtenLength(lengthMm, units);
  const readBack = parseLength(written, units) ?? 0;
  return readBack >= lengthMm ? written : writtenLength(lengthMm + OVER_ROUNDING_MM, units);
}
