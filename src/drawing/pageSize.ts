/**
 * Sheets of paper that a drawing is printed on, upright: A4 and Letter.
 * Sizes: ISO 216 (A4), ANSI/ASME Y14.1 size A (Letter, 8 1/2 × 11 in). Exact.
 */
import type { Mm } from "../units/quantity.ts";

export interface PageSize {
  readonly name: "A4" | "Letter";
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

export const A4: PageSize = { name: "A4", widthMm: 210, heightMm: 297 };
export const LETTER: PageSize = { name: "Letter", widthMm: 215.9, heightMm: 279.4 };

/** Strip at each edge that a home or office printer may leave white, so nothing is put there. */
export const PRINTER_MARGIN_MM: Mm = 10;

/** The paper a shop has: Letter where it works in inches, A4 where in millimetres. @example paperFor("in").name // "Letter" */
export function paperFor(units: "mm" | "in"): PageSize {
  return units === "in" ? LETTER : A4;
}
