/**
 * Whole parts typed by hand: sound ones are read, and each of sixty slips and more is answered in one sentence that says what
 * to type instead. Slips of drawings are in drawnPattern.test.ts.
 */
import { describe, expect, it } from "vitest";
import { problemSentence } from "../../src/jobFile/problem.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { BOX, PATTERN, TROUGH, wholeSlips } from "./wholeSlips.ts";

describe("readAnyJob of a whole part typed by hand", () => {
  it.each([
    ["a box", BOX, 9],
    ["a trough", TROUGH, 4],
    ["a pattern", PATTERN, 2],
  ])("reads %s", (_, text, bends) => {
    const read = readAnyJob(text);
    if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
    expect(read.job.part.sheet.pattern.bends).toHaveLength(bends);
  });

  it("has sixty slips to answer", () => {
    expect(wholeSlips.length).toBeGreaterThanOrEqual(60);
  });

  it.each(wholeSlips)("$1", (job, _, from, to, says) => {
    expect(job.split(from)).toHaveLength(2);
    const read = readAnyJob(job.replace(from, to));
    const said = read.ok ? [] : read.problems.map(problemSentence);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(says);
    expect(said[0]).not.toMatch(/undefined|NaN|\[object|\n/u);
    expect(said[0]!.length).toBeLessThan(300);
  });
});
