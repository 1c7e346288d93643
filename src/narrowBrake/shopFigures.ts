/**
 * Figures as a shop of one unit reads them: inches, pounds and ksi, or millimetres, newtons and MPa; never both on a page.
 * 1 ksi = 6.894757 MPa; forces as forceWords.ts. Rounded to what can be told apart.
 */

import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import { capital } from "../words/capital.ts";
import { weightWords } from "../words/weightWords.ts";
import { forceWords } from "./forceWords.ts";
import type { CheckUnit, StrengthCheck } from "./strengthCheck.ts";

const MPA_PER_KSI = 6.894757;

/** A stress in the shop's unit. @example stressWords(150, "in") // "21.8 ksi" */
export function stressWords(mpa: number, units: LengthUnit): string {
  return units === "mm" ? `${round(mpa)} MPa` : `${round(mpa / MPA_PER_KSI)} ksi`;
}

/** A small length, in ten-thousandths where inches are read. @example fineLength(0.05, "in") // "0.0020 in" */
export function fineLength(mm: number, units: LengthUnit): string {
  return units === "mm" ? `${Number(mm.toFixed(3))} mm` : `${(mm / MM_PER_INCH).toFixed(4)} in`;
}

/** A check's figure beside its limit. @example checkFigures({ value: 63, limit: 150, unit: "MPa", passes: true }, "mm") // "63 MPa of 150 MPa" */
export function checkFigures(
  { value, limit, unit, passes }: Pick<StrengthCheck, "value" | "limit" | "unit" | "passes">,
  units: LengthUnit,
): string {
  return `${figure(value, unit, units)} of ${figure(limit, unit, units)}${passes ? "" : ": too much"}`;
}

/** A failed check for people. @example failureWords({ member: "holder", check: "bending across", value: 284, limit: 221, unit: "MPa" }, "in") // "Holder, bending across: 41.2 ksi, and 32.1 ksi is the limit" */
export function failureWords(
  { member, check, value, limit, unit }: Pick<StrengthCheck, "member" | "check" | "value" | "limit" | "unit">,
  units: LengthUnit,
): string {
  return `${capital(member)}, ${check}: ${figure(value, unit, units)}, and ${figure(limit, unit, units)} is the limit`;
}

function figure(value: number, unit: CheckUnit, units: LengthUnit): string {
  switch (unit) {
    case "mm":
      return value < 0.5
        ? fineLength(value, units)
        : units === "mm"
          ? `${Number(value.toFixed(2))} mm`
          : `${(value / MM_PER_INCH).toFixed(3)} in`;
    case "MPa":
      return stressWords(value, units);
    case "N":
      return forceWords(value, units);
    case "kg":
      return weightWords(value, units).replace("about ", "");
    case "deg":
      return `${round(value)}°`;
    case "N·m":
      return `${round(value)} N·m`;
  }
}

function round(value: number): string {
  return value >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(3)));
}
