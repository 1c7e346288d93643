/**
 * The made brake as a job file: everything that a sheet could meet is in it by name, parts that would go through the bolts are blocked
 * and told by what, and the parts it was made for fold over the whole range of leaf angles.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { withBrake } from "../../src/ways/brakeWays.ts";
import { shopMadeBar } from "../../src/ways/shopMadeBar.ts";

const read = (file: unknown) => {
  const found = readJob(JSON.stringify(file));
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found;
};
const trough = read(
  JSON.parse(
    readFileSync(fileURLToPath(new URL("../../examples/cable-trough-bar.json", import.meta.url)), "utf8"),
  ),
).file;
const bar = shopMadeBar([trough])!;
const made = withBrake(trough, bar.brake!);
const on = (part: Partial<JobFile["part"]>) => check(read({ ...made, part: { ...made.part, ...part } }).job);
const [first] = made.part.bends;

describe("the brake made for the trough", () => {
  test("names bolts, washers, screws, rail and heel strip, and has its handles on the leaf", () => {
    const names = (made.brake.frame ?? []).map((piece) => ("name" in piece ? piece.name : ""));
    expect(names).toEqual([
      "hold-down bolts",
      "washers and nuts",
      "setback screws",
      "screw rail",
      "heel strip",
    ]);
    expect(made.brake.leaf.profile).toHaveLength(8);
    expect(made.brake.openEnds).toBe(false);
    expect(made.brake.rated?.length).toBeDefined();
  });

  test("a flat 10 in deep is blocked by the bolts, and they are named", () => {
    const answer = on({ flats: [10, 10], bends: [first!] });
    expect(answer.verdict).toBe("hits");
    expect(answer.order.map(({ contact }) => contact?.name)).toContain("hold-down bolts");
  });

  test("the trough folds on it at every leaf angle from the least to the most, 92.5° among them", () => {
    const [range] = bar.ranges;
    const { lowDeg, highDeg } = range!.bends[0]!;
    expect(lowDeg).toBeLessThan(92);
    expect(highDeg).toBeGreaterThan(92.5);
    for (const overbend of [lowDeg, 91.9, 92, 92.5, 93, 93.7, highDeg]) {
      const answer = on({ bends: made.part.bends.map((bend) => ({ ...bend, overbend })) });
      expect(answer.verdict, `${overbend}`).not.toBe("hits");
    }
  });

  test("the bar's front leans back further than springback's doubt and the angle that the plan may lose", () => {
    const { plan, requirements } = bar.design;
    const lost = plan!.checks.find(({ check: about }) => about.startsWith("bend angle lost in all"))!;
    // The overbend is given as 92°: half a degree of doubt on it.
    expect(requirements.frontBevelDeg).toBeGreaterThanOrEqual(92 + 0.5 + lost.value - 90);
    expect(lost.value).toBeLessThanOrEqual(2);
  });

  test("a wide part swings its long side out where it can, and then folds", () => {
    const answer = on({ flats: [1, 10], bends: [first!] });
    expect(answer.verdict).not.toBe("hits");
    expect(answer.order[0]!.clamped).toBe("start");
  });
});

test("shopMadeBar: a part that must reach far back gets its bolts beyond its ends, and folds there", () => {
  const wide = {
    ...trough,
    part: { ...trough.part, name: "roof flashing", flats: [5, 5], bends: [first!], length: 8 },
  };
  const found = shopMadeBar([wide])!;
  expect(found.brake).not.toBeNull();
  const { pieces } = found.design.plan!.assembly;
  const bolts = pieces.filter(({ name }) => name === "hold-down bolt");
  expect(bolts).toHaveLength(2);
  const ws = bolts.map(({ shape }) => ("diameter" in shape ? Math.abs(shape.from[2]) : 0));
  expect(Math.min(...ws)).toBeGreaterThan((8 * 25.4) / 2);
  expect(check(read(withBrake(wide, found.brake!)).job).verdict).not.toBe("hits");
});
