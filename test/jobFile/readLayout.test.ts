/**
 * Grain, doubts and cut-outs in a job file: what they read as, what is refused, with which path and words.
 * The trough is 20, 15, 20 outside of 0.8 sheet at r = 1, K 0.44. By the sum of the handbook (FAA-H-8083-31, flat layout)
 * flats of 18.2, 11.4 and 18.2 and two allowances of π/2·(1 + 0.44·0.8) make a blank 52.0474 wide; it is 300 long.
 */
import { describe, expect, it } from "vitest";
import type { Job } from "../../src/jobFile/job.ts";
import { problemSentence } from "../../src/jobFile/problem.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";
import { soundJob } from "./jobs.ts";

type Keys = Readonly<Record<string, unknown>>;

const WIDTH_MM = 2 * 18.2 + 11.4 + Math.PI * (1 + 0.44 * 0.8);

function read(keys: Keys) {
  const sound = soundJob();
  return readJob(JSON.stringify({ ...sound, part: { ...sound.part, ...keys } }));
}

function jobWith(keys: Keys): Job {
  const reading = read(keys);
  if (!reading.ok) throw new Error(reading.problems.map(problemSentence).join("\n"));
  return reading.job;
}

function slipsOf(keys: Keys): readonly string[] {
  const reading = read(keys);
  return reading.ok ? [] : reading.problems.map(problemSentence);
}

const cutOut = (across: readonly unknown[], along: readonly unknown[]) => ({ across, along });

describe("readJob of grain, doubts and cut-outs", () => {
  it("leaves them away where the file doesn't say", () => {
    const job = jobWith({});
    for (const key of ["grainDeg", "doubtsMm", "cutOuts"]) expect(job).not.toHaveProperty(key);
  });

  it.each([
    ["along", 0],
    ["across", 90],
    [30, 30],
    ["120 deg", 120],
    ["180°", 180],
  ])("grain %s lies at %d° to the bend lines", (grain, degrees) => {
    expect(jobWith({ grain }).grainDeg).toBe(degrees);
  });

  it("takes one doubt for all flats, or one for each", () => {
    expect(jobWith({ doubts: "1/64 in" }).doubtsMm).toEqual([25.4 / 64, 25.4 / 64, 25.4 / 64]);
    expect(jobWith({ doubts: [0, "0.25 mm", 0.5] }).doubtsMm).toEqual([0, 0.25, 0.5]);
  });

  it("takes places of cut-outs as lengths, and the end as a word", () => {
    const { cutOuts } = jobWith({
      cutOuts: [cutOut([0, "1/2 in"], [10, 20]), cutOut([40, "end"], ["290", "end"])],
    });
    expect(cutOuts?.[0]).toEqual({ acrossMm: [0, 12.7], alongMm: [10, 20] });
    expect(cutOuts?.[1]?.acrossMm[1]).toBeCloseTo(WIDTH_MM, 9);
    expect(cutOuts?.[1]?.alongMm).toEqual([290, 300]);
  });

  it("takes a place typed in as it is printed for the edge that it was read from", () => {
    const { cutOuts } = jobWith({ cutOuts: [cutOut([40, 52.05], [0.01, 20])] });
    expect(cutOuts?.[0]?.acrossMm[1]).toBeCloseTo(WIDTH_MM, 9);
    expect(cutOuts?.[0]?.alongMm[0]).toBe(0);
    // Bend 1 ends at 18.2 + π/2·1.352 = 20.3237.
    const atBend = jobWith({ cutOuts: [cutOut([0, 20.32], [0, 20])] }).cutOuts;
    expect(atBend?.[0]?.acrossMm[1]).toBeCloseTo(18.2 + (Math.PI / 2) * 1.352, 9);
  });

  it("lets cut-outs touch", () => {
    expect(slipsOf({ cutOuts: [cutOut([0, 10], [0, 20]), cutOut([10, 20], [0, 20])] })).toEqual([]);
  });

  it("writes them as they were written", () => {
    const keys = {
      grain: "along",
      doubts: [0, "1/64 in", 0.2],
      cutOuts: [cutOut([0, "1/2 in"], [10, "end"])],
    };
    const reading = read(keys);
    if (!reading.ok) throw new Error("not read");
    const again = readJob(writeJob(reading.file));
    expect(again.ok && again.file.part).toMatchObject(keys);
    expect(again.ok && again.job).toEqual(reading.job);
  });
});

