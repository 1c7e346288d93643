/**
 * Limits against closed forms: plain geometry of the section, worked by hand (pivot on the edge, bends of 90° without
 * overbend, nose as round as the bend), and one fact of the trade (common practice, no source).
 * The faces' inset of 0.01 mm for contact is left out of the formulas, so limits may lie up to 0.02 mm above them.
 */

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { fillerThickness } from "../../src/ways/filler.ts";
import { flangeChart } from "../../src/ways/flangeChart.ts";
import { longestFlange } from "../../src/ways/flangeCurve.ts";
import { shopMadeBar } from "../../src/ways/shopMadeBar.ts";
import { waysOut } from "../../src/ways/waysOut.ts";
import { rectangle } from "../rectangle.ts";
import { isWay, readAs } from "./tryWays.ts";

const T = 0.8128;
const r = 0.8;
const Rn = 0.8;

const BED = { profile: rectangle(-80, -40, 0, 0) };
const LEAF = { profile: rectangle(0, -6, 8, 0), swing: 120 };

function channelJob(clamp: object, web: number, flange: number) {
  const bend = { angle: 90, turn: "up", overbend: 90 };
  return {
    noseroom: 1,
    units: "mm",
    part: {
      name: "channel",
      material: "mild steel",
      thickness: T,
      insideRadius: r,
      kFactor: 0.44,
      dimensions: "outside",
      flats: [flange, web, flange],
      bends: [bend, bend],
    },
    brake: { name: "bare", clamp, bed: BED, leaf: LEAF, lift: 30, openEnds: true },
  };
}

const finger45 = { type: "finger", noseAngle: 45, noseRadius: Rn, height: 60, footDepth: 75 };

describe("thickest square bar under a channel of web W: T + h < W − T with both front edges rounded", () => {
  const bar = (topRadius: number) => ({ type: "bar", thickness: 14, depth: 60, noseRadius: Rn, topRadius });
  const limitFor = (topRadius: number, web: number) => {
    const { file, job } = readAs(channelJob(bar(topRadius), web, 20));
    const ways = waysOut(file, job, check(job)).filter(isWay);
    return ways.find(({ kind }) => kind === "thinnerBar")?.limit?.figure;
  };

  test.each([6, 8, 10, 12.5])("web %f", (web) => {
    expect(Math.abs(limitFor(Rn, web)! - (web - 2 * T))).toBeLessThan(0.02);
  });

  test.each([8, 10])("a sharp top edge meets the inside arc of the return bend first: web %f", (web) => {
    // The edge stands level with the web's inside face, where the arc begins: h = W − 2T − r. For contact the faces are
    // drawn in by 0.01 mm, which lets the edge into the arc by √((r + 0.01)² − r²), 0.127 mm here.
    const inset = 0.01;
    const formula = web - 2 * T - r + Math.sqrt((r + inset) ** 2 - r ** 2);
    expect(Math.abs(limitFor(0, web)! - formula)).toBeLessThan(0.02);
  });
});

describe("longest return flange on a 45° finger: F = W − T + r − (1 + √2)·Rn", () => {
  const { job } = readAs(channelJob(finger45, 10, 4));
  const formula = (web: number) => web - T + r - (1 + Math.SQRT2) * Rn;
  const sheet = { metal: job.part.metal, thicknessMm: T, kFactor: 0.44, insideRadiusMm: r, overbendRatio: 1 };

  test("web 10 gives 8.0558", () => {
    expect(formula(10)).toBeCloseTo(8.0558, 4);
    expect(
      Math.abs(longestFlange(job.brake, sheet, { angleDeg: 90, webMm: 10 }, 60)! - formula(10)),
    ).toBeLessThan(0.02);
  });

  test("the flange one step longer does not pass", () => {
    const longest = longestFlange(job.brake, sheet, { angleDeg: 90, webMm: 10 }, 60)!;
    expect(check(readAs(channelJob(finger45, 10, longest)).job).verdict).not.toBe("hits");
    expect(check(readAs(channelJob(finger45, 10, longest + 0.05)).job).verdict).toBe("hits");
  });

  test("the whole chart at 90° is that straight line", () => {
    const [curve] = flangeChart(job, [90]).curves;
    const points = curve!.points.filter(({ flange }) => flange !== null);
    expect(points.length).toBeGreaterThan(12);
    for (const { web, flange } of points) expect(Math.abs(flange! - formula(web))).toBeLessThan(0.02);
    // The leaf needs 2T + r = 2.6 to push on (common practice, no source), a flange of 4.4: that fits from a web of 6.34 on.
    expect(formula(6.34)).toBeCloseTo(4.4, 1);
    expect(points[0]!.web).toBeGreaterThan(6.3);
    expect(points[0]!.web).toBeLessThan(7);
    expect(points.at(-1)!.web).toBe(50);
  });

  test("a trimmed flange is trimmed to the same length", () => {
    const { file, job: failing } = readAs(channelJob(finger45, 10, 12));
    const trim = waysOut(file, failing, check(failing))
      .filter(isWay)
      .find(({ kind, index }) => kind === "trimFlat" && index === 1);
    expect(Math.abs(12 + trim!.limit!.figure - formula(10))).toBeLessThan(0.02);
  });
});

