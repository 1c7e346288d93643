/**
 * What ties the allowance methods together: K-factor there and back, the test strip, the comparison and the radii a foreman questions.
 * Handbook values are in handbooks.test.ts.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { metalNamed } from "../../src/metal/metals.ts";
import { bendAllowance, bendDeduction, kFactorOf } from "../../src/part/allowance.ts";
import { outsideBendSetback } from "../../src/part/bendSetback.ts";
import { compareAllowances } from "../../src/part/compareAllowances.ts";
import { sharpBends } from "../../src/part/sharpBends.ts";
import { readTestStrip } from "../../src/part/testStrip.ts";
import { sharpBendWords } from "../../src/words/warningWords.ts";

const shapes = fc.record({
  angleDeg: fc.double({ min: 1, max: 175, noNaN: true }),
  insideRadiusMm: fc.double({ min: 0, max: 20, noNaN: true }),
  thicknessMm: fc.double({ min: 0.3, max: 4, noNaN: true }),
});

describe("bend allowance by K-factor", () => {
  it("is 2.123717 for r 1, T 0.8, K 0.44 at 90° (worked cases of the contract)", () => {
    const shape = { angleDeg: 90, insideRadiusMm: 1, thicknessMm: 0.8 };
    expect(bendAllowance(shape, 0.44)).toBeCloseTo(2.123717, 6);
    expect(bendDeduction(shape, bendAllowance(shape, 0.44))).toBeCloseTo(1.476283, 6);
  });

  it("is the arc of the inside face at K 0 and of mid thickness at K 1/2", () => {
    const shape = { angleDeg: 180, insideRadiusMm: 1, thicknessMm: 2 };
    expect(bendAllowance(shape, 0)).toBeCloseTo(Math.PI, 12);
    expect(bendAllowance(shape, 0.5)).toBeCloseTo(2 * Math.PI, 12);
  });

  it("goes back to its K-factor", () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0, max: 0.5, noNaN: true }), (shape, k) => {
        expect(kFactorOf(shape, bendAllowance(shape, k))).toBeCloseTo(k, 9);
      }),
      { seed: 45, numRuns: 500 },
    );
  });
});

describe("readTestStrip", () => {
  it("worked by hand: 48 mm strip, flanges 25 and 25, r 1, T 1, 90°", () => {
    // BD = 50 − 48 = 2; SB = 2; BA = 4 − 2 = 2; K = 2/(π/2) − 1 = 0.27324
    const strip = { angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1, widthBeforeMm: 48 };
    const result = readTestStrip({ ...strip, outsideFlangesMm: [25, 25] });
    expect(result.deductionMm).toBe(2);
    expect(result.allowanceMm).toBeCloseTo(2, 12);
    expect(result.kFactor).toBeCloseTo(0.2732395447, 9);
    expect(result.doubt).toBeUndefined();
  });

  it("finds the K-factor that a strip was folded with", () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0.01, max: 0.49, noNaN: true }), (shape, k) => {
        const bendSetbackMm = outsideBendSetback(shape);
        const widthBeforeMm = 40 + bendAllowance(shape, k);
        const result = readTestStrip({
          ...shape,
          widthBeforeMm,
          outsideFlangesMm: [15 + bendSetbackMm, 25 + bendSetbackMm],
        });
        expect(result.kFactor).toBeCloseTo(k, 6);
        expect(result.doubt).toBeUndefined();
      }),
      { seed: 46, numRuns: 500 },
    );
  });

  it("doubts a neutral line that no sheet has", () => {
    const strip = { angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1, widthBeforeMm: 48 };
    expect(readTestStrip({ ...strip, outsideFlangesMm: [25, 26] }).doubt).toContain("inside the bend");
    expect(readTestStrip({ ...strip, outsideFlangesMm: [25, 24.4] }).doubt).toContain("outer half");
  });

  it("refuses what was not measured", () => {
    const strip = { angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1, widthBeforeMm: 48 };
    expect(() => readTestStrip({ ...strip, outsideFlangesMm: [25, 0] })).toThrow(RangeError);
    expect(() => readTestStrip({ ...strip, angleDeg: 0, outsideFlangesMm: [25, 25] })).toThrow(RangeError);
    expect(() => readTestStrip({ ...strip, widthBeforeMm: Number.NaN, outsideFlangesMm: [25, 25] })).toThrow(
      RangeError,
    );
  });
});

describe("compareAllowances", () => {
  it("sets the three methods side by side, worked by hand for r 1, T 1, 90°, K 0.44", () => {
    const compared = compareAllowances({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1 }, 0.44);
    expect(compared.byKFactorMm).toBeCloseTo((Math.PI / 2) * 1.44, 12);
    expect(compared.byEmpiricalMm).toBeCloseTo(90 * 0.02523, 12);
    expect(compared.byDin6935Mm).toBeCloseTo((Math.PI / 2) * 1.325, 12);
    expect(compared.spreadMm).toBeCloseTo(90 * 0.02523 - (Math.PI / 2) * 1.325, 12);
  });
});

describe("sharpBends", () => {
  const metal = metalNamed("2024-T3");
  const bend = (insideRadiusMm: number, angleDeg = 90) => ({
    angleDeg,
    turn: "up" as const,
    insideRadiusMm,
    overbendDeg: angleDeg,
    allowanceMm: 1,
    bendSetbackMm: 1,
    deductionMm: 1,
  });

  it("grades by AC 43.13-1B: 2024-T3 of .064 in wants 3 T to 5 T", () => {
    if (metal === undefined) throw new Error("2024-T3 is missing");
    const thicknessMm = 0.064 * 25.4;
    const radii = [2.9, 2.98, 4, 4.97, 6].map((multiple) => bend(multiple * thicknessMm));
    const found = sharpBends({ metal, thicknessMm, bends: radii });
    expect(found.map(({ bend: at, grade }) => [at, grade])).toEqual([
      [0, "cracks"],
      [1, "care"],
      [2, "care"],
    ]);
    expect(found[0]?.source).toContain("table 4-6");
  });

  it("tells a kick under 45° as care at most", () => {
    if (metal === undefined) throw new Error("2024-T3 is missing");
    const found = sharpBends({
      metal,
      thicknessMm: 1.6256,
      bends: [bend(0.5, 30), bend(0.5, 45), bend(0.5, 120)],
    });
    expect(found.map(({ grade }) => grade)).toEqual(["care", "cracks", "cracks"]);
  });

  it("says nothing of a metal without a table", () => {
    const own = { name: "own", yieldMpa: 200, modulusMpa: 200_000 };
    expect(sharpBends({ metal: own, thicknessMm: 1, bends: [bend(0)] })).toEqual([]);
  });

  it("speaks in the user's unit", () => {
    const sharp = {
      bend: 0,
      insideRadiusMm: 0.8,
      leastMm: 3.175,
      easyMm: 6.35,
      angleDeg: 90,
      source: "a table",
    };
    expect(sharpBendWords({ ...sharp, grade: "cracks" }, "2024-T3", "in")).toBe(
      "inside radius 1/32 in is under 1/8 in, the least for 2024-T3 here: it is likely to crack (a table).",
    );
    expect(sharpBendWords({ ...sharp, grade: "care" }, "2024-T3", "mm")).toBe(
      "inside radius 0.8 mm is on the tight side for 2024-T3: 3.17 mm to 6.35 mm is the range, so bend a scrap across the grain first (a table).",
    );
  });
});
