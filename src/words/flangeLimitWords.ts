/**
 * A longest flange as the table of a chart tells it: rounded down so that it can be bent, to a 64th or a tenth of a mm.
 */
import { formatLength, type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** @example limitWords(7.6, 60, "in") // "19/64" */
export function limitWords(flangeMm: Mm | null, mostMm: Mm, units: LengthUnit): string {
  if (flangeMm === null) return "none";
  if (flangeMm >= mostMm) return "any";
  const grain = units === "in" ? MM_PER_INCH / 64 : 0.1;
  return formatLength(Math.floor(flangeMm / grain + 1e-9) * grain, units);
}
