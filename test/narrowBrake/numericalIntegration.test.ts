/**
 * Deflections against an independent double integration of M/EI (and V/GA), sections against sums over small squares, welds against rings of
 * short runs, torsion of a flat against Saint-Venant's series. Statics is worked out anew here, nothing is taken from src but the answers.
 */
import { describe, expect, test } from "vitest";
import { centralMoment, centralSag, middleTwist } from "../../src/narrowBrake/strength/centralLoad.ts";
import {
  plateDeflection,
  plateShear,
  thinnestByStiffness,
} from "../../src/narrowBrake/strength/plateCantilever.ts";
import { sectionOf } from "../../src/narrowBrake/strength/rectangles.ts";
import { type WeldLine, weldStress } from "../../src/narrowBrake/strength/weldLines.ts";

const STEPS = 20_000;

/** Cumulative trapezoids of samples at an even step. */
function integrated(samples: readonly number[], step: number): number[] {
  const sums = [0];
  for (let i = 1; i < samples.length; i++) {
    sums.push(sums[i - 1]! + ((samples[i - 1]! + samples[i]!) / 2) * step);
  }
  return sums;
}

describe("centralMoment and centralSag against double integration of M/EI", () => {
  test.each([
    [12, 350, 350],
    [5, 300, 400],
    [40, 80, 900],
  ])("%s N/mm on %s of %s mm", (loadNPerMm, loadedMm, spanMm) => {
    const ei = 2e5 * 9e4;
    const step = spanMm / STEPS;
    const start = (spanMm - loadedMm) / 2;
    const moments = Array.from({ length: STEPS + 1 }, (_, i) => {
      const x = i * step;
      const under = Math.min(Math.max(x - start, 0), loadedMm);
      return ((loadNPerMm * loadedMm) / 2) * x - loadNPerMm * under * (x - start - under / 2);
    });
    const raw = integrated(
      integrated(
        moments.map((moment) => -moment / ei),
        step,
      ),
      step,
    );
    const sag = raw[STEPS / 2]! - raw.at(-1)! / 2;
    const beam = { loadNPerMm, loadedMm, spanMm };
    expect(centralSag(beam, ei) / sag).toBeCloseTo(1, 5);
    expect(centralMoment(beam) / Math.max(...moments)).toBeCloseTo(1, 6);
  });
});

describe("plateDeflection against double integration", () => {
  test.each([
    [24.6, 14, 4.76],
    [24.6, 14, 6.35],
    [60, 25, 12],
    [8, 40, 5],
  ])("load %s N/mm, overhang %s, thickness %s", (loadNPerMm, overhangMm, t) => {
    const [e, nu] = [200_000, 0.29];
    const rigidity = (e * t ** 3) / 12 / (1 - nu * nu);
    const step = overhangMm / STEPS;
    const curvature = Array.from(
      { length: STEPS + 1 },
      (_, i) => (loadNPerMm * (overhangMm - i * step)) / rigidity,
    );
    const bending = integrated(integrated(curvature, step), step).at(-1)!;
    // Shear energy of a parabolic shear stress over the depth, integrated: γ = (1/V)·∫ τ²/G dy with τ = 1.5·V/t·(1 − (2y/t)²).
    const g = e / (2 * (1 + nu));
    let energy = 0;
    for (let i = 0; i < 2000; i++) {
      const y = -t / 2 + ((i + 0.5) * t) / 2000;
      const tau = ((1.5 * loadNPerMm) / t) * (1 - ((2 * y) / t) ** 2);
      energy += ((tau * tau) / g) * (t / 2000);
    }
    const shear = (energy / loadNPerMm) * overhangMm;
    const plate = { loadNPerMm, overhangMm };
    expect(plateShear(plate, t, e, nu) / shear).toBeCloseTo(1, 5);
    expect(plateDeflection(plate, t, e, nu) / (bending + shear)).toBeCloseTo(1, 6);
    expect(thinnestByStiffness(plate, bending + shear, e, nu)).toBeCloseTo(t, 5);
  });
});

