/**
 * A strength check's figure beside its limit, in the user's unit of length; stresses, forces and angles stay as they are.
 * What is limited to less than half a millimetre is told in millimetres: thousandths of an inch are too coarse for it.
 */

import { type LengthUnit, MM_PER_INCH } from "../../units/length.ts";
import type { CheckUnit, StrengthCheck } from "../strengthCheck.ts";

const FINE_MM = 0.5;

/** @example checkFigures({ value: 63, limit: 150, unit: "MPa", passes: true }, "mm") // "63 of 150 MPa" */
export function checkFigures(
  { value, limit, unit, passes }: Pick<StrengthCheck, "value" | "limit" | "unit" | "passes">,
  units: LengthUnit,
): string {
  if (unit === "mm" && limit < FINE_MM) {
    return `${value.toFixed(3)} of ${limit.toFixed(3)} mm${passes ? "" : ": too much"}`;
  }
  return `${inUnit(value, unit, units)} of ${inUnit(limit, unit, units)} ${unitWords(unit, units)}${passes ? "" : ": too much"}`;
}

function inUnit(value: number, unit: CheckUnit, units: LengthUnit): string {
  if (unit === "mm") return units === "mm" ? value.toFixed(2) : (value / MM_PER_INCH).toFixed(3);
  return value >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(2)));
}

function unitWords(unit: CheckUnit, units: LengthUnit): string {
  if (unit === "mm") return units;
  return unit === "deg" ? "degrees" : unit;
}
