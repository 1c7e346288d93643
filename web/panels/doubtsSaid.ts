/**
 * What the doubts of the readings do to the answer, in the foreman's words.
 */
import type { DoubtsAnswer } from "../../src/jobFile/answer.ts";
import { doubtSentences } from "../../src/words/doubtWords.ts";

/** The finding as sentences, what it is first, then what to measure again. */
export function doubtsSaid(found: DoubtsAnswer, units: "mm" | "in"): readonly string[] {
  const { worst, deciding } = found;
  // The words count flats and bends as the engine does, from 0.
  const fromZero = {
    ...found,
    worst: worst && { offMm: worst.flats, bend: worst.bend - 1 },
    deciding: deciding.map((flat) => flat - 1),
  };
  return doubtSentences(fromZero, units);
}
