/**
 * Bend setback and allowance against handbooks and a standard: FAA AC 43.13-1B, FAA-H-8083-31, DIN 6935 by way of Tabellenbuch
 * Metall, Machinery's Handbook (test/sources/bendHandbooks.ts says which value is from where).
 */
import { describe, expect, it } from "vitest";
import { layOut } from "../../src/blank/blank.ts";
import { bendAllowance, bendDeduction, kFactorOf } from "../../src/part/allowance.ts";
import { insideBendSetback, outsideBendSetback } from "../../src/part/bendSetback.ts";
import { din6935Allowance, din6935Factor } from "../../src/part/din6935Allowance.ts";
import { empiricalAllowance } from "../../src/part/empiricalAllowance.ts";
import {
  dinExample,
  faaBendSetbackChart,
  faaBendSetbackExamples,
  faaBracket,
  faaChannel,
  machineryRightAngle,
} from "../sources/bendHandbooks.ts";

const INCH = 25.4;

describe("bend setback", () => {
  it.each(faaBendSetbackChart)("at %d° is AC 43.13-1B's K %d times radius and thickness", (angleDeg, k) => {
    const bendSetbackMm = outsideBendSetback({ angleDeg, insideRadiusMm: 0.75, thicknessMm: 0.25 });
    // printed to 4 figures, a few last digits cut instead of rounded
    expect(Math.abs(bendSetbackMm - k)).toBeLessThanOrEqual(Math.max(0.0001, k * 0.0007));
  });

  it("gives AC 43.13-1B's two worked bends of .064 sheet at R .25", () => {
    const { thicknessIn, radiusIn, open, closed } = faaBendSetbackExamples;
    for (const { angleDeg, bendSetbackIn } of [open, closed]) {
      const mm = outsideBendSetback({
        angleDeg,
        insideRadiusMm: radiusIn * INCH,
        thicknessMm: thicknessIn * INCH,
      });
      expect(mm / INCH).toBeCloseTo(bendSetbackIn, 3);
    }
  });

  it("to the inside mold line leaves the thickness out", () => {
    expect(insideBendSetback({ angleDeg: 90, insideRadiusMm: 3, thicknessMm: 9 })).toBeCloseTo(3, 12);
    expect(insideBendSetback({ angleDeg: 120, insideRadiusMm: 3, thicknessMm: 9 })).toBeCloseTo(
      3 * Math.sqrt(3),
      12,
    );
  });
});

describe("FAA-H-8083-31", () => {
  it("U-channel: bend setback .20, flats .80 1.60 .80, width 3.74 with the chart's allowance", () => {
    const { thicknessIn, radiusIn, moldLinesIn, bendSetbackIn, flatsIn, chartAllowanceIn, developedWidthIn } =
      faaChannel;
    const shape = { angleDeg: 90, insideRadiusMm: radiusIn * INCH, thicknessMm: thicknessIn * INCH };
    const bendSetbackMm = outsideBendSetback(shape);
    expect(bendSetbackMm / INCH).toBeCloseTo(bendSetbackIn, 10);
    const flatsMm = moldLinesIn.map((mold, i) => mold * INCH - (i === 1 ? 2 : 1) * bendSetbackMm);
    flatsMm.forEach((flat, i) => {
      expect(flat / INCH).toBeCloseTo(flatsIn[i] ?? Number.NaN, 10);
    });
    const bend = {
      angleDeg: 90,
      turn: "up" as const,
      insideRadiusMm: shape.insideRadiusMm,
      overbendDeg: 90,
      allowanceMm: chartAllowanceIn * INCH,
      bendSetbackMm,
      deductionMm: bendDeduction(shape, chartAllowanceIn * INCH),
    };
    expect(layOut({ flatsMm, bends: [bend, bend] }).developedWidthMm / INCH).toBeCloseTo(
      developedWidthIn,
      10,
    );
  });

  it("U-channel: the empirical formula at the chart's R .156 rounds to the chart's .27", () => {
    const { thicknessIn, chartRadiusIn, chartAllowanceIn } = faaChannel;
    const inches = empiricalAllowance({
      angleDeg: 90,
      insideRadiusMm: chartRadiusIn,
      thicknessMm: thicknessIn,
    });
    expect(Math.round(inches * 100) / 100).toBe(chartAllowanceIn);
  });

  it("L-bracket of 60°: formula and chart agree to 0.0002 in", () => {
    const { angleDeg, chartRadiusIn, thicknessIn, perDegreeIn, allowanceIn } = faaBracket;
    const inches = empiricalAllowance({ angleDeg, insideRadiusMm: chartRadiusIn, thicknessMm: thicknessIn });
    expect(perDegreeIn * angleDeg).toBeCloseTo(allowanceIn, 10);
    expect(Math.abs(inches - allowanceIn)).toBeLessThan(0.0002);
  });

  it("empirical formula: its K is 0.0078/0.01743, and the π/180 in it is rounded up by 0.13 %", () => {
    const shape = { angleDeg: 100, insideRadiusMm: 0, thicknessMm: 1 };
    expect(empiricalAllowance(shape)).toBeCloseTo(0.78, 12);
    expect(empiricalAllowance({ ...shape, insideRadiusMm: 1, thicknessMm: 0 })).toBeCloseTo(1.743, 12);
    const byK = bendAllowance({ ...shape, insideRadiusMm: 1 }, 0.0078 / 0.01743);
    expect(empiricalAllowance({ ...shape, insideRadiusMm: 1 }) / byK).toBeCloseTo(
      (0.01743 * 180) / Math.PI,
      9,
    );
  });
});

