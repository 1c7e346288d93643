import { describe, expect, it } from "vitest";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { answerOf, hit, jobOf, stepOf } from "../jobFile/answers.ts";

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

  it("names the mix of readings that stops it, or says that they leave it open", () => {
    const doubts = { verdict: "tight", deciding: [], proved: true, mixesTried: 9 } as const;
    const tight = answerOf("tight", stepOf(), first);
    const worst = { flats: [0, -0.25, 0.5], bend: 2 };
    expect(verdictSentence(jobOf(), { ...tight, doubts: { ...doubts, worst } })).toBe(
      "Folds as read, but with flat 2 0.25 mm shorter and flat 3 0.5 mm longer than read, bend 2 does not fold. Bend 2 first, flat 3 in the throat.",
    );
    expect(verdictSentence(jobOf(), { ...tight, doubts: { ...doubts, worst: null, proved: false } })).toBe(
      "Folds as read, but its readings leave it open: take it as tight. Bend 2 first, flat 3 in the throat.",
    );
    expect(verdictSentence(jobOf(), { ...tight, doubts: { ...doubts, worst: null } })).toContain(
      "Folds, but only just: 1.03 mm to spare",
    );
  });
});
