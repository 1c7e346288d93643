/**
 * How far the leaf angle of a bend is to be trusted where it was reckoned from springback and not read off a test strip.
 */
import type { JudgedStep } from "../jobFile/answer.ts";
import { angleWords } from "./stepWords.ts";

/** A range narrower than this can't be seen on a protractor. */
const SEEN_DEG = 0.2;

/**
 * One sentence for bends that want the same range, empty where every leaf angle was given.
 * Such as "Bend 1: the leaf angle is reckoned …".
 */
export function leafRangeSentences(
  order: readonly Pick<JudgedStep, "bend" | "overbend" | "overbendRange">[],
): readonly string[] {
  const ranges = new Map<string, number[]>();
  for (const { bend, overbendRange } of order) {
    const [low, high] = overbendRange;
    if (high - low < SEEN_DEG) continue;
    const range = `${angleWords(low)} to ${angleWords(high)}`;
    ranges.set(
      range,
      [...new Set([...(ranges.get(range) ?? []), bend])].sort((a, b) => a - b),
    );
  }
  return [...ranges].map(([range, bends]) => {
    const which = bends.length === 1 ? `Bend ${bends[0]}` : `Bends ${listed(bends)}`;
    return `${which}: springback is reckoned, not measured; expect to swing the leaf to ${range}. A test strip narrows it.`;
  });
}

function listed(bends: readonly number[]): string {
  return `${bends.slice(0, -1).join(", ")} and ${bends.at(-1)}`;
}
