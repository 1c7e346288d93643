/**
 * Nose setback against the shop's rule and the geometry of the apex.
 * Common practice, no source: set the nose back one thickness from the bend line when its radius is the bend's.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  apexX,
  automaticNoseSetback,
  clampedTangentX,
  formedInsideRadius,
} from "../../src/brake/noseSetback.ts";

const edge = { x: 0, y: 0 };
const base = { insideRadiusMm: 0.8, thicknessMm: 0.8128, noseRunMm: 0.8, overbendDeg: 90, pivot: edge };

describe("automaticNoseSetback", () => {
  it("is one thickness at 90° when the nose has the bend's radius", () => {
    expect(automaticNoseSetback(base)).toBeCloseTo(0.8128, 12);
  });

  it("follows the leaf angle both ways: 92° wants tan 46° = 1.03553031 of r + T, 60° tan 30° = 0.57735027", () => {
    expect(automaticNoseSetback({ ...base, overbendDeg: 92 })).toBeCloseTo(1.6128 * 1.03553031 - 0.8, 7);
    expect(automaticNoseSetback({ ...base, overbendDeg: 60 })).toBeCloseTo(1.6128 * 0.57735027 - 0.8, 7);
  });

  it("stands the nose over the leaf for a mild bend: 45° with r = T = Rn = 1 wants −0.172", () => {
    const mild = { insideRadiusMm: 1, thicknessMm: 1, noseRunMm: 1, overbendDeg: 45, pivot: edge };
    // 2·tan 22.5° − 1 = 2·(√2 − 1) − 1
    expect(automaticNoseSetback(mild)).toBeCloseTo(2 * Math.SQRT2 - 3, 12);
  });

  it("takes off where the apex of a pivot away from the edge stands", () => {
    expect(apexX({ x: 0.3, y: -2 }, Math.PI / 2)).toBeCloseTo(-1.7, 12);
    expect(automaticNoseSetback({ ...base, pivot: { x: 0.3, y: -2 } })).toBeCloseTo(0.8128 + 1.7, 12);
  });

  it("forms the radius it was asked for at every angle, wherever the pivot is", () => {
    const length = fc.double({ min: 0.05, max: 10, noNaN: true });
    const offset = fc.double({ min: -3, max: 3, noNaN: true });
    const anyBend = fc.record({
      insideRadiusMm: length,
      thicknessMm: length,
      noseRunMm: length,
      overbendDeg: fc.double({ min: 1, max: 150, noNaN: true }),
      pivot: fc.record({ x: offset, y: offset }),
    });
    fc.assert(
      fc.property(anyBend, (of) => {
        const noseSetbackMm = automaticNoseSetback(of);
        expect(formedInsideRadius({ ...of, noseSetbackMm })).toBeCloseTo(of.insideRadiusMm, 9);
        expect(-(noseSetbackMm + of.noseRunMm)).toBeCloseTo(clampedTangentX(of), 12);
      }),
      { seed: 23 },
    );
  });
});
