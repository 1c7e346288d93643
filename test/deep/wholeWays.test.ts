/**
 * Ways out of a box with tabs on all corners. Common practice, no source: sheet beside a bend must hang past the end of the
 * leaf, and what is overbent needs room at the corner.
 */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { wholeJobOf } from "../../src/jobFile/readWhole.ts";
import { withKeys } from "../../src/jobFile/wholeWay.ts";
import { wholeWays } from "../../src/ways/wholeWays.ts";

it("switch-box-tabs: every way folds, and with its tabs it is bent at an end of the brake and stands off", () => {
  const text = readFileSync(new URL("../../examples/whole/switch-box-tabs.json", import.meta.url), "utf8");
  const read = readAnyJob(text);
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  const ways = wholeWays(read.file, read.job, checkWhole(read.job));
  expect(ways.map(({ kind }) => kind)).toContain("corners");
  const both = ways.find(({ kind }) => kind === "brakeEndAndGap")!;
  expect(both.changes.map(({ path }) => path.at(-1))).toEqual(["length", "gap"]);
  for (const { changes, verdict } of ways) {
    const changed = wholeJobOf(withKeys(read.file, changes));
    if (!changed.ok) throw new Error(JSON.stringify(changed.problems));
    expect(checkWhole(changed.job).verdict).toBe(verdict);
  }
});
