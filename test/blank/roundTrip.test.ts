/**
 * Blank round trip: outside (inside) dimensions to flats by the bend bendSetbacks, laid out, folded back by plain geometry
 * (foldBack.ts), measured between mold lines. 1,000 random parts, 1e-6 mm. And section 5's slide: d(0) = BA − SB.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOut, sightLineOf } from "../../src/blank/blank.ts";
import { bendAllowance, bendDeduction } from "../../src/part/allowance.ts";
import { insideBendSetback, outsideBendSetback } from "../../src/part/bendSetback.ts";
import type { Bend, Part } from "../../src/part/part.ts";
import { foldBack, moldLineDimensions } from "./foldBack.ts";

const metal = { name: "own", yieldMpa: 240, modulusMpa: 200_000 };

const randomPart = fc
  .record({
    thicknessMm: fc.double({ min: 0.3, max: 3, noNaN: true }),
    kFactor: fc.double({ min: 0.2, max: 0.5, noNaN: true }),
    bends: fc.array(
      fc.record({
        angleDeg: fc.double({ min: 5, max: 160, noNaN: true }),
        turn: fc.constantFrom("up" as const, "down" as const),
        insideRadiusMm: fc.double({ min: 0, max: 8, noNaN: true }),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    spareMm: fc.array(fc.double({ min: 0.5, max: 80, noNaN: true }), { minLength: 9, maxLength: 9 }),
    where: fc.constantFrom("outside" as const, "inside" as const),
  })
  .map(({ thicknessMm, kFactor, bends, spareMm, where }) => {
    const shapes = bends.map((bend) => ({ ...bend, thicknessMm }));
    const bendSetbacks = shapes.map(where === "outside" ? outsideBendSetback : insideBendSetback);
    const beside = (i: number): number => (bendSetbacks[i - 1] ?? 0) + (bendSetbacks[i] ?? 0);
    const dimensionsMm = Array.from({ length: bends.length + 1 }, (_, i) => (spareMm[i] ?? 1) + beside(i));
    const part: Part = {
      name: "random",
      metal,
      thicknessMm,
      kFactor,
      flatsMm: dimensionsMm.map((dimension, i) => dimension - beside(i)),
      bends: shapes.map((shape): Bend => {
        const allowanceMm = bendAllowance(shape, kFactor);
        return {
          angleDeg: shape.angleDeg,
          turn: shape.turn,
          insideRadiusMm: shape.insideRadiusMm,
          overbendDeg: shape.angleDeg,
          allowanceMm,
          bendSetbackMm: outsideBendSetback(shape),
          deductionMm: bendDeduction(shape, allowanceMm),
          noseSetbackMm: thicknessMm,
          pinched: false,
        };
      }),
    };
    return { part, dimensionsMm, where };
  });

describe("blank round trip", () => {
  it("folds back to the dimensions it was laid out for, within 1e-6 mm, on 1,000 random parts", () => {
    let worst = 0;
    fc.assert(
      fc.property(randomPart, ({ part, dimensionsMm, where }) => {
        const measured = moldLineDimensions(foldBack(layOut(part), part), part, where);
        expect(measured.length).toBe(dimensionsMm.length);
        measured.forEach((dimension, i) => {
          worst = Math.max(worst, Math.abs(dimension - (dimensionsMm[i] ?? Number.NaN)));
        });
        expect(worst).toBeLessThanOrEqual(1e-6);
      }),
      { seed: 47, numRuns: 1000 },
    );
    expect(worst).toBeLessThan(1e-6);
  });

  it("is the sum of outside dimensions less one bend deduction a bend", () => {
    fc.assert(
      fc.property(randomPart, ({ part, dimensionsMm, where }) => {
        fc.pre(where === "outside");
        const { developedWidthMm, bends } = layOut(part);
        const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
        const byDeduction = sum(dimensionsMm) - sum(bends.map(({ deductionMm }) => deductionMm));
        expect(developedWidthMm).toBeCloseTo(byDeduction, 8);
      }),
      { seed: 48, numRuns: 500 },
    );
  });

  it("puts each tangent pair one allowance apart, and the slide of section 5 at one deduction", () => {
    fc.assert(
      fc.property(randomPart, ({ part }) => {
        layOut(part).bends.forEach(({ tangentsMm, deductionMm }, i) => {
          const bend = part.bends[i];
          if (bend === undefined) throw new Error("a bend too many");
          const arc =
            (bend.angleDeg * Math.PI * (bend.insideRadiusMm + part.kFactor * part.thicknessMm)) / 180;
          expect(tangentsMm[1] - tangentsMm[0]).toBeCloseTo(arc, 9);
          // flat, the final tangent point stands BA − SB from the apex; folded, SB: the flange slides out by BD
          const slide = bend.bendSetbackMm - (tangentsMm[1] - tangentsMm[0] - bend.bendSetbackMm);
          expect(slide).toBeCloseTo(deductionMm, 9);
        });
      }),
      { seed: 49, numRuns: 300 },
    );
  });

  it("turned end for end is the mirrored blank, sight lines of start and end swapped", () => {
    fc.assert(
      fc.property(randomPart, ({ part }) => {
        const straight = layOut(part);
        const turned = layOut({
          ...part,
          flatsMm: part.flatsMm.toReversed(),
          bends: part.bends.toReversed(),
        });
        const width = straight.developedWidthMm;
        expect(turned.developedWidthMm).toBeCloseTo(width, 9);
        turned.bends.toReversed().forEach((bend, i) => {
          const twin = straight.bends[i];
          if (twin === undefined) throw new Error("a bend too many");
          expect(width - bend.tangentsMm[0]).toBeCloseTo(twin.tangentsMm[1], 9);
          expect(width - sightLineOf(bend, "start", 1)).toBeCloseTo(sightLineOf(twin, "end", 1), 9);
          expect(width - sightLineOf(bend, "end", 1)).toBeCloseTo(sightLineOf(twin, "start", 1), 9);
        });
      }),
      { seed: 50, numRuns: 300 },
    );
  });
});

describe("layOut", () => {
  it("worked by hand: one bend of BA 2 between flats of 10 and 20, nose radius 1.5", () => {
    const blank = layOut({ flatsMm: [10, 20], bends: [{ allowanceMm: 2, deductionMm: 3 }] });
    expect(blank).toEqual({
      developedWidthMm: 32,
      bends: [{ tangentsMm: [10, 12], allowanceMm: 2, deductionMm: 3 }],
    });
    expect([sightLineOf(blank.bends[0]!, "start", 1.5), sightLineOf(blank.bends[0]!, "end", 1.5)]).toEqual([
      11.5, 10.5,
    ]);
  });

  it("of a part without bends is its one flat", () => {
    expect(layOut({ flatsMm: [12.5], bends: [] })).toEqual({ developedWidthMm: 12.5, bends: [] });
  });
});