describe("DIN 6935", () => {
  it.each([
    // by hand from k = 0.65 + 0.5·lg(r/s): lg 1 = 0, lg 2 = 0.30103, lg 5 = 0.69897, lg 0.5 = -0.30103, lg 0.1 = -1
    [1, 0.65],
    [2, 0.800515],
    [0.5, 0.499485],
    [5, 0.999485],
    [0.1, 0.15],
    [5.001, 1],
    [20, 1],
    [0.05, 0],
    [0, 0],
  ])("k at r/s %d is %d", (ratio, k) => {
    // lg 0.05 = -1.30103 puts k at -0.0005, held at 0
    expect(din6935Factor(ratio)).toBeCloseTo(k, 6);
  });

  it("Tabellenbuch Metall's part of 60° opening: k 0.689, and v 5.77 once its diagram's 0.7 is put in", () => {
    const { beta, radiusMm, thicknessMm, k, kOfDiagram, correctionMm } = dinExample;
    // the book cuts 0.68959 to 0.689
    expect(Math.abs(din6935Factor(radiusMm / thicknessMm) - k)).toBeLessThan(0.001);
    const shape = { angleDeg: 180 - beta, insideRadiusMm: radiusMm, thicknessMm };
    const kDifference = kOfDiagram - din6935Factor(radiusMm / thicknessMm);
    const shift = ((2 * Math.PI) / 3) * (thicknessMm / 2) * kDifference;
    // The standard's v for bends past 90° open: what the outside dimensions to the mold line are longer than the flat sheet.
    const reach = Math.tan(((180 - beta) / 2) * (Math.PI / 180));
    const v = 2 * (radiusMm + thicknessMm) * (beta <= 90 ? 1 : reach) - din6935Allowance(shape);
    expect(v - shift).toBeCloseTo(correctionMm, 2);
  });

  it("puts the neutral line at k·s/2: mid thickness in wide bends, so K = 1/2", () => {
    const wide = { angleDeg: 75, insideRadiusMm: 12, thicknessMm: 2 };
    expect(kFactorOf(wide, din6935Allowance(wide))).toBeCloseTo(0.5, 12);
  });
});

describe("Machinery's Handbook", () => {
  it("right-angle formulas are K 0.41 and 0.45 within 0.1 % of the length", () => {
    const shape = { angleDeg: 90, insideRadiusMm: 1.5, thicknessMm: 1 };
    const { softOfT, hardOfT, ofR } = machineryRightAngle;
    for (const [k, ofT] of [
      [0.41, softOfT],
      [0.45, hardOfT],
    ] as const)
      expect(bendAllowance(shape, k) / (ofT * 1 + ofR * 1.5)).toBeCloseTo(1, 2);
  });
});
