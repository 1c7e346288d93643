/**
 * Weight of a blank. The Manufacturers' Standard Gauge is a weight: 41.82 lb a square foot and inch of thickness, so
 * 20 gauge (0.0359 in) is 1.5 lb/ft² and 16 gauge (0.0598 in) 2.5 lb/ft² (from memory of the published table).
 */
import { expect, test } from "vitest";
import { grainAt } from "../../src/blank/grain.ts";
import { blankWeightKg } from "../../src/blank/weight.ts";
import { grainWarning } from "../../src/words/warningWords.ts";

const FOOT_MM = 304.8;
const POUND_KG = 0.45359237;
const GAUGE_DENSITY = (41.82 * POUND_KG) / (0.3048 ** 2 * 0.0254);

test.each([
  ["20 gauge", 0.0359, 1.5],
  ["16 gauge", 0.0598, 2.5],
  ["10 gauge", 0.1345, 5.625],
])("blankWeightKg: a square foot of %s steel", (_, thicknessIn, pounds) => {
  const blank = { widthMm: FOOT_MM, lengthMm: FOOT_MM, thicknessMm: thicknessIn * 25.4 };
  expect(blankWeightKg(blank, GAUGE_DENSITY) / POUND_KG).toBeCloseTo(pounds, 2);
});

test("blankWeightKg takes off what is cut away, and refuses more than there is", () => {
  const blank = { widthMm: 100, lengthMm: 80, thicknessMm: 1 };
  expect(blankWeightKg({ ...blank, takenMm2: 2000 }, 7850)).toBeCloseTo(
    0.75 * blankWeightKg(blank, 7850),
    12,
  );
  expect(() => blankWeightKg({ ...blank, takenMm2: 8000 }, 7850)).toThrow(RangeError);
});

test("blankWeightKg refuses what has no size", () => {
  expect(() => blankWeightKg({ widthMm: 0, lengthMm: 1, thicknessMm: 1 }, 7850)).toThrow(RangeError);
  expect(() => blankWeightKg({ widthMm: 1, lengthMm: 1, thicknessMm: 1 }, Number.NaN)).toThrow(RangeError);
});

test.each([
  [0, "along"],
  [44, "along"],
  [-30, "along"],
  [170, "along"],
  [46, "across"],
  [90, "across"],
  [-90, "across"],
  [270, "across"],
])("grainAt %d° to the bend lines runs %s them", (angle, grain) => {
  expect(grainAt(angle)).toBe(grain);
});

test("grainWarning speaks where bends run along the grain or the grain is not known, and only there", () => {
  expect(grainWarning("across", 3)).toBeUndefined();
  expect(grainWarning("along", 0)).toBeUndefined();
  expect(grainWarning("along", 1)).toContain("along the bend:");
  expect(grainWarning("along", 4)).toContain("all 4 bends");
  expect(grainWarning("unknown", 2)).toContain("Look which way");
});
