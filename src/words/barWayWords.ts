/**
 * A clamp bar or a narrow brake to be made as a way out: what to make, why no thinner or thicker, and why some part is left.
 */
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { largestFigure, leastFigure } from "./lengthWords.ts";
import { lowered } from "./stepWords.ts";
import { lengthIn } from "./wayWords.ts";
import { THICKEST_MM, windowWords } from "./windowWords.ts";

/** How thick a bar may be, from which thickness on it holds, and what asks for that. */
export interface BarWindowTold {
  readonly thinnestMm: Mm;
  readonly thickestMm: Mm;
  readonly stockInsideMm: readonly Mm[];
  readonly governs: "strength" | "stiffness" | "nose";
}

/** @example makeBarWords(window, 14, "mm") // "Make a brake with a clamp bar 5 mm thick that stands out 14 mm in front of its holder" */
export function makeBarWords(
  window: Pick<BarWindowTold, "stockInsideMm" | "thickestMm">,
  overhangMm: Mm,
  units: LengthUnit,
): string {
  const thickness = windowWords(window.stockInsideMm, window.thickestMm, units);
  return `Make a brake with a clamp bar ${thickness} that stands out ${lengthIn(overhangMm, units)} in front of its holder`;
}

/** Why not thinner, and why not thicker. */
export function barReasonWords(
  { thinnestMm, thickestMm, governs }: Omit<BarWindowTold, "stockInsideMm">,
  lengthGuessed: boolean,
  units: LengthUnit,
): string {
  const lack = governs === "nose" ? "round" : governs === "strength" ? "strong" : "stiff";
  const thickest =
    thickestMm >= THICKEST_MM
      ? ""
      : `, thicker than ${largestFigure(thickestMm, units)} ${units} does not clear`;
  const guess = lengthGuessed ? " The length of the part is guessed: give it." : "";
  return `Thinner than ${leastFigure(thinnestMm, units)} ${units} is not ${lack} enough${thickest}.${guess}`;
}

export const NOT_WITH_THE_REST = "A bar of its own would make it, but not one that makes the others too.";

/** No bar makes it; `onThinnest` is the verdict on the thinnest one, undefined where it folds there. */
export function noBarWords(onThinnest: string | undefined): string {
  return onThinnest === undefined
    ? "No clamp bar makes it: a bar that it clears leaves no room for its holder, the bed or the leaf."
    : `No clamp bar makes it. On the thinnest, with no holder behind it, the part ${lowered(onThinnest)}`;
}

/** A bar was planned, but the made brake does not fold the part. */
export function notOnMadeWords(windowSentence: string): string {
  return `As planned, the made brake would not fold it. ${windowSentence}`;
}
