/**
 * A bend that the leaf leaves open and a hand closes. The blank is held against that of the same job without the key
 * (nothing is added to the sheet by hand), and the length of the part as the leaf leaves it is added up here by itself.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { isWayOut } from "../../src/jobFile/wayOut.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";
import { applied, waysOut } from "../../src/ways/waysOut.ts";
import { handFinishSentences } from "../../src/words/handFinishWords.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";

const trough = JSON.parse(readFileSync("examples/cable-trough-finger.json", "utf8")) as JobFile;
const readOf = (file: unknown) => {
  const read = readJob(JSON.stringify(file));
  if (!read.ok) throw new Error(read.problems.map(({ path, allowed }) => `${path}: ${allowed}`).join("; "));
  return read;
};
const problemsOf = (byHand: unknown) => {
  const read = readJob(JSON.stringify({ ...trough, finishByHand: byHand }));
  return read.ok ? [] : read.problems.map(({ path }) => path);
};

describe("finishByHand", () => {
  it("lets the leaf stop short: the job folds, blank and file stay as they were", () => {
    const whole = check(readOf(trough).job);
    const { job, file } = readOf({ ...trough, finishByHand: [{ bend: 2, to: 70, filler: "5/16" }] });
    const answer = check(job);
    expect(whole.verdict).toBe("hits");
    expect(answer.verdict).not.toBe("hits");
    expect(file.part).toEqual(trough.part);
    expect(answer.blank.developedWidth).toBeCloseTo(whole.blank.developedWidth, 9);
    answer.blank.bends.forEach(({ tangents, allowance }, i) => {
      expect(tangents[0]).toBeCloseTo(whole.blank.bends[i]!.tangents[0], 9);
      expect(tangents[1]).toBeCloseTo(whole.blank.bends[i]!.tangents[1], 9);
      expect(allowance).toBeCloseTo(whole.blank.bends[i]!.allowance, 9);
    });
    const byLeaf = [...job.part.flatsMm, ...job.part.bends.map(({ allowanceMm }) => allowanceMm)];
    expect(byLeaf.reduce((sum, mm) => sum + mm)).toBeCloseTo(whole.blank.developedWidth, 9);
    expect(answer.order.find(({ bend }) => bend === 2)).toMatchObject({ angle: 70, relaxesTo: 70 });
    expect(answer.finishByHand).toEqual([{ bend: 2, to: 70, angle: 90, filler: 7.9375 }]);
    expect(verdictSentence(job, answer)).toMatch(/^Folds.* Then close bend 2 by hand\.$/);
    expect(handFinishSentences(answer, "in")).toEqual([
      "Close the last 20° of bend 2 by hand, from 70° to 90°, over a filler bar 5/16 in thick.",
    ]);
  });

  it("is what a way out leaves in the job, and comes out as the way said", () => {
    const { job, file } = readOf(trough);
    const way = waysOut(file, job, check(job)).find(({ kind }) => kind === "leaveOpen");
    if (way === undefined || !isWayOut(way)) throw new Error("no way leaves a bend open");
    const changed = applied(file, job, way.changes);
    expect(changed.part).toEqual(trough.part);
    const answer = check(readOf(JSON.parse(writeJob(changed))).job);
    expect(answer.verdict).toBe(way.verdict);
    const least = Math.min(...answer.order.flatMap(({ clearance }) => clearance ?? []));
    expect(least).toBeCloseTo(way.clearance ?? Number.NaN, 6);
    expect(answer.finishByHand?.[0]?.filler).toBeCloseTo(way.leftOpen?.filler ?? Number.NaN, 2);
  });

  it("is refused by its key where it can't be", () => {
    expect(problemsOf([{ bend: 3, to: 40 }])).toEqual(["finishByHand[0].bend"]);
    expect(problemsOf([{ bend: 2, to: 90 }])).toEqual(["finishByHand[0].to"]);
    expect(
      problemsOf([
        { bend: 2, to: 40 },
        { bend: 2, to: 50 },
      ]),
    ).toEqual(["finishByHand[1].bend"]);
    expect(problemsOf([{ bend: 2, to: 40, filler: 0 }])).toEqual(["finishByHand[0].filler"]);
  });
});
