/**
 * How thick a clamp bar may be, in words: one stock thickness, a span of them, or no upper end worth naming.
 */
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthIn } from "./wayWords.ts";

/** We name no upper end past this: a bar so thick is a block. */
export const THICKEST_MM: Mm = 26;

/** Stock thicknesses of a window in words. @example windowWords([4.7625, 6.35], 7.5, "in") // "3/16 to 1/4 in thick" */
export function windowWords(stockMm: readonly Mm[], thickestMm: Mm, units: LengthUnit): string {
  const [thinnest, thickest] = [stockMm[0] ?? 0, stockMm.at(-1) ?? 0];
  if (thickestMm >= THICKEST_MM) return `${lengthIn(thinnest, units)} thick or more`;
  if (thinnest === thickest) return `${lengthIn(thinnest, units)} thick`;
  return `${formatLength(thinnest, units)} to ${lengthIn(thickest, units)} thick`;
}
