/**
 * Every case of test/cases is read; its blank agrees with the expected one, which an independent program worked out.
 * Source: expected.json beside each case.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readJob } from "../../src/jobFile/readJob.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";

const folder = new URL("../cases/", import.meta.url);
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".json") && !name.endsWith(".expected.json"))
  .map((name) => name.replace(/\.json$/u, ""));

interface ExpectedBlank {
  readonly blank: {
    readonly developedWidth: number;
    readonly bends: readonly { readonly allowance: number; readonly deduction: number }[];
  };
}

function textOf(name: string): string {
  return readFileSync(new URL(`${name}.json`, folder), "utf8");
}

function read(text: string) {
  const result = readJob(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result;
}

describe("readJob on the cases", () => {
  it("finds the cases", () => {
    expect(names.length).toBeGreaterThanOrEqual(12);
  });

  it.each(names)("%s: developed width, allowances and deductions", (name) => {
    const { job } = read(textOf(name));
    const expected = JSON.parse(textOf(`${name}.expected`)) as ExpectedBlank;
    const { flatsMm, bends } = job.part;
    const width =
      flatsMm.reduce((sum, flat) => sum + flat, 0) + bends.reduce((sum, bend) => sum + bend.allowanceMm, 0);
    expect(width).toBeCloseTo(expected.blank.developedWidth, 5);
    expect(bends.length).toBe(expected.blank.bends.length);
    bends.forEach((bend, i) => {
      expect(bend.allowanceMm).toBeCloseTo(expected.blank.bends[i]!.allowance, 5);
      expect(bend.deductionMm).toBeCloseTo(expected.blank.bends[i]!.deduction, 5);
    });
  });

  it.each(names)("%s: written and read again it is the same job", (name) => {
    const { job, file } = read(textOf(name));
    const again = read(writeJob(file));
    expect(again.job).toEqual(job);
    expect(writeJob(again.file)).toBe(writeJob(file));
  });
});