describe("filler under a bend that is closed by hand", () => {
  test("fills a square channel from flange to flange: W − 2T", () => {
    const { part } = readAs(channelJob(finger45, 10, 6)).job;
    expect(fillerThickness(part, 0)).toBeCloseTo(10 - 2 * T, 9);
    expect(fillerThickness(part, 1)).toBeCloseTo(10 - 2 * T, 9);
  });

  test("in a tapered channel it is as thick as the mouth is wide", () => {
    // Both bends 120°: faces lean in by 30°, so the mouth is the bottom less twice the lean of the inside faces.
    const bend = { angle: 120, turn: "up", overbend: 120 };
    const job = channelJob(finger45, 40, 20);
    const { part } = readAs({ ...job, part: { ...job.part, dimensions: "flat", bends: [bend, bend] } }).job;
    const [sin, cos] = [Math.sin(Math.PI / 3), Math.cos(Math.PI / 3)];
    expect(fillerThickness(part, 1)).toBeCloseTo(40 + 2 * (r * sin - 20 * cos), 9);
  });

  test("is not needed where nothing faces: one bend, or bends that turn apart", () => {
    const job = channelJob(finger45, 10, 6);
    const [up] = job.part.bends;
    const z = readAs({ ...job, part: { ...job.part, bends: [up, { ...up, turn: "down" }] } }).job;
    expect(fillerThickness(z.part, 0)).toBeUndefined();
    const angle = readAs({ ...job, part: { ...job.part, flats: [6, 10], bends: [up] } }).job;
    expect(fillerThickness(angle.part, 0)).toBeUndefined();
  });
});

describe("a channel of web 3/8 in with 1/2 in flanges of .032 sheet (common practice, no source)", () => {
  const text = (name: string) =>
    readFileSync(fileURLToPath(new URL(`../../examples/${name}.json`, import.meta.url)), "utf8");
  const { file, job } = readAs(text("cable-trough-finger"));
  const bar = shopMadeBar([file])!;

  test("is not made by a 45° finger", () => {
    expect(check(job).verdict).toBe("hits");
  });

  test("is made by a 1/4 in bar, which lies in the window of strength, stiffness and clearance", () => {
    const { thinnestMm, thickestMm, stockInsideMm } = bar.design.window;
    expect(thinnestMm).toBeLessThan(25.4 / 4);
    expect(thickestMm).toBeGreaterThan(25.4 / 4);
    expect(stockInsideMm).toContain(25.4 / 4);
    expect(check(readAs(text("cable-trough-bar")).job).verdict).toBe("clear");
  });

  test("window ends where the engine says so: a bar at its top folds at the high end of the leaf's range, 0.1 mm more does not", () => {
    const { thickestMm } = bar.design.window;
    const [range] = bar.ranges;
    const bends = file.part.bends.map((bend, i) => ({ ...bend, overbend: range!.bends[i]!.highDeg }));
    const onBar = (thickness: number) => {
      const { clamp } = bar.brake as Extract<typeof bar.brake, { clamp: unknown }>;
      const brake = { ...bar.brake, clamp: { ...clamp, thickness: `${thickness} mm` } };
      return check(readAs({ ...file, part: { ...file.part, bends }, brake }).job);
    };
    expect(onBar(thickestMm).verdict).not.toBe("hits");
    expect(onBar(thickestMm + 0.1).verdict).toBe("hits");
  });

  test("the made brake is checked under the part again, and folds it", () => {
    expect(bar.outcomes.map(({ verdict }) => verdict)).toEqual(["clear"]);
    expect(check(readAs({ ...file, brake: bar.brake }).job).verdict).toBe("clear");
  });
});
