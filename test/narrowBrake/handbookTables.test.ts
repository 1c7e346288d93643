/**
 * Section, thread and bolt formulas against printed tables (sources named in test/sources).
 */
import { describe, expect, test } from "vitest";
import {
  proofLoad,
  reusablePreload,
  stressArea,
  tighteningTorque,
} from "../../src/narrowBrake/strength/bolt.ts";
import { sectionOf } from "../../src/narrowBrake/strength/rectangles.ts";
import { STEEL_DENSITY_KG_PER_MM3 } from "../../src/narrowBrake/strength/weight.ts";
import { STEEL_ANGLES } from "../sources/steelAngles.ts";
import {
  GRADE_5_DRY_TORQUE,
  LARGER_METRIC_AREAS,
  METRIC_THREADS,
  UNIFIED_AREAS,
} from "../sources/threads.ts";

const IN = 25.4;
const N_PER_LBF = 4.4482216;
const KG_PER_LB = 0.45359237;

/** The tables are printed to three figures. */
function expectThreeFigures(value: number, printed: number) {
  expect(Math.abs(value / printed - 1)).toBeLessThan(0.006);
}

describe("sectionOf angle: Mott, table A16-1", () => {
  test.each(STEEL_ANGLES)("L$long × $short × $t", (row) => {
    const { long, short, t } = row;
    // An angle is two rectangles: its short leg on the ground, the long one standing.
    const s = sectionOf([
      { minX: 0, maxX: short * IN, minY: 0, maxY: t * IN },
      { minX: 0, maxX: t * IN, minY: t * IN, maxY: long * IN },
    ]);
    expectThreeFigures(s.areaMm2 / IN ** 2, row.area);
    expectThreeFigures(s.secondMomentXMm4 / IN ** 4, row.ix);
    expectThreeFigures(s.modulusXMm3 / IN ** 3, row.sx);
    expectThreeFigures(s.centroidYMm / IN, row.y);
    expectThreeFigures(s.secondMomentYMm4 / IN ** 4, row.iy);
    expectThreeFigures(s.modulusYMm3 / IN ** 3, row.sy);
    if (row.x !== null) expectThreeFigures(s.centroidXMm / IN, row.x);
    // Weights are printed to two figures below 10 lb/ft.
    expect(
      Math.abs((STEEL_DENSITY_KG_PER_MM3 * s.areaMm2 * 12 * IN) / KG_PER_LB / row.weight - 1),
    ).toBeLessThan(0.02);
  });
});

describe("stressArea", () => {
  const metric = [
    ...METRIC_THREADS.map(([diameterMm, pitchMm, area]) => ({ diameterMm, pitchMm, area })),
    ...LARGER_METRIC_AREAS.map(([diameterMm, pitchMm, area]) => ({ diameterMm, pitchMm, area })),
  ];
  test.each(metric)("M$diameterMm × $pitchMm: ISO 898-1", ({ diameterMm, pitchMm, area }) => {
    expectThreeFigures(stressArea({ name: "", diameterMm, pitchMm, series: "metric" }), area);
  });

  test.each(UNIFIED_AREAS)("%s-%s: ASME B1.1", (d, perInch, area) => {
    const thread = { name: "", diameterMm: d * IN, pitchMm: IN / perInch, series: "unified" as const };
    expectThreeFigures(stressArea(thread) / IN ** 2, area);
  });
});

describe("bolts", () => {
  test.each(METRIC_THREADS)("proofLoad of M%s × %s class 8.8: ISO 898-1", (diameterMm, pitchMm, _, proof) => {
    const grade = { name: "8.8", proofMpa: 580, source: "ISO 898-1" };
    const load = proofLoad({ name: "", diameterMm, pitchMm, series: "metric" }, grade);
    // Printed loads are rounded to three figures, mostly down.
    expect(Math.abs(load / proof - 1)).toBeLessThan(0.01);
  });

  test.each(GRADE_5_DRY_TORQUE)(
    "torque of %s-%s grade 5, dry: table at 75 % of proof",
    (d, perInch, lbfFt) => {
      const thread = { name: "", diameterMm: d * IN, pitchMm: IN / perInch, series: "unified" as const };
      const grade = { name: "5", proofMpa: 85 * 6.894757, source: "SAE J429" };
      const nm = tighteningTorque(thread, reusablePreload(thread, grade), 0.2);
      // The table rounds to whole pound-feet or pound-inches.
      expect(Math.abs((nm * 1000) / (N_PER_LBF * 12 * IN) / lbfFt - 1)).toBeLessThan(0.01);
    },
  );
});
