/**
 * Springback against the physics behind the formula, computed another way: moment of an elastic, perfectly plastic sheet
 * summed over its fibres, elastic unloading, equal arc length found by bisection. And against printed factors.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SpringbackInput, springbackRatio, testStripRatio } from "../../src/metal/springback.ts";
import { springbackFactors, springbackHeadings } from "../sources/bendHandbooks.ts";

/** Radius after unloading, from the bending moment summed over n fibres; curvature taken at R_i as the formula does. */
function unloadedRadius(radius: number, thickness: number, yieldMpa: number, modulus: number): number {
  const fibres = 20_000;
  let moment = 0;
  for (let i = 0; i < fibres; i++) {
    const y = ((i + 0.5) / fibres - 0.5) * thickness;
    const stress = Math.max(-yieldMpa, Math.min(yieldMpa, (modulus * y) / radius));
    moment += stress * y * (thickness / fibres);
  }
  const curvature = 1 / radius - moment / ((modulus * thickness ** 3) / 12);
  return 1 / curvature;
}

/** Finished angle of a 90° leaf swing: bisect until the mid line is as long as before. */
function finishedAngle(radius: number, relaxed: number, thickness: number): number {
  const length = (Math.PI / 2) * (radius + thickness / 2);
  let [low, high] = [0, Math.PI];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (middle * (relaxed + thickness / 2) > length) high = middle;
    else low = middle;
  }
  return low;
}

/** Inside radius after the leaf lets go: the mid-thickness arc keeps its length. */
function relaxedRadius(input: SpringbackInput): number {
  const half = input.thicknessMm / 2;
  return (input.insideRadiusMm + half) / springbackRatio(input) - half;
}

describe("springbackRatio", () => {
  it("agrees with summed fibres and bisected arc length on 300 random bends", () => {
    const shape = fc.record({
      thicknessMm: fc.double({ min: 0.3, max: 3, noNaN: true }),
      ratio: fc.double({ min: 0.1, max: 40, noNaN: true }),
      yieldMpa: fc.double({ min: 30, max: 700, noNaN: true }),
      modulusMpa: fc.double({ min: 65_000, max: 210_000, noNaN: true }),
    });
    fc.assert(
      fc.property(shape, ({ thicknessMm, ratio, yieldMpa, modulusMpa }) => {
        const insideRadiusMm = ratio * thicknessMm;
        fc.pre((ratio * yieldMpa) / modulusMpa < 0.45);
        const input = { insideRadiusMm, thicknessMm, yieldMpa, modulusMpa };
        const relaxed = unloadedRadius(insideRadiusMm, thicknessMm, yieldMpa, modulusMpa);
        const angle = finishedAngle(insideRadiusMm, relaxed, thicknessMm);
        expect(springbackRatio(input)).toBeCloseTo(angle / (Math.PI / 2), 5);
        expect(relaxedRadius(input) / relaxed).toBeCloseTo(1, 4);
      }),
      { seed: 44, numRuns: 300 },
    );
  });

  it("gives a textbook's R_f: 20 ga steel, R_i 0.5 in, yield 40 000 psi, E 29e6 psi, R_f 0.531 in", () => {
    // Manufacturing Engineering and Technology, example on springback (from memory): Ri/Rf = 0.942
    const psi = 0.006894757;
    const radius = relaxedRadius({
      insideRadiusMm: 12.7,
      thicknessMm: 0.0359 * 25.4,
      yieldMpa: 40_000 * psi,
      modulusMpa: 29e6 * psi,
    });
    expect(radius / 25.4).toBeCloseTo(0.531, 3);
  });

  it.each(springbackHeadings.map((ratio, i) => [ratio, springbackFactors.DC01![i]!] as const))(
    "at r/T %d is within 0.02 of the handbook's %d for DC01",
    (ratio, factor) => {
      // DC01 at 240 MPa: EN 10130 allows up to 280 MPa (from memory)
      const ks = springbackRatio({
        insideRadiusMm: ratio,
        thicknessMm: 1,
        yieldMpa: 240,
        modulusMpa: 200_000,
      });
      expect(Math.abs(ks - factor)).toBeLessThanOrEqual(0.02);
    },
  );

  it("keeps the whole angle in a sharp bend and none where the sheet only flexes", () => {
    const sheet = { thicknessMm: 1, yieldMpa: 200, modulusMpa: 200_000 };
    expect(springbackRatio({ ...sheet, insideRadiusMm: 0 })).toBe(1);
    expect(springbackRatio({ ...sheet, insideRadiusMm: 500 })).toBe(0);
    expect(springbackRatio({ ...sheet, insideRadiusMm: 550 })).toBe(0);
    expect(springbackRatio({ ...sheet, insideRadiusMm: 5000 })).toBe(0);
    expect(relaxedRadius({ ...sheet, insideRadiusMm: 600 })).toBe(Number.POSITIVE_INFINITY);
    const nearlyAll = springbackRatio({ ...sheet, insideRadiusMm: 499.9 });
    expect(nearlyAll).toBeGreaterThan(0);
    expect(nearlyAll).toBeLessThan(1e-4);
  });

  it("falls as radius or yield grows, rises with thickness and modulus", () => {
    const base = { insideRadiusMm: 2, thicknessMm: 1, yieldMpa: 250, modulusMpa: 200_000 };
    const ks = springbackRatio(base);
    expect(springbackRatio({ ...base, insideRadiusMm: 3 })).toBeLessThan(ks);
    expect(springbackRatio({ ...base, yieldMpa: 300 })).toBeLessThan(ks);
    expect(springbackRatio({ ...base, thicknessMm: 1.2 })).toBeGreaterThan(ks);
    expect(springbackRatio({ ...base, modulusMpa: 210_000 })).toBeGreaterThan(ks);
  });

  it.each([
    { thicknessMm: 0 },
    { modulusMpa: -1 },
    { insideRadiusMm: -1 },
    { yieldMpa: Number.NaN },
    { insideRadiusMm: Number.POSITIVE_INFINITY },
  ])("refuses %j", (wrong) => {
    const base = { insideRadiusMm: 1, thicknessMm: 1, yieldMpa: 250, modulusMpa: 200_000 };
    expect(() => springbackRatio({ ...base, ...wrong })).toThrow(RangeError);
  });
});

describe("testStripRatio", () => {
  it("is what stayed of what the leaf read", () => {
    expect(testStripRatio({ leafReadDeg: 100, relaxedDeg: 90 })).toBe(0.9);
    expect(testStripRatio({ leafReadDeg: 90, relaxedDeg: 90 })).toBe(1);
  });

  it.each([
    [90, 91],
    [90, 0],
    [0, 0],
    [Number.NaN, 80],
    [Number.POSITIVE_INFINITY, 80],
  ])("refuses leaf %d, relaxed %d", (leafReadDeg, relaxedDeg) => {
    expect(() => testStripRatio({ leafReadDeg, relaxedDeg })).toThrow(RangeError);
  });
});