describe("readJob refuses", () => {
  it.each([
    [
      { grain: "sideways" },
      'part.grain: found "sideways"; it should be "across", "along" or an angle from 0 to 180 degrees, measured from the bend lines.',
    ],
    [
      { grain: 181 },
      'part.grain: found 181; it should be "across", "along" or an angle from 0 to 180 degrees, measured from the bend lines.',
    ],
    [
      { grain: [90] },
      'part.grain: found a list of 1; it should be "across", "along" or an angle in degrees, measured from the bend lines.',
    ],
    [
      { doubts: [0.1, 0.1] },
      "part.doubts: found a list of 2; it should be one length for all flats, or a list of 3, one for each flat.",
    ],
    [
      { doubts: 11.4 },
      "part.doubts: found 11.4; it should be less than 11.4 mm, the shortest flat between its bend tangent lines.",
    ],
    [
      { doubts: [0, 12, 0] },
      "part.doubts[1] (flat 2): found 12; it should be less than 11.4 mm, the flat between its bend tangent lines.",
    ],
    [
      { doubts: [0, 0, -1] },
      'part.doubts[2] (flat 3): found -1; it should be a length of 0 or more, such as 12, "3/8" or "5 mm".',
    ],
    [
      { doubts: true },
      "part.doubts: found true; it should be a length for all flats, or a list of lengths, one for each flat.",
    ],
    [
      { length: undefined, cutOuts: [cutOut([0, 10], [0, 10])] },
      "part.length: found nothing; it should be the length along the bend lines, since part.cutOuts are measured along it.",
    ],
    [
      { cutOuts: [cutOut([0, 10], [0, 10]), cutOut([0, 53], [20, 30])] },
      'part.cutOuts[1].across[1] (cut-out 2): found 53; it should be at most 52.047 mm, the blank\'s width, or "end".',
    ],
    [
      { cutOuts: [cutOut([0, 10], [290, 301])] },
      'part.cutOuts[0].along[1] (cut-out 1): found 301; it should be at most 300 mm, the part\'s length, or "end".',
    ],
    [
      { cutOuts: [cutOut([-1, 10], [0, 10])] },
      'part.cutOuts[0].across[0] (cut-out 1): found -1; it should be a length of 0 or more, such as 12, "3/8" or "5 mm".',
    ],
    [
      { cutOuts: [cutOut([10, 10], [0, 10])] },
      "part.cutOuts[0].across[0] (cut-out 1): found 10; it should be less than the 10 where the cut-out ends.",
    ],
    [
      { cutOuts: [cutOut([0, 10], [0, 10]), cutOut([9, 20], [9, 20])] },
      "part.cutOuts[1] (cut-out 2): found a cut-out that overlaps cut-out 1; it should be clear of all others.",
    ],
    [
      { cutOuts: [cutOut([0, "end"], [100, 120])] },
      "part.cutOuts: found cut-outs that part the blank; it should be such that it stays in one piece.",
    ],
    [
      { cutOuts: [cutOut([0, 20], [0, 150]), cutOut([20, "end"], [150, "end"])] },
      "part.cutOuts: found cut-outs that part the blank; it should be such that it stays in one piece.",
    ],
    [
      { cutOuts: [cutOut([0, "end"], [0, "end"])] },
      "part.cutOuts: found cut-outs that part the blank; it should be such that it stays in one piece.",
    ],
    [
      { cutOuts: [cutOut([0, 1, 2], [0, 1])] },
      'part.cutOuts[0].across (cut-out 1): found a list of 3; it should be from and to, as [0, "1/2"]; to may be "end".',
    ],
    [
      { cutOuts: [{ across: [0, 1], along: [0, 1], round: true }] },
      "part.cutOuts[0].round (cut-out 1): found a key that is not known here; it should be one of across, along.",
    ],
    [
      { cutOuts: Array.from({ length: 51 }, (_, i) => cutOut([0, 1], [2 * i, 2 * i + 1])) },
      "part.cutOuts: found a list of 51; it should be a list of up to 50 cut-outs.",
    ],
  ])("%j", (keys, sentence) => {
    expect(slipsOf(keys)).toEqual([sentence]);
  });
});
