/**
 * Keys of a whole part's job beside its shape: read, or told that they are not; and whole parts where only a section can stand.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { readShop } from "../../src/jobFile/readShop.ts";
import { wholeVerdict } from "../../src/words/wholeWords.ts";

const folder = fileURLToPath(new URL(".", import.meta.url));

interface Loose {
  [key: string]: unknown;
  part: Record<string, unknown>;
  brake: Record<string, unknown>;
}

function fileOf(name: string, change: (file: Loose) => void): Loose {
  const file = JSON.parse(readFileSync(`${folder}${name}.json`, "utf8")) as Loose;
  change(file);
  return file;
}

function checked(name: string, change: (file: Loose) => void) {
  const read = readAnyJob(JSON.stringify(fileOf(name, change)));
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  return { job: read.job, answer: checkWhole(read.job) };
}

it("checkWhole: keys that a whole part's check does not look at are told, each in a sentence", () => {
  const { answer } = checked("tray-last-wall-fits", ({ part }) => {
    Object.assign(part, { grain: "across", doubts: 0.1, cutOuts: [], length: 100 });
  });
  for (const key of ["grain", "doubts", "cutOuts", "length"])
    expect(answer.warnings.filter((words) => words.includes(`part.${key}`)).length).toBe(1);
});

it("checkWhole: the answer holds over the leaf angles and the nose that the job doubts, and says for which angles", () => {
  const plain = checked("tray-last-wall-fits", () => {}).answer;
  expect(plain.order[0]!.overbendRange).toEqual([plain.order[0]!.overbend, plain.order[0]!.overbend]);
  const { answer } = checked("tray-last-wall-fits", ({ brake }) => {
    brake.doubts = { overbend: 1, setback: 0.05 };
  });
  const [step] = answer.order;
  // No leaf angle is less than the bend itself: only the upper half of the doubt is left.
  expect(step!.overbendRange[1] - step!.overbendRange[0]).toBeCloseTo(1, 9);
  expect(step!.foldsFor).toEqual(step!.overbendRange);
  for (const one of answer.order) expect(one.leastClearance ?? 0).toBeLessThanOrEqual(one.clearance ?? 0);
  expect(answer.warnings.some((words) => words.includes("for any leaf angle from"))).toBe(true);
  expect(plain.warnings.some((words) => words.includes("for any leaf angle from"))).toBe(false);
});

it("checkWhole: a wall that the leaf leaves open is judged as left, sized as finished, and told", () => {
  const plain = checked("tray-last-wall-fits", () => {});
  const { job, answer } = checked("tray-last-wall-fits", (file) => {
    file.finishByHand = [{ bend: 4, to: 60 }];
  });
  expect(answer.order.at(-1)!.angle).toBe(60);
  expect(answer.folded).toEqual(plain.answer.folded);
  expect(answer.blank).toEqual(plain.answer.blank);
  expect(answer.finishByHand).toEqual([{ bend: 4, to: 60, angle: 90, filler: null }]);
  expect(wholeVerdict(job, answer)).toContain("Then close bend 4 by hand.");
});

it("checkWhole: sheet that the brake is not rated for is refused, never begun", () => {
  const rated = { thickness: 0.6, length: 600, yield: 250 };
  const { answer } = checked("tray-last-wall-fits", ({ brake }) => Object.assign(brake, { rated }));
  expect(answer.order.map(({ refused }) => refused)).toEqual(["rated", "rated", "rated", "rated"]);
  expect(answer.verdict).toBe("hits");
});

it("checkWhole: a rated length counts all bend lines of a stroke, and no more", () => {
  const rated = (length: number) => ({ rated: { thickness: 0.8, length, yield: 250 } });
  // Bend lines of the tray are 156.4 and 96.4 long (b less the walls' bends).
  const [short, long] = [140, 170].map((length) =>
    checked("tray-last-wall-fits", ({ brake }) => Object.assign(brake, rated(length))).answer.order.map(
      ({ refused }) => refused,
    ),
  );
  expect(short!.filter((refused) => refused === "length").length).toBe(2);
  expect(long!.every((refused) => refused === null)).toBe(true);
});

it("readJob, readShop: a whole part where a section must stand is told by its key", () => {
  const file = fileOf("tray-last-wall-fits", () => {});
  const { brake, part } = file;
  const shop = (more: object) =>
    readShop(JSON.stringify({ noseroomShop: 1, units: "mm", brakes: [brake], ...more }));
  const reads = [readJob(JSON.stringify(file)), shop({ parts: [part] }), shop({ jobs: [file] })];
  const paths = reads.map((read) => (read.ok ? [] : read.problems.map(({ path }) => path)));
  expect(paths).toEqual([["part.box"], ["parts[0].box"], ["jobs[0].part.box"]]);
});

it("readAnyJob: an overall size of a box is told, and a hand finish of no bend is refused", () => {
  const read = readAnyJob(
    JSON.stringify(
      fileOf("tray-last-wall-fits", (loose) => {
        loose.finishByHand = [{ bend: 9, to: 60 }];
      }),
    ),
  );
  expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual(["finishByHand[0].bend"]);
});
