/**
 * The option `--paper`: a4 or letter; left out, what the shop has by its unit.
 */
import { A4, LETTER, type PageSize, paperFor } from "../drawing/pageSize.ts";
import { Refusal } from "./refusal.ts";

/** @throws Refusal for any other word */
export function paperOption(asked: string | undefined, units: "mm" | "in"): PageSize {
  if (asked === undefined) return paperFor(units);
  const word = asked.trim().toLowerCase();
  if (word === "a4") return A4;
  if (word === "letter") return LETTER;
  throw new Refusal(`--paper is "${asked}"; it may be a4 or letter.`);
}
