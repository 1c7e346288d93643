import { describe, expect, it } from "vitest";
import type { Member } from "../../src/jobFile/answer.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import { contactWords } from "../../src/words/contactWords.ts";
import { blockWords, outcomeSentence, stepTitle, throatWords } from "../../src/words/stepWords.ts";
import { hit, stepOf } from "../jobFile/answers.ts";

describe("throatWords", () => {
  it.each([
    [{ bend: 1, clamped: "start" }, "flat 1"],
    [{ bend: 2, clamped: "start" }, "flats 1 and 2"],
    [{ bend: 4, clamped: "start" }, "flats 1 to 4"],
    [{ bend: 5, clamped: "end" }, "flat 6"],
    [{ bend: 4, clamped: "end" }, "flats 5 and 6"],
    [{ bend: 1, clamped: "end" }, "flats 2 to 6"],
  ] as const)("of %o in a part of five bends is %s", (step, words) => {
    expect(throatWords(step, 5)).toBe(words);
  });
});

describe("stepTitle", () => {
  it("says bend, throat, face and leaf", () => {
    expect(stepTitle(stepOf(), 2)).toBe("Bend 2 · flat 3 in the throat · marked face up · leaf to 92°");
    expect(stepTitle(stepOf({ markedFaceUp: false, overbend: 30.649 }), 2)).toContain(
      "marked face down · leaf to 30.6°",
    );
  });
});

describe("angleWords", () => {
  it("keeps a tenth only where there is one", () => {
    expect([angleWords(90), angleWords(75.24), angleWords(89.97)]).toEqual(["90°", "75.2°", "90°"]);
  });
});

describe("blockWords and outcomeSentence", () => {
  it("name what meets what, and when", () => {
    expect(outcomeSentence(hit, "mm", "finger")).toBe("Stops: at 75.2° the end of flat 1 meets the finger.");
    expect(contactWords({ part: "flat 2", member: "bed" }, "finger")).toBe("flat 2 meets the bed");
    expect(contactWords({ part: "leaf", member: "clamp" }, "bar")).toBe("the leaf meets the clamp bar");
    expect(contactWords({ part: "flat 1", member: "clamp" }, "profile")).toBe("flat 1 meets the clamp");
    const atRest = stepOf({
      ...hit,
      contact: { angle: 0, part: "inside of bend 1", member: "part", point: [0, 0] },
    });
    expect(blockWords(atRest, "bar", "mm")).toBe(
      "already at rest the inside of bend 1 meets another part of the sheet",
    );
  });

  it("tell a leaf that stops from a part that cannot be put in or taken out", () => {
    const still = { ...hit, contact: null };
    expect(blockWords({ ...still, reached: 80 }, "bar", "mm")).toBe(
      "the leaf stops at 80°, and this bend wants 92°",
    );
    expect(blockWords({ ...still, reached: 92, load: "blocked" }, "bar", "mm")).toContain("into the throat");
    expect(blockWords({ ...still, reached: 92, unload: "blocked" }, "bar", "mm")).toContain(
      "out of the throat",
    );
  });

  const near = (member: Member, step = stepOf()) => ({ ...step, nearest: { member } });

  it("say what is left to spare in the user's unit, and to what, or that nothing is near", () => {
    expect(outcomeSentence(stepOf(), "mm", "bar")).toBe("Clear, 1.03 mm to spare.");
    expect(outcomeSentence(near("clamp"), "mm", "bar")).toBe("Clear, 1.03 mm from the clamp bar.");
    expect(outcomeSentence(near("clamp"), "in", "finger")).toBe("Clear, 0.041 in from the finger.");
    expect(outcomeSentence(near("leaf"), "in", "finger")).toBe("Clear, 0.041 in from the leaf.");
    const tight = stepOf({ verdict: "tight", clearance: 0.2 });
    expect(outcomeSentence(near("clamp", tight), "mm", "profile")).toBe(
      "Tight: only 0.20 mm from the clamp.",
    );
    expect(outcomeSentence(near("part", tight), "mm", "bar")).toBe(
      "Tight: only 0.20 mm from its own other side.",
    );
    const alone = stepOf({ clearance: null, clearancePoints: null });
    expect(outcomeSentence(alone, "mm", "bar")).toBe("Nothing else comes near.");
    expect(blockWords(stepOf(), "bar", "mm")).toBeUndefined();
  });
});
