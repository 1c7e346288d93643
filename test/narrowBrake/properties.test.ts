/**
 * What must hold for any figures: thicker is never weaker, longer never lighter loaded, crown cancels bow, moments balance.
 * Seeded by fast-check's own printed seed; bounds from the physics, no source needed.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { holdDownTension, stressArea, tighteningTorque } from "../../src/narrowBrake/strength/bolt.ts";
import { angleLost, crownOf } from "../../src/narrowBrake/strength/crown.ts";
import { foldingForces } from "../../src/narrowBrake/strength/foldingForces.ts";
import { handleLength, handleStress, leafMoment } from "../../src/narrowBrake/strength/handle.ts";
import { pinBearing, pinShear, thinnestPin } from "../../src/narrowBrake/strength/pin.ts";
import {
  plateDeflection,
  plateStress,
  thinnestByStiffness,
  thinnestByStrength,
} from "../../src/narrowBrake/strength/plateCantilever.ts";
import { sectionOf } from "../../src/narrowBrake/strength/section.ts";
import {
  screwCount,
  screwStress,
  setbackTravel,
  turnsFor,
} from "../../src/narrowBrake/strength/setbackScrew.ts";
import { foldingMoment } from "../../src/narrowBrake/strength/sheetMoment.ts";
import { torsionConstant, torsionStress } from "../../src/narrowBrake/strength/torsion.ts";
import {
  beamDeflection,
  beamMoment,
  largestMoment,
  midDeflection,
} from "../../src/narrowBrake/strength/uniformBeam.ts";
import { gripForce, jawMoment, tongueStress } from "../../src/narrowBrake/strength/viseTongue.ts";

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const runs = { numRuns: 300, seed: 20_461 };

describe("plate in front of the holder", () => {
  const plate = fc.record({ loadNPerMm: size(0.5, 200), overhangMm: size(3, 80) });

  test("thicker is never weaker and never softer", () => {
    fc.assert(
      fc.property(plate, size(1, 20), size(1.001, 3), (p, t, more) => {
        expect(plateStress(p, t * more)).toBeLessThan(plateStress(p, t));
        expect(plateDeflection(p, t * more, 2e5)).toBeLessThan(plateDeflection(p, t, 2e5));
      }),
      runs,
    );
  });

  test("the thinnest plate just meets its limit, a hair less does not", () => {
    fc.assert(
      fc.property(plate, size(20, 400), size(0.005, 0.5), (p, mpa, mm) => {
        const strong = thinnestByStrength(p, mpa);
        expect(plateStress(p, strong)).toBeCloseTo(mpa, 6);
        const stiff = thinnestByStiffness(p, mm, 2e5);
        expect(plateDeflection(p, stiff, 2e5) / mm).toBeCloseTo(1, 9);
        expect(plateDeflection(p, stiff * 0.999, 2e5)).toBeGreaterThan(mm);
      }),
      runs,
    );
  });
});

describe("folding", () => {
  const metal = fc.record({
    name: fc.constant("sheet"),
    yieldMpa: size(40, 900),
    modulusMpa: size(6e4, 2.1e5),
  });

  test("the sheet is in balance on leaf, bed and nose", () => {
    fc.assert(
      fc.property(size(5, 500), size(1, 40), size(1, 40), size(1, 135), (moment, a, b, overbend) => {
        const f = foldingForces(moment, a, b, overbend);
        expect(f.clampNPerMm).toBeCloseTo(f.leafNPerMm + f.bedNPerMm, 9);
        expect(f.leafNPerMm * a - f.bedNPerMm * b).toBeCloseTo(0, 9);
        expect(f.pushNPerMm).toBeLessThanOrEqual(f.leafNPerMm);
      }),
      runs,
    );
  });

  test("twice the thickness asks four times the moment; more ultimate asks more", () => {
    fc.assert(
      fc.property(metal, size(0.3, 4), size(1.05, 3), (m, t, ratio) => {
        expect(foldingMoment(m, 2 * t) / foldingMoment(m, t)).toBeCloseTo(4, 9);
        const strong = foldingMoment({ ...m, ultimateMpa: m.yieldMpa * (ratio + 0.1) }, t);
        expect(strong).toBeGreaterThan(foldingMoment({ ...m, ultimateMpa: m.yieldMpa * ratio }, t));
      }),
      runs,
    );
  });

  test("push levels off at 90°, and no lever is refused", () => {
    expect(foldingForces(60, 6, 10, 30).pushNPerMm).toBeCloseTo(5, 12);
    expect(foldingForces(60, 6, 10, 120).pushNPerMm).toBeCloseTo(10, 12);
    expect(() => foldingForces(60, 0, 10, 90)).toThrow(RangeError);
    expect(() => foldingForces(60, 6, Number.NaN, 90)).toThrow(RangeError);
  });
});

describe("beams and crown", () => {
  const beam = fc.record({
    loadNPerMm: size(0.5, 60),
    spanMm: size(80, 1500),
    overhangLeftMm: size(0, 200),
    overhangRightMm: size(0, 200),
  });

  test("mirrored beams bow alike, and twice the stiffness bows half", () => {
    fc.assert(
      fc.property(beam, size(1e9, 1e12), size(0, 1), (b, ei, share) => {
        const mirrored = { ...b, overhangLeftMm: b.overhangRightMm, overhangRightMm: b.overhangLeftMm };
        const x = share * b.spanMm;
        const own = beamDeflection(b, ei, x);
        expect(beamDeflection(mirrored, ei, b.spanMm - x)).toBeCloseTo(own, 9);
        expect(2 * beamDeflection(b, 2 * ei, x)).toBeCloseTo(own, 9);
        expect(largestMoment(b)).toBeGreaterThanOrEqual(Math.abs(beamMoment(b, x)) - 1e-9);
      }),
      runs,
    );
  });

  test("bow plus crown is a straight line's height: the same sum at every station", () => {
    fc.assert(
      fc.property(beam, size(1e9, 1e12), (b, ei) => {
        const crown = crownOf(b, ei, 9);
        expect(Math.min(...crown.map(({ packingMm }) => packingMm))).toBe(0);
        const left = crown.map(
          ({ fromEndMm, packingMm }) => packingMm - beamDeflection(b, ei, fromEndMm - b.overhangLeftMm),
        );
        for (const height of left) expect(height).toBeCloseTo(left[0]!, 9);
      }),
      runs,
    );
  });

  test("crown of a plain beam is thickest in the middle and nothing at the ends", () => {
    const b = { loadNPerMm: 5, spanMm: 400, overhangLeftMm: 0, overhangRightMm: 0 };
    const crown = crownOf(b, 1e10, 5).map(({ packingMm }) => packingMm);
    expect(crown[0]).toBe(0);
    expect(crown[4]).toBeCloseTo(0, 12);
    expect(crown[2]).toBeCloseTo(midDeflection(b, 1e10), 12);
    expect(crown[1]).toBeCloseTo(crown[3]!, 12);
  });

  test("angleLost is the slope of the gap over the lever", () => {
    expect(angleLost(0, 6)).toBe(0);
    expect(Math.tan((angleLost(0.1, 6) * Math.PI) / 180)).toBeCloseTo(0.1 / 6, 12);
    expect(angleLost(0.1, 3)).toBeGreaterThan(angleLost(0.1, 6));
  });
});

describe("fittings", () => {
  test("hold-down bolts balance nose and heel", () => {
    fc.assert(
      fc.property(size(100, 5e4), size(5, 80), size(5, 80), (load, front, back) => {
        const bolts = 2 * holdDownTension(load, front, back, 2);
        const heel = bolts - load;
        // Moments about the bolts.
        expect(load * front).toBeCloseTo(heel * back, 4);
      }),
      runs,
    );
  });

  test("a pin of the thinnest size carries its force, torque grows with the bolt", () => {
    fc.assert(
      fc.property(size(100, 5e4), size(20, 300), fc.constantFrom<1 | 2>(1, 2), (force, mpa, planes) => {
        expect(pinShear(force, thinnestPin(force, mpa, planes), planes)).toBeCloseTo(mpa, 6);
      }),
      runs,
    );
    const m8 = { name: "M8", diameterMm: 8, pitchMm: 1.25, series: "metric" } as const;
    expect(tighteningTorque(m8, 2000)).toBeCloseTo(3.2, 12);
    expect(pinBearing(1800, 6, 5)).toBe(60);
    expect(screwStress(stressArea(m8) * 100, m8)).toBeCloseTo(100, 12);
  });

  test("handle, tongue, vise and screws by hand", () => {
    expect(handleLength(leafMoment(60, 300), 100)).toBe(180);
    // 200 N at 150 mm on a 16 mm round: Z = π·16³/32 = 402.12 mm³.
    expect(handleStress(200, 150, sectionOf({ kind: "round", diameterMm: 16 }))).toBeCloseTo(74.6, 1);
    expect(jawMoment(200, 400, 100)).toBe(100_000);
    expect(tongueStress(100_000, 60, 10)).toBe(100);
    expect(gripForce(100_000, 50)).toBe(12_000);
    expect(setbackTravel([0.4, 1.9, 0.8])).toBeCloseTo(1.5, 12);
    expect(turnsFor(1.5, { name: "M6", diameterMm: 6, pitchMm: 1, series: "metric" })).toBe(1.5);
    expect([screwCount(60), screwCount(200), screwCount(201), screwCount(500)]).toEqual([2, 2, 3, 4]);
  });

  test("torsion stress: closed tube far under an open leg of the same weight", () => {
    const tube = { kind: "tube", widthMm: 40, heightMm: 40, wallMm: 3 } as const;
    const angle = { kind: "angle", widthMm: 75.5, heightMm: 75.5, thicknessMm: 3 } as const;
    expect(sectionOf(tube).areaMm2).toBeCloseTo(sectionOf(angle).areaMm2, 6);
    expect(torsionConstant(tube) / torsionConstant(angle)).toBeGreaterThan(100);
    expect(torsionStress(tube, 1e4)).toBeLessThan(torsionStress(angle, 1e4) / 10);
    // Round: 16·T/(π·d³); flat and channel: T·t/J.
    expect(torsionStress({ kind: "round", diameterMm: 10 }, 1e4)).toBeCloseTo(
      (16 * 1e4) / (Math.PI * 1000),
      9,
    );
    const channel = { kind: "channel", widthMm: 80, heightMm: 40, webMm: 4, flangeMm: 6 } as const;
    expect(torsionConstant(channel)).toBeCloseTo((68 * 64 + 80 * 216) / 3, 9);
    expect(torsionStress(channel, 1e4)).toBeCloseTo((1e4 * 6) / torsionConstant(channel), 9);
  });
});
