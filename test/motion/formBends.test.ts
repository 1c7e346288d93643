/**
 * What the nose makes of the bends asked for: radius, leaf angle and setback together, for each way to set the nose.
 * Source: the geometry of the section worked by hand; springback held against its own formula (metal/springback).
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { springbackRatio } from "../../src/metal/springback.ts";
import { type BendAsked, type Forming, formBends } from "../../src/motion/formBends.ts";
import type { Bend } from "../../src/part/part.ts";

const T = 1;
const NOSE = 0.8;

function forming(noseSetback: Forming["brake"]["noseSetback"], more: Partial<Forming> = {}): Forming {
  const outline = { edges: [] };
  return {
    thicknessMm: T,
    kFactor: 0.44,
    brake: {
      noseSetback,
      clamp: { kind: "bar", noseRadiusMm: NOSE, noseRunMm: NOSE, outlines: [] },
      leaf: { outline, swingDeg: 135, pivot: { x: 0, y: 0 } },
    },
    keptAt: () => 1,
    ...more,
  };
}

const up = (angleDeg: number, insideRadiusMm: number, overbendDeg?: number): BendAsked => {
  return { angleDeg, turn: "up", insideRadiusMm, ...(overbendDeg !== undefined && { overbendDeg }) };
};

function formed(asked: readonly BendAsked[], by: Forming): Bend[] {
  return formBends(asked, by).map((one) => {
    if (!one.ok) throw new Error(one.fault.kind);
    return one.bend;
  });
}

const SQRT3 = Math.sqrt(3);

describe("formBends with the nose set for each bend", () => {
  it("forms the radius asked for, by the setback that does", () => {
    const [square, mild] = formed([up(90, 1.2), up(60, 1.2)], forming("auto"));
    // tan 45° = 1, tan 30° = 1/√3, of r + T = 2.2; less the nose radius.
    expect(square?.noseSetbackMm).toBeCloseTo(2.2 - NOSE, 12);
    expect(mild?.noseSetbackMm).toBeCloseTo(2.2 / SQRT3 - NOSE, 12);
    expect([square?.insideRadiusMm, mild?.insideRadiusMm]).toEqual([1.2, 1.2]);
  });

  it("tells a nose that is rounder than the bend, and sheet that only flexes", () => {
    expect(formBends([up(90, 0.7)], forming("auto"))[0]).toEqual({
      ok: false,
      fault: { kind: "noseTooRound", leastMm: NOSE },
    });
    const springy = forming("auto", { keptAt: () => 0.4 });
    expect(formBends([up(90, 1)], springy)[0]).toEqual({
      ok: false,
      fault: { kind: "springsBack", kept: 0.4 },
    });
  });
});

describe("formBends with a given setback", () => {
  it("forms the radius that the setback leaves room for: larger in a milder bend", () => {
    const [square, mild] = formed([up(90, 1), up(60, 1)], forming(1.5));
    // r = (s + Rn)/tan(θo/2) − T
    expect(square?.insideRadiusMm).toBeCloseTo(2.3 - T, 12);
    expect(mild?.insideRadiusMm).toBeCloseTo(2.3 * SQRT3 - T, 12);
    expect([square?.noseSetbackMm, mild?.noseSetbackMm]).toEqual([1.5, 1.5]);
  });

  it("takes one that falls short by up to a tenth of the thickness as the least, and refuses a shorter one", () => {
    // Least at 90°: (Rn + T) − Rn = T.
    const [sprung] = formed([up(90, 1)], forming(0.91));
    expect([sprung?.noseSetbackMm, sprung?.insideRadiusMm, sprung?.pinched]).toEqual([1, NOSE, false]);
    const [pinched] = formed([up(90, 1)], forming(0.89));
    expect([pinched?.noseSetbackMm, pinched?.insideRadiusMm, pinched?.pinched]).toEqual([0.89, NOSE, true]);
  });

  it("may stand over the leaf for a mild bend", () => {
    // Least at 45°: 1.8·tan 22.5° − 0.8 = 1.8·(√2 − 1) − 0.8 = −0.0544.
    const [mild] = formed([up(45, 1)], forming(-0.05));
    expect(mild?.pinched).toBe(false);
    expect(mild?.insideRadiusMm).toBeCloseTo(0.75 * (Math.SQRT2 + 1) - T, 12);
  });

  it("solves radius and springback together", () => {
    const metal = fc.record({
      yieldMpa: fc.double({ min: 50, max: 900, noNaN: true }),
      modulusMpa: fc.double({ min: 60_000, max: 210_000, noNaN: true }),
      angleDeg: fc.double({ min: 20, max: 120, noNaN: true }),
      backMm: fc.double({ min: 0, max: 6, noNaN: true }),
      pivot: fc.record({
        x: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        y: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      }),
    });
    let sprung = 0;
    fc.assert(
      fc.property(metal, ({ yieldMpa, modulusMpa, angleDeg, backMm, pivot }) => {
        const keptAt = (insideRadiusMm: number) =>
          springbackRatio({ insideRadiusMm, thicknessMm: T, yieldMpa, modulusMpa });
        const plain = forming(4 + backMm, { keptAt });
        const brake = { ...plain.brake, leaf: { ...plain.brake.leaf, pivot } };
        const [bend] = formed([up(angleDeg, 1)], { ...plain, brake });
        if (bend === undefined) throw new Error("no bend");
        const half = Math.tan((bend.overbendDeg * Math.PI) / 360);
        const apex = pivot.x + pivot.y * half;
        expect(bend.overbendDeg * keptAt(bend.insideRadiusMm)).toBeCloseTo(angleDeg, 7);
        expect((bend.insideRadiusMm + T) * half).toBeCloseTo(bend.noseSetbackMm + NOSE + apex, 7);
        sprung += Number(bend.overbendDeg > angleDeg + 2);
      }),
      { seed: 31, numRuns: 300 },
    );
    expect(sprung).toBeGreaterThan(50);
  });
});

describe("formBends with one setback for all", () => {
  it("keeps the largest, and gives the milder bends the radius that it forms", () => {
    const asked = [up(45, 1), up(90, 1, 92), up(90, 1)];
    const own = formed(asked, forming("auto")).map((bend) => bend.noseSetbackMm);
    const bends = formed(asked, forming("one"));
    expect(new Set(bends.map((bend) => bend.noseSetbackMm))).toEqual(new Set([Math.max(...own)]));
    expect(bends[1]?.insideRadiusMm).toBeCloseTo(1, 12);
    // 45°: r + T = 2·tan 46°/tan 22.5°
    const half = Math.tan((46 * Math.PI) / 180);
    expect(bends[0]?.insideRadiusMm).toBeCloseTo(2 * half * (Math.SQRT2 + 1) - T, 12);
    expect(bends[2]?.insideRadiusMm).toBeCloseTo(2 * half - T, 12);
  });
});
