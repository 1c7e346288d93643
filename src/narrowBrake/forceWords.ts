/**
 * Forces and torques in the user's words: newtons, or pounds where the shop works in inches.
 * 1 lbf = 4.448222 N exactly to six decimals, 1 N·m = 0.737562 lbf·ft.
 * Bound: rounded to what a hand or a torque wrench can tell.
 */
import type { LengthUnit } from "../units/length.ts";

const N_PER_LBF = 4.448222;
const LBF_FT_PER_NM = 0.737562;

/** Torque in the user's words. @example torqueWords(20, "in") // "15 lbf·ft" */
export function torqueWords(torqueNm: number, units: LengthUnit): string {
  const nm = `${torqueNm < 10 ? torqueNm.toFixed(1) : Math.round(torqueNm)} N·m`;
  if (units === "mm") return nm;
  const lbfFt = torqueNm * LBF_FT_PER_NM;
  return `${lbfFt < 10 ? lbfFt.toFixed(1) : Math.round(lbfFt)} lbf·ft`;
}

/** @example forceWords(200, "in") // "45 lbf" */
export function forceWords(newtons: number, units: LengthUnit): string {
  return units === "mm" ? `${readable(newtons)} N` : `${readable(newtons / N_PER_LBF)} lbf`;
}

/** Three figures are more than any of these loads is known to. */
function readable(force: number): string {
  return String(Number(force.toPrecision(3)));
}
