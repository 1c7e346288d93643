/**
 * Which way the grain of the sheet lies, in words.
 */
import { grainAt } from "../blank/grain.ts";
import type { Deg } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";

/**
 * Which way the grain lies, for tables and sheets.
 * @example grainWords(90) // "Grain across the bend lines, as it should be."
 */
export function grainWords(grainDeg: Deg | undefined): string {
  if (grainDeg === undefined) return "Lay the blank so that its bends cross the grain of the sheet.";
  const square = grainDeg % 90 === 0;
  const lie = square ? "" : `, ${angleWords(grainDeg > 90 ? 180 - grainDeg : grainDeg)} from them`;
  return grainAt(grainDeg) === "across"
    ? `Grain across the bend lines${lie}, as it should be.`
    : `Grain along the bend lines${lie}: the outside of a bend may crack.`;
}