describe("sectionOf against a sum over small squares", () => {
  test.each([
    [[{ minX: 0, maxX: 40, minY: 0, maxY: 12 }]],
    [
      [
        { minX: -100, maxX: 0, minY: -20, maxY: 0 },
        { minX: -60, maxX: -50, minY: -120, maxY: -20 },
      ],
    ],
  ])("%j", (rectangles) => {
    const size = 0.25;
    const cells = rectangles.flatMap(({ minX, maxX, minY, maxY }) => {
      const found: [number, number][] = [];
      for (let x = minX + size / 2; x < maxX; x += size)
        for (let y = minY + size / 2; y < maxY; y += size) found.push([x, y]);
      return found;
    });
    const area = cells.length * size * size;
    const mean = (i: 0 | 1) => cells.reduce((sum, cell) => sum + cell[i], 0) / cells.length;
    const [cx, cy] = [mean(0), mean(1)];
    const second = (i: 0 | 1, c: number) =>
      cells.reduce((sum, cell) => sum + (cell[i] - c) ** 2 * size * size, 0);
    const s = sectionOf(rectangles);
    expect(s.areaMm2 / area).toBeCloseTo(1, 9);
    expect(s.centroidXMm).toBeCloseTo(cx, 6);
    expect(s.centroidYMm).toBeCloseTo(cy, 6);
    expect(s.secondMomentXMm4 / second(1, cy)).toBeCloseTo(1, 3);
    expect(s.secondMomentYMm4 / second(0, cx)).toBeCloseTo(1, 3);
  });
});

describe("weldStress against a ring of many short runs", () => {
  test("a round weld bent out of its plane: M/(π·r²·throat); twisted: T/(2·π·r²·throat) (Shigley, tables 9-1 and 9-2)", () => {
    const r = 20;
    const count = 720;
    const at = (i: number) =>
      [r * Math.cos((2 * Math.PI * i) / count), r * Math.sin((2 * Math.PI * i) / count)] as const;
    const ring: WeldLine[] = Array.from({ length: count }, (_, i) => [at(i), at(i + 1)]);
    const throat = Math.SQRT1_2 * 6;
    const far = 1e5;
    const bent = weldStress(ring, 6, { force: [0, 1], at: [0, 0], offMm: far }) / far;
    expect(bent * Math.PI * r * r * throat).toBeCloseTo(1, 3);
    const twisted = weldStress(ring, 6, { force: [0, 1], at: [far, 0], offMm: 0 }) / far;
    expect(twisted * 2 * Math.PI * r * r * throat).toBeCloseTo(1, 3);
  });

  test("two upright runs pulled along themselves share it: V/(2·l·throat)", () => {
    const lines: WeldLine[] = [
      [
        [0, 0],
        [0, 50],
      ],
      [
        [12, 0],
        [12, 50],
      ],
    ];
    const stress = weldStress(lines, 5, { force: [0, 1000], at: [6, 0], offMm: 0 });
    expect(stress).toBeCloseTo(1000 / (2 * 50 * 5 * Math.SQRT1_2), 9);
  });
});

describe("torsion", () => {
  test.each([
    [20, 10],
    [50, 6],
    [76.2, 7.9375],
  ])("torsionMm4 of a flat %s × %s against Saint-Venant's series (Timoshenko & Goodier)", (b, t) => {
    let series = 0;
    for (let n = 1; n < 200; n += 2) series += Math.tanh((n * Math.PI * b) / (2 * t)) / n ** 5;
    const exact = ((b * t ** 3) / 3) * (1 - ((192 * t) / (Math.PI ** 5 * b)) * series);
    const { torsionMm4 } = sectionOf([{ minX: 0, maxX: b, minY: 0, maxY: t }]);
    expect(Math.abs(torsionMm4 / exact - 1)).toBeLessThan(0.01);
  });

  test("middleTwist against integration of the torque", () => {
    const [moment, length, g, j] = [67, 305, 77_500, 1084];
    const step = length / 2 / STEPS;
    const rate = Array.from({ length: STEPS + 1 }, (_, i) => (moment * (length / 2 - i * step)) / (g * j));
    expect(middleTwist(moment, length, g, j)).toBeCloseTo(integrated(rate, step).at(-1)!, 9);
  });
});
