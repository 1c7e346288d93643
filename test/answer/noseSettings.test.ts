/**
 * Jobs whose nose is set otherwise than by the book: too far forward, a little short, one place for all bends, over a shim.
 * Source: the geometry of the section, worked in each test (src/model.md, section 4).
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";

interface CaseFile {
  part: { insideRadius: number; bends: { angle: number; overbend: number; turn: string }[] };
  brake: { setback: number | string; clamp: { noseRadius: number; shim?: number | string } };
}

/** A channel of 0.8 mm sheet, 90° bends without overbend, nose radius 0.8: least setback T = 0.8. */
function answered(change: (file: CaseFile) => void) {
  const url = new URL("../cases/u-square-pass.json", import.meta.url);
  const file = JSON.parse(readFileSync(url, "utf8")) as CaseFile;
  change(file);
  const read = readJob(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { read, answer: check(read.job) };
}

describe("a nose set too far forward", () => {
  const { answer } = answered((file) => {
    file.brake.setback = 0.71;
  });

  test("is an answer, not bad input: the bend is refused, with nothing met or measured", () => {
    expect(answer.verdict).toBe("hits");
    const [step] = answer.order;
    expect(step).toMatchObject({
      refused: "pinched",
      contact: null,
      clearance: null,
      reached: 0,
      relaxesTo: 0,
    });
    expect(step?.setback).toBe(0.71);
    expect(answer.viableOrders).toBe(0);
  });

  test("is told with the least setback that doesn't pinch", () => {
    expect(answer.warnings).toContain(
      "Bends 1 and 2: the nose set back by 0.71 mm pinches the sheet. Set it back by 0.8 mm or more.",
    );
  });
});

test("a setback short by up to a tenth of the thickness is taken as the least, and that is told", () => {
  const { answer } = answered((file) => {
    file.brake.setback = 0.73;
  });
  expect(answer.verdict).toBe("clear");
  expect(answer.order.map((step) => [step.setback, step.refused])).toEqual([
    [0.8, null],
    [0.8, null],
  ]);
  expect(answer.warnings.find((said) => said.includes("pinches"))).toBe(
    "Bends 1 and 2: the nose set back by 0.73 mm pinches the sheet a little: the least is 0.8 mm. Brakes spring that much, so the answer takes 0.8 mm.",
  );
});

test("an inside radius under the nose radius stays a slip where the nose is set for each bend", () => {
  expect(() => answered((file) => (file.part.insideRadius = 0.7))).toThrow("part.insideRadius");
});

test('"one" keeps the nose where the widest bend wants it, and the milder one gets a larger radius', () => {
  const { read, answer } = answered((file) => {
    file.brake.setback = "One";
    file.part.bends[1] = { angle: 60, overbend: 60, turn: "up" };
  });
  // r + T − Rn = 1 for 90°; at 60° r = (1 + 0.8)·√3 − 0.8.
  expect(answer.order.map((step) => step.setback)).toEqual([1, 1]);
  expect(read.job.part.bends[1]?.insideRadiusMm).toBeCloseTo(1.8 * Math.sqrt(3) - 0.8, 12);
  expect(answer.warnings.some((said) => said.startsWith("Bend 2: the nose set back by 1 mm forms"))).toBe(
    true,
  );
});

test("a shim counts as part of the nose: radius, setback, sight line, and the room that it takes", () => {
  const bare = answered((file) => (file.part.insideRadius = 1.4));
  const over = answered((file) => {
    file.part.insideRadius = 1.4;
    file.brake.clamp.shim = 0.6;
  });
  // r = Rn + shim: the setback is one thickness; the sight line lies one nose radius, shim and all, past the tangent line.
  expect(over.answer.order[0]?.setback).toBeCloseTo(0.8, 12);
  expect(bare.answer.order[0]?.setback).toBeCloseTo(1.4, 12);
  const [line] = over.answer.blank.bends;
  expect(line!.sightLine - line!.tangents[0]).toBeCloseTo(1.4, 12);
  // The bar stands 0.6 mm higher; its front, 0.6 behind the foremost point of the shim, stays 1.4 mm behind the edge.
  const heights = (job: typeof bare) => job.read.job.brake.clamp.outlines.flatMap(({ edges }) => edges);
  const high = (job: typeof bare) => Math.max(...heights(job).map((edge) => edge.from.y));
  expect(high(over) - high(bare)).toBeCloseTo(0.6, 12);
  // Still a job file when written back.
  expect(readJob(writeJob(over.read.file)).ok).toBe(true);
});

describe("of two bends that can't be made, one for a pinching nose", () => {
  // Least setbacks (Rn + T)·tan(θo/2) − Rn: 0.95 mm at 95°, 1.57 mm at 112°; 1.2 mm pinches the second bend alone. The first one's
  // wall leans over the square bar past 90°.
  const { read, answer } = answered((file) => {
    const part = file.part as unknown as { flats: number[]; bends: object[]; thickness: number };
    part.flats = [40, 60, 40];
    part.bends = [
      { angle: 90, overbend: 95, turn: "up" },
      { angle: 110, overbend: 112, turn: "down" },
    ];
    file.brake.setback = 1.2;
  });

  test("the headline names the nose, which a turn of a screw cures, and how far to set it back", () => {
    const least = 1.6 * Math.tan((112 * Math.PI) / 360) - 0.8;
    expect(answer.order.at(-1)).toMatchObject({ bend: 2, refused: "pinched" });
    expect(verdictSentence(read.job, answer)).toMatch(
      /^Does not fold: at bend 2, the nose, 1\.2 mm back, pinches the sheet: set it back by 1\.57\d* mm or more\.$/u,
    );
    expect(least).toBeCloseTo(1.57, 2);
  });
});
