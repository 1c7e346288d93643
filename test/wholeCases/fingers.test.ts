/**
 * Which fingers, by hand: a stroke between two walls takes rows of b − 2r − 2·gap to b − 2r (whole-part model, check values),
 * and where none is owned the width that is missing is told.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { wholeVerdict } from "../../src/words/wholeWords.ts";

const folder = fileURLToPath(new URL(".", import.meta.url));
/** Depth 100 over outside walls, T 0.8, r 1: the last bend line between two walls is b − 2r long. */
const BETWEEN_MM = 100 - 2 * 0.8 - 2 * 1;
const GAP_MM = 3;

/** The long walls first; the last two bends then lie between them. */
const LONG_WALLS_FIRST = [3, 4, 1, 2].map((bend) => ({ bends: [bend], clampedAt: [200, 80] }));

function checked(fingers: readonly { width: number; count: number }[], order?: unknown) {
  const file = JSON.parse(readFileSync(`${folder}tray-last-wall-fits.json`, "utf8"));
  const { order: _, ...rest } = file;
  const clamp = { ...file.brake.clamp, fingers };
  // Only the long walls can be last: the row for them is the one that matters.
  file.part.box.width = 400;
  const read = readAnyJob(JSON.stringify({ ...rest, brake: { ...file.brake, clamp }, order }));
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  return { job: read.job, answer: checkWhole(read.job) };
}

describe("checkWhole: fingers for the last wall", () => {
  it("one of just b − 2r fits, and what the inset leaves beside it is all it may be wider", () => {
    const spare = 2 * (Math.sqrt(0.02 + 0.0001) + 0.01);
    expect(
      checked([
        { width: BETWEEN_MM, count: 1 },
        { width: 420, count: 1 },
      ]).answer.verdict,
    ).not.toBe("hits");
    const wide = BETWEEN_MM + spare + 0.05;
    const fingers = [wide, 420].map((width) => ({ width, count: 1 }));
    expect(checked(fingers, LONG_WALLS_FIRST).answer.verdict).toBe("hits");
    // With the last wall itself clamped, the others come up beside the finger and not on it: up to their faces it may reach.
    const [last] = checked(fingers).answer.order.slice(-1);
    expect(last!.verdict).toBe("tight");
    expect(last!.clampedFace).toBeGreaterThan(1);
  });

  it("one of b − 2r − 2·gap is just wide enough", () => {
    const least = BETWEEN_MM - 2 * GAP_MM;
    expect(
      checked([
        { width: least, count: 1 },
        { width: 420, count: 1 },
      ]).answer.verdict,
    ).not.toBe("hits");
    expect(
      checked([
        { width: least - 0.01, count: 1 },
        { width: 420, count: 1 },
      ]).answer.verdict,
    ).toBe("hits");
  });

  it("where none fits, the missing width is told, and what the owned ones leave bare", () => {
    const owned = [50, 35, 420].map((width) => ({ width, count: 1 }));
    const { job, answer } = checked(owned, LONG_WALLS_FIRST);
    const [step] = answer.order.filter(({ missing }) => missing);
    expect(answer.verdict).toBe("hits");
    // One finger, none beside it: b − 2r − 2·gap to b − 2r and the inset.
    expect(step!.missing!.least).toBeCloseTo(BETWEEN_MM - 2 * GAP_MM, 6);
    expect(step!.missing!.most).toBeGreaterThan(BETWEEN_MM);
    expect(step!.missing!.most).toBeLessThan(BETWEEN_MM + 0.35);
    // 85 of 96.4 is held: the least that stays bare is in three even stretches.
    expect(step!.missing!.instead!.fingers.toSorted()).toEqual([35, 50]);
    expect(Math.abs(step!.missing!.instead!.bare - (BETWEEN_MM - 85) / 3)).toBeLessThan(0.02);
    expect(wholeVerdict(job, answer)).toMatch(/a finger 96\.\d+ mm wide is missing: grind one/u);
  });
});
