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

type Loose = Record<string, Record<string, Record<string, unknown>>>;

function waysOfFile(name: string, change: (file: Loose) => void = () => {}) {
  const path = fileURLToPath(new URL(`../${name}.json`, import.meta.url));
  const loose = JSON.parse(readFileSync(path, "utf8")) as Loose;
  change(loose);
  const read = readAnyJob(JSON.stringify(loose));
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  return { ...read, ways: wholeWays(read.file, read.job, checkWhole(read.job)) };
}

const { job, file, ways } = waysOfFile("wholeCases/switch-box-meets-holder");

/** A tray whose last wall lies between two others, on fingers that leave much of it bare. */
const onWrongFingers = waysOfFile("wholeCases/tray-last-wall-fits", (loose) => {
  loose.brake!.clamp!.fingers = [50, 35, 420].map((width) => ({ width, count: 1 }));
  (loose.part!.box as Record<string, unknown>).width = 400;
  loose.order = [3, 4, 1, 2].map((bend) => ({ bends: [bend], clampedAt: [200, 80] })) as never;
});

it.each([
  ["a wall under the holder", { file, ways }],
  ["wrong fingers", onWrongFingers],
])("wholeWays: every way out of %s is a job that folds, also read back from its text", (_, tried) => {
  const { file, ways } = tried;
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

it("wholeWays: a wall is offered no higher than the fingers and the sheet, and no lower than a tenth of that", () => {
  const tallMm = 50 + job.part.thicknessMm;
  const walls = ways.filter(({ kind }) => kind === "wall").map(({ changes }) => Number(changes[0]!.to));
  expect(walls.length).toBeGreaterThan(0);
  for (const mm of walls) {
    expect(mm).toBeLessThanOrEqual(tallMm);
    expect(mm).toBeGreaterThan(0.9 * tallMm);
  }
});

it("wholeWays: a missing finger is ground, or those that there are stand with more of the bend bare", () => {
  // 85 of b − 2r = 96.4 is held by 50 and 35: the rest stays bare in three even stretches.
  const { ways: found } = onWrongFingers;
  const bare = found.find(({ kind }) => kind === "fingerGap")!;
  expect(Number(bare.changes[0]!.to)).toBeCloseTo((96.4 - 85) / 3, 1);
  expect(bare.sentence).toMatch(/fingers of (50\.00 mm and 35\.00|35\.00 mm and 50\.00) mm/u);
  const ground = found.find(({ kind }) => kind === "finger")!;
  expect(ground.sentence).toMatch(/^Grind a finger to 96\.\d+ mm/u);
});

it("wholeWays: none where the part folds, and the file handed in stays as it is", () => {
  const text = JSON.stringify(file);
  const [way] = ways;
  const folds = wholeJobOf(withKeys(file, way!.changes));
  if (!folds.ok) throw new Error("read before");
  expect(wholeWays(folds.file, folds.job, checkWhole(folds.job))).toEqual([]);
  expect(JSON.stringify(file)).toBe(text);
});
