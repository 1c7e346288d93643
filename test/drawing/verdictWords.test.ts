import { describe, expect, it } from "vitest";
import { verdictSentence } from "../../src/drawing/verdictWords.ts";
import { answerOf, hit, jobOf, stepOf } from "./answers.ts";

const first = stepOf({ bend: 1, clamped: "start", clearance: null, clearancePoints: null });

describe("verdictSentence", () => {
  it("says how to begin where the part folds", () => {
    expect(verdictSentence(jobOf(), answerOf("clear", stepOf(), first))).toBe(
      "Folds. Bend 2 first, flat 3 in the throat.",
    );
  });

  it("says how little is left where it is tight, at the bend where it is least", () => {
    const answer = answerOf(
      "tight",
      stepOf(),
      stepOf({ bend: 1, clamped: "start", verdict: "tight", clearance: 0.31 }),
    );
    expect(verdictSentence(jobOf(), answer)).toBe(
      "Folds, but only just: 0.31 mm to spare at bend 1. Bend 2 first, flat 3 in the throat.",
    );
  });

  it("says where it stops and on what", () => {
    expect(verdictSentence(jobOf(), answerOf("hits", first, hit))).toBe(
      "Does not fold: at 75.2° the end of flat 1 meets the clamp at bend 2.",
    );
  });

  it("speaks of the given order where the job gives one", () => {
    const order = [
      { bend: 0, clamped: "start" },
      { bend: 1, clamped: "end" },
    ] as const;
    expect(verdictSentence(jobOf({ order }), answerOf("hits", first, hit))).toContain(
      "Does not fold in this order: at 75.2°",
    );
    expect(verdictSentence(jobOf({ order }), answerOf("clear", first, stepOf()))).toContain(
      "Folds in this order. Bend 1 first",
    );
  });
});
