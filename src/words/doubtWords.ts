/**
 * What doubtful readings mean for the answer, in the foreman's words: which mix stops it, and what to measure again.
 */

import type { DoubtsAnswer } from "../jobFile/answer.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** Doubts under this print as nothing. */
const SHOWN_MM: Mm = 0.005;

/** What is said where no mix of the readings stops the part. */
export const FOLDS_AS_READ = "It folds whatever the readings are within their doubts.";

/**
 * Sentences for people, the finding first.
 * @example
 * doubtSentences({ verdict: "tight", worst: { flats: [0, -0.25], bend: 1 }, deciding: [2], proved: true, mixesTried: 5 }, "mm")
 * // ["Tight by its readings: with flat 2 0.25 mm shorter than read, bend 1 does not fold.", "Measure flat 2 again: it alone decides."]
 */
export function doubtSentences(doubt: DoubtsAnswer, units: "mm" | "in"): readonly string[] {
  const again = measureAgain(doubt.deciding);
  if (doubt.verdict === "clear") return [FOLDS_AS_READ];
  if (doubt.verdict === "hits") {
    return [
      `As read, bend ${doubt.worst?.bend ?? 1} does not fold.`,
      ...(again === undefined ? ["No single reading, wrong by its doubt, would change that."] : [again]),
    ];
  }
  if (doubt.worst !== null) {
    const sentence = `Tight by its readings: ${worstMixWords(doubt.worst, units)}.`;
    return [sentence, again ?? "No single reading decides; measure all of these again."];
  }
  return doubt.proved
    ? ["Tight as read, but it folds whatever the readings are within their doubts."]
    : ["The readings leave it open: take it as tight, or measure closer."];
}

/**
 * The mix that stops soonest, and where.
 * @example worstMixWords({ flats: [0, -0.25], bend: 1 }, "mm") // "with flat 2 0.25 mm shorter than read, bend 1 does not fold"
 */
export function worstMixWords(worst: NonNullable<DoubtsAnswer["worst"]>, units: "mm" | "in"): string {
  return `with ${mixWords(worst.flats, units)}, bend ${worst.bend} does not fold`;
}

function mixWords(offMm: readonly Mm[], units: "mm" | "in"): string {
  const said = offMm.flatMap((off, flat) => {
    if (Math.abs(off) < SHOWN_MM) return [];
    return [
      `flat ${flat + 1} ${formatLength(Math.abs(off), units)} ${units} ${off > 0 ? "longer" : "shorter"}`,
    ];
  });
  return said.length === 0 ? "the flats as read" : `${listed(said)} than read`;
}

function measureAgain(flats: readonly number[]): string | undefined {
  if (flats.length === 0) return undefined;
  const named = listed(flats.map((flat) => `flat ${flat}`));
  return flats.length === 1
    ? `Measure ${named} again: it alone decides.`
    : `Measure ${named} again: each of them alone decides.`;
}

export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
