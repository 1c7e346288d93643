/**
 * Ways out of whole parts: each is a job of its own that folds, and the closed form bounds what is offered (whole-part
 * model, check values: a wall of height H stands beside a finger under the holder where H ≤ T + clampHeight).
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { wholeJobOf } from "../../src/jobFile/readWhole.ts";
import { withKeys } from "../../src/jobFile/wholeWay.ts";
import { writeWhole } from "../../src/jobFile/writeJob.ts";
import { wholeWays } from "../../src/ways/wholeWays.ts";

const path = fileURLToPath(new URL("../wholeCases/switch-box-meets-holder.json", import.meta.url));
const read = readAnyJob(readFileSync(path, "utf8"));
if (!read.ok || read.kind !== "whole") throw new Error("no whole part");
const { job, file } = read;
const ways = wholeWays(file, job, checkWhole(job));

it("wholeWays: every way is a job that folds, also read back from its text", () => {
  expect(ways.length).toBeGreaterThan(1);
  for (const { changes, verdict } of ways) {
    const changed = wholeJobOf(withKeys(file, changes));
    if (!changed.ok) throw new Error(JSON.stringify(changed.problems));
    expect(checkWhole(changed.job).verdict).toBe(verdict);
    const again = readAnyJob(writeWhole(withKeys(file, changes)));
    expect(again.ok && again.kind === "whole" && again.job.part.sheet.pattern).toEqual(
      changed.job.part.sheet.pattern,
    );
  }
});

it("wholeWays: fingers are offered as high as the walls are, less the sheet", () => {
  const taller = ways.find(({ kind }) => kind === "clampHeight");
  const wallMm = Number((file.part.box!.walls.left as { height: number }).height);
  expect(Number(taller!.changes[0]!.to)).toBeGreaterThanOrEqual(wallMm - job.part.thicknessMm);
});

it("wholeWays: none where the part folds, and the file handed in stays as it is", () => {
  const text = JSON.stringify(file);
  const [way] = ways;
  const folds = wholeJobOf(withKeys(file, way!.changes));
  if (!folds.ok) throw new Error("read before");
  expect(wholeWays(folds.file, folds.job, checkWhole(folds.job))).toEqual([]);
  expect(JSON.stringify(file)).toBe(text);
});
