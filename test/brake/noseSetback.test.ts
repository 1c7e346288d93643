/**
 * Nose setback against the shop's rule and the geometry of the apex.
 * Common practice, no source: set the nose back one thickness from the bend line when its radius is the bend's.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { apexX, automaticNoseSetback, formedInsideRadius } from "../../src/brake/noseSetback.ts";

const edge = { x: 0, y: 0 };
const base = { insideRadiusMm: 0.8, thicknessMm: 0.8128, noseRadiusMm: 0.8, overbendDeg: 90, pivot: edge };

describe("automaticNoseSetback", () => {
  it("is one thickness when the nose has the bend's radius, up to 90°", () => {
    expect(automaticNoseSetback(base)).toBeCloseTo(0.8128, 12);
    expect(automaticNoseSetback({ ...base, overbendDeg: 30 })).toBeCloseTo(0.8128, 12);
  });

  it("grows with the overbend past 90°: 92° wants tan 46° = 1.03553031 of r + T", () => {
    expect(automaticNoseSetback({ ...base, overbendDeg: 92 })).toBeCloseTo(1.6128 * 1.03553031 - 0.8, 7);
  });

  it("takes off where the apex of a pivot away from the edge stands", () => {
    expect(apexX({ x: 0.3, y: -2 }, Math.PI / 2)).toBeCloseTo(-1.7, 12);
    expect(automaticNoseSetback({ ...base, pivot: { x: 0.3, y: -2 } })).toBeCloseTo(0.8128 + 1.7, 12);
  });

  it("forms the radius it was asked for, up to 90° with the pivot on the edge", () => {
    const length = fc.double({ min: 0.05, max: 10, noNaN: true });
    fc.assert(
      fc.property(
        length,
        length,
        length,
        fc.double({ min: 1, max: 90, noNaN: true }),
        (r, T, extra, overbendDeg) => {
          const noseRadiusMm = Math.max(0, r - extra);
          const noseSetbackMm = automaticNoseSetback({
            insideRadiusMm: r,
            thicknessMm: T,
            noseRadiusMm,
            overbendDeg,
            pivot: edge,
          });
          expect(formedInsideRadius({ noseSetbackMm, noseRadiusMm, thicknessMm: T })).toBeCloseTo(r, 9);
        },
      ),
      { seed: 23 },
    );
  });
});
