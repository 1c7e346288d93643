/**
 * Keys of a job that the check of a whole part does not look at, so that nobody counts on them.
 */
import type { UnreadKey } from "../jobFile/wholeJob.ts";

const WORDS: Readonly<Record<UnreadKey, string>> = {
  grain:
    "We don't look at part.grain: bends of a whole part run more than one way. Keep the sharpest of them across the grain.",
  doubts:
    "We don't look at part.doubts in a check of a whole part: the answer holds for the sizes as written.",
  cutOuts:
    "We don't look at part.cutOuts in a whole part: neither the blank nor the check has them. Write the part as a pattern and give it holes.",
  overall: "We don't look at part.overall: a box and a pattern have their sizes already.",
  dimensions: "We don't look at part.dimensions: a pattern is the flat blank in its developed size.",
  length: "We don't look at part.length: a box and a pattern have their sizes already.",
};

/** @example unreadWords("length") // "We don't look at part.length: a box and a pattern have their sizes already." */
export function unreadWords(key: UnreadKey): string {
  return WORDS[key];
}
