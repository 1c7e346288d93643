/**
 * Shims over the nose: each layer adds its thickness to the radius. Sums by hand; the rule itself is FAA-H-8083-31's
 * radius shims (from memory).
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { noseShims } from "../../src/brake/noseShims.ts";

const INCH = 25.4;

describe("noseShims", () => {
  test.each([
    // 2 × 0.8, 1 × 0.8, 3 × 1.2
    [0.8, 2.4, 2],
    [0.8, 1.6, 1],
    [1, 4.6, 3],
  ])("nose %f to %f mm takes %d layers that add up", (noseRadiusMm, insideRadiusMm, layers) => {
    const shims = noseShims({ noseRadiusMm, insideRadiusMm }, "mm")!;
    expect(noseRadiusMm + shims.layers * shims.eachMm).toBeCloseTo(insideRadiusMm, 9);
    expect(shims.reachedMm).toBeCloseTo(insideRadiusMm, 9);
    expect(shims.layers).toBe(layers);
  });

  test("1/32 in nose to a 3/32 in radius: one layer of 0.063 in", () => {
    const shims = noseShims({ noseRadiusMm: INCH / 32, insideRadiusMm: (3 / 32) * INCH }, "in")!;
    expect([shims.layers, shims.eachMm / INCH]).toEqual([1, 0.063]);
  });

  test("nothing over a nose that fits, is rounder, or is nearer bare than with the thinnest sheet", () => {
    expect(noseShims({ noseRadiusMm: 1, insideRadiusMm: 1 }, "mm")).toBeUndefined();
    expect(noseShims({ noseRadiusMm: 2, insideRadiusMm: 1 }, "mm")).toBeUndefined();
    expect(noseShims({ noseRadiusMm: 0.8, insideRadiusMm: 0.95 }, "mm")).toBeUndefined();
  });

  test("always comes nearer than the bare nose", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 12, noNaN: true }),
        fc.constantFrom("mm" as const, "in" as const),
        (noseRadiusMm, insideRadiusMm, units) => {
          const shims = noseShims({ noseRadiusMm, insideRadiusMm }, units);
          if (shims === undefined) return;
          const off = Math.abs(noseRadiusMm + shims.layers * shims.eachMm - insideRadiusMm);
          expect(off).toBeLessThan(insideRadiusMm - noseRadiusMm);
        },
      ),
      { numRuns: 500, seed: 4 },
    );
  });
});
