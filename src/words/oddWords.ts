/**
 * What is asked about figures that can be read but are probably not what was meant.
 */
import type { OddFigure } from "../jobFile/oddFigures.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";

/** The question, with what to write instead. */
export function oddSentence(odd: OddFigure, units: LengthUnit): string {
  if (odd.kind === "millimetres") {
    return `Flat ${odd.flat} is ${odd.written} in long, ${odd.times} times the sheet's thickness. If you meant millimetres, write "${odd.written} mm".`;
  }
  const would =
    odd.wouldMm === undefined
      ? "has no such number"
      : `is ${formatLength(odd.wouldMm, units)} ${units} by that number`;
  return `The thickness is written as "${odd.written}", but the metal is ${odd.metal}: ${odd.family} sheet ${would}. Measure the sheet, or write the gauge with its own family.`;
}
