/**
 * Grain, doubts and cut-outs in the answer of a check: what they add, what they warn of, and that without them the
 * answer is what it was. The channel of u-square-pass is known in closed form (pivot on the edge, no overbend): a bar of
 * thickness 10 passes under a web W where 0.8 + 10 < W − 0.8, W = 15, so the web may be short by 3.4, less where radii meet.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { applied, waysOut } from "../../src/ways/waysOut.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";

function read(keys: Readonly<Record<string, unknown>>, name = "u-square-pass") {
  const file = JSON.parse(readFileSync(new URL(`../cases/${name}.json`, import.meta.url), "utf8"));
  Object.assign(file.part, { length: 300 }, keys);
  const reading = readJob(JSON.stringify(file));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading;
}

const jobWith = (keys: Readonly<Record<string, unknown>>, name?: string): Job => read(keys, name).job;
const answerWith = (keys: Readonly<Record<string, unknown>>, name?: string): Answer =>
  check(jobWith(keys, name));
const PLAIN = answerWith({});

describe("check", () => {
  test("without the keys says nothing of them", () => {
    expect(PLAIN).not.toHaveProperty("doubts");
    expect(PLAIN.blank).not.toHaveProperty("reliefHoles");
  });

  test("keys that change nothing leave the rest of the answer as it was", () => {
    const { doubts, blank, ...rest } = answerWith({ grain: "across", doubts: 0, cutOuts: [] });
    const { blank: plainBlank, ...plain } = PLAIN;
    expect(rest).toEqual(plain);
    expect(blank).toEqual({ ...plainBlank, reliefHoles: [] });
    expect(doubts).toMatchObject({ verdict: PLAIN.verdict, worst: null, deciding: [], proved: true });
  });

  test("grain along the bends is warned of, across them it is not", () => {
    const more = (grain: unknown) => answerWith({ grain }).warnings.slice(PLAIN.warnings.length);
    expect(more("along")).toEqual([expect.stringContaining("along all 2 bends")]);
    expect(more(20)).toHaveLength(1);
    expect(more("across")).toEqual([]);
    expect(more(70)).toEqual([]);
  });

  test("doubts within the closed form's room leave it clear", () => {
    const answer = answerWith({ doubts: [0, 3.3, 0] });
    expect(answer.verdict).toBe("clear");
    expect(answer.doubts).toMatchObject({ verdict: "clear", worst: null, deciding: [], proved: true });
    expect(answer.warnings).toEqual(PLAIN.warnings);
  });

  test("past it the verdict is tight, and the worst mix is named in headline and warnings", () => {
    const job = jobWith({ doubts: [0, 3.45, 0] });
    const answer = check(job);
    expect(answer.verdict).toBe("tight");
    expect(answer.doubts).toMatchObject({ verdict: "tight", deciding: [2], proved: true });
    expect(answer.doubts?.worst?.flats).toEqual([0, -3.45, 0]);
    const bend = answer.doubts?.worst?.bend;
    const words = `with flat 2 3.45 mm shorter than read, bend ${bend} does not fold`;
    expect(verdictSentence(job, answer)).toContain(`as read, but ${words}. Bend`);
    expect(answer.warnings[0]).toBe(
      `Tight by its readings: ${words}. Measure flat 2 again: it alone decides.`,
    );
    for (const step of answer.order) expect(step.verdict).toBe("clear");
  });

  test("what hits as read still hits, whatever the doubts", () => {
    const answer = answerWith({ doubts: 0.1 }, "z-finger45");
    const plain = answerWith({}, "z-finger45");
    expect(answer.verdict).toBe(plain.verdict);
    if (plain.verdict === "hits") expect(answer.doubts?.verdict).toBe("hits");
  });

  test("relief holes come with bend and cut-out, places from the datum edge and the start", () => {
    const { blank } = answerWith({ cutOuts: [{ across: [0, 24], along: [0, 12] }] });
    const far = PLAIN.blank.bends[0]!.tangents[1];
    expect(blank.reliefHoles).toEqual([{ x: far, y: 12, diameter: 25.4 / 8, bend: 1, cutOut: 1 }]);
  });

  test("a cut-out that ends inside a bend is warned of, with what to keep clear", () => {
    const [near, far] = PLAIN.blank.bends[0]!.tangents;
    const middle = (near + far) / 2;
    const more = answerWith({ cutOuts: [{ across: [0, middle], along: [0, 12] }] }).warnings.slice(
      PLAIN.warnings.length,
    );
    expect(more).toHaveLength(1);
    expect(more[0]).toMatch(/^Cut-out 1: its edge [\d.]+ mm from the datum edge lies in bend 1/u);
    const clear = answerWith({ cutOuts: [{ across: [0, far], along: [0, 12] }] });
    expect(clear.warnings).toEqual(PLAIN.warnings);
  });

  test("where only readings make it tight no way out is offered: the remedy is to measure again", () => {
    const { file, job } = read({ doubts: [0, 3.45, 0] });
    expect(waysOut(file, job, check(job))).toEqual([]);
  });
});

describe("a flat changed by a way out", () => {
  // Flats 20, 15, 20 outside: bend 1 ends the first flat at 18.2; the blank is 52.05 wide (readLayout.test.ts).
  test("takes the cut-outs beyond it along, and leaves those before it", () => {
    const { file, job } = read({
      cutOuts: [
        { across: [2, 6], along: [10, 20] },
        { across: [0, endOfBend1()], along: [280, "end"] },
        { across: [40, "end"], along: [0, 20] },
      ],
    });
    const changed = applied(file, job, [{ kind: "flat", flat: 1, byMm: -3 }]);
    const reading = readJob(JSON.stringify(changed));
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const [plain, moved] = [job, reading.job].map(({ cutOuts }) => cutOuts!.map(({ acrossMm }) => acrossMm));
    expect(moved![0]).toEqual([2, 6]);
    expect(moved![1]![1]).toBeCloseTo(plain![1]![1] - 3, 3);
    expect(moved![2]![0]).toBeCloseTo(37, 3);
    expect(moved![2]![1]).toBeCloseTo(plain![2]![1] - 3, 9);
    const holes = (one: Job) => check(one).blank.reliefHoles!.map(({ x }) => x);
    for (const [i, x] of holes(reading.job).entries()) expect(x).toBeCloseTo(holes(job)[i]! - 3, 9);
  });

  test("drops a cut-out of which nothing is left", () => {
    const { file, job } = read({ cutOuts: [{ across: [16, 19], along: [0, 20] }] });
    expect(applied(file, job, [{ kind: "flat", flat: 1, byMm: -5 }]).part.cutOuts).toEqual([]);
  });
});

function endOfBend1(): number {
  return PLAIN.blank.bends[0]!.tangents[1];
}
