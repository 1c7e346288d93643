/**
 * The words for doubtful readings, each kind of finding once.
 */
import { expect, test } from "vitest";
import { doubtSentences } from "../../src/words/doubtWords.ts";

const none = { worst: null, deciding: [], proved: true, mixesTried: 9 };

test.each([
  [
    "clear",
    { ...none, verdict: "clear" as const },
    ["It folds whatever the readings are within their doubts."],
  ],
  [
    "one reading decides",
    { ...none, verdict: "tight" as const, worst: { flats: [0, -0.25], bend: 1 }, deciding: [2] },
    [
      "Tight by its readings: with flat 2 0.25 mm shorter than read, bend 1 does not fold.",
      "Measure flat 2 again: it alone decides.",
    ],
  ],
  [
    "a mix decides",
    { ...none, verdict: "tight" as const, worst: { flats: [0.25, -0.25, 0.5], bend: 3 } },
    [
      "Tight by its readings: with flat 1 0.25 mm longer, flat 2 0.25 mm shorter and flat 3 0.5 mm longer than read, bend 3 does not fold.",
      "No single reading decides; measure all of these again.",
    ],
  ],
  [
    "tight as read",
    { ...none, verdict: "tight" as const },
    ["Tight as read, but it folds whatever the readings are within their doubts."],
  ],
  [
    "left open",
    { ...none, verdict: "tight" as const, proved: false },
    ["The readings leave it open: take it as tight, or measure closer."],
  ],
  [
    "hits as read",
    { ...none, verdict: "hits" as const, worst: { flats: [0, 0], bend: 2 }, deciding: [1, 2] },
    ["As read, bend 2 does not fold.", "Measure flat 1 and flat 2 again: each of them alone decides."],
  ],
  [
    "hits as read, whatever one reading does",
    { ...none, verdict: "hits" as const, worst: { flats: [0, 0], bend: 2 } },
    ["As read, bend 2 does not fold.", "No single reading, wrong by its doubt, would change that."],
  ],
])("doubtSentences: %s", (_, doubt, sentences) => {
  expect(doubtSentences(doubt, "mm")).toEqual(sentences);
});

test("doubtSentences in inches", () => {
  const doubt = {
    ...none,
    verdict: "tight" as const,
    worst: { flats: [25.4 / 64, 0], bend: 1 },
    deciding: [1],
  };
  expect(doubtSentences(doubt, "in")[0]).toContain("flat 1 1/64 in longer than read");
});
