/**
 * A plain section said as a whole part answers as the section: every worked case and example written as a drawn pattern and as
 * a section with `ends: []`, in the order that the section's answer gives, bends that it leaves out last. Figures within 0.001.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import JSON5 from "json5";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { readJob } from "../../src/jobFile/readJob.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const LENGTH_MM = 100;

interface SectionFile {
  readonly units: "mm" | "in";
  readonly part: Record<string, unknown> & {
    readonly insideRadius: unknown;
    readonly bends: readonly Record<string, unknown>[];
  };
}

const jobs = ["test/cases", "examples", "examples/first-steps"].flatMap((folder) =>
  readdirSync(root + folder)
    .filter((name) => name.endsWith(".json") && !name.includes("expected"))
    .flatMap((name) => {
      const text = readFileSync(`${root}${folder}/${name}`, "utf8");
      const read = readJob(text);
      // A hem takes two strokes; whole parts have none.
      if (!read.ok || /hem/u.test(JSON.stringify(read.file.part.bends))) return [];
      return [{ name, job: read.job, file: JSON5.parse(text) as SectionFile }];
    }),
);

/** The blank of a section: where its bend lines and the middles of its flats lie, in the file's unit. */
function layout({ part }: Job, units: "mm" | "in") {
  const unit = units === "in" ? 1 / 25.4 : 1;
  const [lines, middles]: [number[], number[]] = [[], []];
  let x = 0;
  part.flatsMm.forEach((flatMm, i) => {
    middles.push((x + flatMm / 2) * unit);
    x += flatMm;
    const bend = part.bends[i];
    if (!bend) return;
    lines.push((x + bend.allowanceMm / 2) * unit);
    x += bend.allowanceMm;
  });
  return { lines, middles, width: x * unit, length: LENGTH_MM * unit };
}

function asPattern(job: Job, { units, part }: SectionFile): Record<string, unknown> {
  const { lines, width, length } = layout(job, units);
  const { flats: _f, bends, overall: _o, doubts: _d, cutOuts: _c, grain: _g, ...sheet } = part;
  const outline = [
    [0, 0],
    [width, 0],
    [width, length],
    [0, length],
  ];
  return {
    ...sheet,
    pattern: {
      outline,
      bends: job.part.bends.map(({ angleDeg, turn }, i) => {
        const { insideRadius = part.insideRadius, overbend, deduction } = bends[i]!;
        const own = {
          ...(overbend !== undefined && { overbend }),
          ...(deduction !== undefined && { deduction }),
        };
        return {
          line: [
            [lines[i], 0],
            [lines[i], length],
          ],
          angle: angleDeg,
          turn,
          insideRadius,
          ...own,
        };
      }),
    },
  };
}

describe.each(jobs)("$name", ({ job, file }) => {
  const { finishByHand: _byHand, ...rest } = file as SectionFile & { finishByHand?: unknown };
  const { middles, length } = layout(job, file.units);
  const found = check(job);
  const done = new Set(found.order.map(({ bend }) => bend));
  const isWhole = done.size === job.part.bends.length;
  const order = [
    ...found.order.map(({ bend, clamped }) => ({ bend, clamped })),
    ...job.part.bends.flatMap((_, i) => (done.has(i + 1) ? [] : [{ bend: i + 1, clamped: "start" }])),
  ];
  const strokes = order.map(({ bend, clamped }) => ({
    bends: [bend],
    clampedAt: [middles[clamped === "start" ? bend - 1 : bend], length / 2],
  }));
  const asGiven = readJob(JSON.stringify({ ...rest, order }));
  if (!asGiven.ok) throw new Error(JSON.stringify(asGiven));
  const answer = check(asGiven.job);

  const answered = (part: unknown, given: unknown) => {
    const read = readAnyJob(JSON.stringify({ ...rest, part, order: given }));
    if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
    return checkWhole(read.job);
  };

  it.each([
    ["a pattern", asPattern(job, file)],
    ["a section with no ends", { ...file.part, ends: [] }],
  ])("checkWhole: answers as the section when it is said as %s", (_, part) => {
    // Of a part that can't be bent the search must say so too.
    if (!isWhole) expect(answered(part, undefined).verdict).toBe(found.verdict);
    const said = answered(part, strokes);
    expect(said.verdict).toBe(answer.verdict);
    expect(said.order.length).toBe(answer.order.length);
    for (const [i, step] of answer.order.entries()) {
      const other = said.order[i]!;
      expect([other.verdict, other.load, other.unload]).toEqual([step.verdict, step.load, step.unload]);
      expect(Math.abs(other.reached - step.reached)).toBeLessThan(0.001);
      for (const figure of ["clearance", "leastClearance"] as const) {
        expect(other[figure] === null).toBe(step[figure] === null);
        expect(Math.abs((other[figure] ?? 0) - (step[figure] ?? 0))).toBeLessThan(0.001);
      }
      expect(other.failsAt === undefined).toBe(step.failsAt === undefined);
      expect(other.foldsFor === null).toBe(step.foldsFor === null);
      for (const end of [0, 1] as const)
        expect(Math.abs((other.foldsFor?.[end] ?? 0) - (step.foldsFor?.[end] ?? 0))).toBeLessThan(0.001);
    }
  });
});
