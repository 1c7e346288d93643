/**
 * Misread sizes against a closed form: a wall of height H stands beside a finger under the holder where H ≤ T + clampHeight
 * (whole-part model, check values), so a wall that is high by more than what is left does not fold.
 */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { wholeDoubts } from "../../src/ways/wholeDoubts.ts";
import { wholeDoubtSentences } from "../../src/words/wholeDoubtWords.ts";

const text = readFileSync(new URL("../wholeCases/switch-box-under-holder.json", import.meta.url), "utf8");
const read = readAnyJob(text);
if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
const { file, job } = read;
const answer = checkWhole(job);
const [clampMm, wallMm] = [50, 50.6];
const leftMm = job.part.thicknessMm + clampMm - wallMm;

it("wholeDoubts: less than what is left over the walls is no matter", () => {
  const doubts = wholeDoubts(file, answer, leftMm - 0.05);
  expect(doubts.worst).toBeNull();
  expect(doubts.deciding).toEqual([]);
  // Width, depth and three walls: each both ways, and all together.
  expect(doubts.mixesTried).toBe(2 * 5 + 2);
});

it("wholeDoubts: more than that is told by the walls that it is about", () => {
  const doubts = wholeDoubts(file, answer, leftMm + 0.05);
  expect(doubts.deciding).toEqual(["the left wall", "the right wall"]);
  expect(doubts.worst!.off).toBeCloseTo(leftMm + 0.05, 9);
  const [first, again] = wholeDoubtSentences(doubts, "mm");
  expect(first).toMatch(/0\.25 mm larger than read, bend 3 does not fold\.$/u);
  expect(again).toBe("Measure the left wall and the right wall again: each of them alone decides.");
});
