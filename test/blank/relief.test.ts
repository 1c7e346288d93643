/**
 * Relief holes: FAA-H-8083-31, chapter 4, folding a box: at the crossing of the inside bend tangent lines, about twice
 * the bend radius wide, no less than 1/8 in for sheet up to 0.064 in and 3/16 in from 0.072 to 0.128 in.
 */
import { describe, expect, test } from "vitest";
import { reliefDiameterMm, reliefHoles } from "../../src/blank/relief.ts";

const INCH = 25.4;

describe("reliefDiameterMm", () => {
  test.each([
    [0.02, 1 / 8],
    [0.04, 1 / 8],
    [0.064, 1 / 8],
    [0.072, 3 / 16],
    [0.1, 3 / 16],
    [0.128, 3 / 16],
  ])(
    "sheet of %f in with a small radius: at least %f in, as the handbook says",
    (thicknessIn, diameterIn) => {
      expect(reliefDiameterMm(thicknessIn * INCH, [0.5])).toBeCloseTo(diameterIn * INCH, 9);
    },
  );

  test("a large radius asks for a hole of twice the radius, as the handbook says", () => {
    expect(reliefDiameterMm(0.04 * INCH, [(3 / 32) * INCH, (1 / 8) * INCH])).toBeCloseTo(0.25 * INCH, 9);
  });

  test("never gets smaller as the sheet gets thicker or the radius larger", () => {
    let before = 0;
    for (let thousandths = 10; thousandths <= 250; thousandths += 1) {
      const diameter = reliefDiameterMm((thousandths / 1000) * INCH, [1]);
      expect(diameter).toBeGreaterThanOrEqual(before);
      before = diameter;
    }
    expect(reliefDiameterMm(1, [3])).toBeGreaterThan(reliefDiameterMm(1, [2]));
  });

  test.each([
    [0, [1]],
    [Number.NaN, [1]],
    [1, [-1]],
  ])("refuses a thickness of %d with radii %j", (thickness, radii) => {
    expect(() => reliefDiameterMm(thickness, radii)).toThrow(RangeError);
  });
});

describe("reliefHoles", () => {
  // A pan: bottom between 20 and 120 by 20 and 80, walls of 18 and bends 2 wide outside of it.
  const bends = (bottomTo: number) =>
    [
      { tangentsMm: [18, 20], inside: "far", insideRadiusMm: 1 },
      { tangentsMm: [bottomTo, bottomTo + 2], inside: "near", insideRadiusMm: 1 },
    ] as const;

  test("a pan gets four, on the corners of its bottom", () => {
    const holes = reliefHoles(bends(120), bends(80), 0.8);
    expect(holes.map(({ center }) => [center.x, center.y])).toEqual([
      [20, 20],
      [20, 80],
      [120, 20],
      [120, 80],
    ]);
    expect(holes.every((hole) => hole.diameterMm === INCH / 8)).toBe(true);
  });

  test("a bend that runs into a cut-out gets one on the cut-out's edge", () => {
    const [bend] = bends(120);
    expect(reliefHoles([bend], [{ edgeMm: 37.5 }], 2)).toEqual([
      { center: { x: 20, y: 37.5 }, diameterMm: (3 / 16) * INCH },
    ]);
  });

  test("nothing crosses: no hole", () => {
    expect(reliefHoles(bends(120), [], 0.8)).toEqual([]);
  });
});
