/**
 * Deflections against an independent double integration of M/EI (and V/GA), sections against polygon integration,
 * torsion of a flat against Saint-Venant's series. Statics is worked out anew here, nothing is taken from src but the answers.
 */
import { describe, expect, test } from "vitest";
import {
  plateDeflection,
  plateShear,
  thinnestByStiffness,
} from "../../src/narrowBrake/strength/plateCantilever.ts";
import { type Shape, sectionOf } from "../../src/narrowBrake/strength/section.ts";
import { middleTwist, torsionConstant } from "../../src/narrowBrake/strength/torsion.ts";
import {
  beamDeflection,
  largestMoment,
  type UniformBeam,
} from "../../src/narrowBrake/strength/uniformBeam.ts";

const STEPS = 20_000;

/** Cumulative trapezoids of samples at an even step. */
function integrated(samples: readonly number[], step: number): number[] {
  const sums = [0];
  for (let i = 1; i < samples.length; i++) {
    sums.push(sums[i - 1]! + ((samples[i - 1]! + samples[i]!) / 2) * step);
  }
  return sums;
}

/** Deflection (down positive) along the whole beam, zero at the two supports, from the reactions up. */
function integratedBeam(beam: UniformBeam, ei: number) {
  const { loadNPerMm: w, spanMm, overhangLeftMm: a, overhangRightMm: b } = beam;
  const whole = a + spanMm + b;
  const right = (w * whole * (whole / 2 - a)) / spanMm;
  const left = w * whole - right;
  const step = whole / STEPS;
  const moments = Array.from({ length: STEPS + 1 }, (_, i) => {
    const s = i * step;
    return (-w * s * s) / 2 + left * Math.max(0, s - a) + right * Math.max(0, s - a - spanMm);
  });
  const slopes = integrated(
    moments.map((moment) => -moment / ei),
    step,
  );
  const raw = integrated(slopes, step);
  const at = (s: number) => {
    const i = Math.min(STEPS - 1, Math.floor(s / step));
    return raw[i]! + ((raw[i + 1]! - raw[i]!) * (s - i * step)) / step;
  };
  const tilt = (at(a + spanMm) - at(a)) / spanMm;
  return {
    deflection: (x: number) => at(a + x) - at(a) - tilt * x,
    largestMoment: Math.max(...moments.map(Math.abs)),
  };
}

describe("beamDeflection against double integration of M/EI", () => {
  const beams: readonly UniformBeam[] = [
    { loadNPerMm: 12, spanMm: 350, overhangLeftMm: 0, overhangRightMm: 0 },
    { loadNPerMm: 12, spanMm: 184, overhangLeftMm: 65, overhangRightMm: 65 },
    { loadNPerMm: 5, spanMm: 400, overhangLeftMm: 180, overhangRightMm: 40 },
    { loadNPerMm: 5, spanMm: 400, overhangLeftMm: 0, overhangRightMm: 210 },
    { loadNPerMm: 7, spanMm: 90, overhangLeftMm: 120, overhangRightMm: 10 },
  ];
  test.each(beams)("span $spanMm, overhangs $overhangLeftMm and $overhangRightMm", (beam) => {
    const ei = 2e5 * 9e4;
    const reference = integratedBeam(beam, ei);
    const { spanMm, overhangLeftMm, overhangRightMm } = beam;
    const size = Math.max(
      ...[-overhangLeftMm, spanMm / 2, spanMm + overhangRightMm].map((x) =>
        Math.abs(reference.deflection(x)),
      ),
    );
    for (const share of [0, 0.1, 0.27, 0.5, 0.61, 0.8, 0.93, 1]) {
      const x = -overhangLeftMm + share * (overhangLeftMm + spanMm + overhangRightMm);
      expect(Math.abs(beamDeflection(beam, ei, x) - reference.deflection(x))).toBeLessThan(2e-6 * size);
    }
    // The samples miss the peaks at the supports by up to a step.
    expect(Math.abs(largestMoment(beam) / reference.largestMoment - 1)).toBeLessThan(2e-4);
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

interface Loop {
  readonly points: readonly (readonly [number, number])[];
  readonly sign: 1 | -1;
}

/** Area, centroid and central second moments of closed loops by Green's theorem, in coordinates far from the centroid. */
function polygonProperties(loops: readonly Loop[]) {
  let [area, sx, sy, ixx, iyy] = [0, 0, 0, 0, 0];
  for (const { points, sign } of loops) {
    points.forEach(([x0, y0], i) => {
      const [x1, y1] = points[(i + 1) % points.length]!;
      const cross = (x0 * y1 - x1 * y0) * sign;
      area += cross / 2;
      sx += (cross * (x0 + x1)) / 6;
      sy += (cross * (y0 + y1)) / 6;
      ixx += (cross * (y0 * y0 + y0 * y1 + y1 * y1)) / 12;
      iyy += (cross * (x0 * x0 + x0 * x1 + x1 * x1)) / 12;
    });
  }
  const [cx, cy] = [sx / area, sy / area];
  return { area, cx, cy, ix: ixx - area * cy * cy, iy: iyy - area * cx * cx };
}

const rectangle = (x: number, y: number, w: number, h: number, sign: 1 | -1 = 1): Loop => ({
  points: [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ],
  sign,
});

const circle = (r: number, at: number, sign: 1 | -1 = 1): Loop => ({
  points: Array.from({ length: 20_000 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 20_000;
    return [at + r * Math.cos(angle), at + r * Math.sin(angle)] as const;
  }),
  sign,
});

describe("sectionOf against polygon integration", () => {
  const cases: readonly (readonly [Shape, readonly Loop[]])[] = [
    [{ kind: "flat", widthMm: 40, heightMm: 12 }, [rectangle(0, 0, 40, 12)]],
    [
      { kind: "angle", widthMm: 60, heightMm: 40, thicknessMm: 6 },
      [
        {
          points: [
            [0, 0],
            [60, 0],
            [60, 6],
            [6, 6],
            [6, 40],
            [0, 40],
          ],
          sign: 1,
        },
      ],
    ],
    [
      { kind: "tube", widthMm: 80, heightMm: 50, wallMm: 4 },
      [rectangle(0, 0, 80, 50), rectangle(4, 4, 72, 42, -1)],
    ],
    [
      { kind: "channel", widthMm: 100, heightMm: 45, webMm: 5, flangeMm: 8 },
      [
        {
          points: [
            [0, 0],
            [100, 0],
            [100, 45],
            [92, 45],
            [92, 5],
            [8, 5],
            [8, 45],
            [0, 45],
          ],
          sign: 1,
        },
      ],
    ],
    [{ kind: "round", diameterMm: 20 }, [circle(10, 10)]],
    [{ kind: "roundTube", diameterMm: 48, wallMm: 4 }, [circle(24, 24), circle(20, 24, -1)]],
  ];
  test.each(cases)("$kind", (shape, loops) => {
    const s = sectionOf(shape);
    const reference = polygonProperties(loops);
    expect(s.areaMm2 / reference.area).toBeCloseTo(1, 6);
    expect(s.centroidXMm).toBeCloseTo(reference.cx, 6);
    expect(s.centroidYMm).toBeCloseTo(reference.cy, 6);
    expect(s.secondMomentXMm4 / reference.ix).toBeCloseTo(1, 6);
    expect(s.secondMomentYMm4 / reference.iy).toBeCloseTo(1, 6);
    const ys = loops.flatMap(({ points }) => points.map(([, y]) => Math.abs(y - reference.cy)));
    const xs = loops.flatMap(({ points }) => points.map(([x]) => Math.abs(x - reference.cx)));
    expect((s.modulusXMm3 * Math.max(...ys)) / reference.ix).toBeCloseTo(1, 6);
    expect((s.modulusYMm3 * Math.max(...xs)) / reference.iy).toBeCloseTo(1, 6);
  });

  test("a wall that leaves no room is refused", () => {
    expect(() => sectionOf({ kind: "tube", widthMm: 10, heightMm: 10, wallMm: 5 })).toThrow(RangeError);
    expect(() => sectionOf({ kind: "roundTube", diameterMm: 10, wallMm: 6 })).toThrow(RangeError);
    expect(() => sectionOf({ kind: "flat", widthMm: 0, heightMm: 10 })).toThrow(RangeError);
  });
});

describe("torsion", () => {
  test.each([
    [8, 8],
    [20, 10],
    [50, 6],
    [76.2, 7.9375],
  ])("torsionConstant of a flat %s × %s against Saint-Venant's series (Timoshenko & Goodier)", (b, t) => {
    let series = 0;
    for (let n = 1; n < 200; n += 2) series += Math.tanh((n * Math.PI * b) / (2 * t)) / n ** 5;
    const exact = ((b * t ** 3) / 3) * (1 - ((192 * t) / (Math.PI ** 5 * b)) * series);
    expect(Math.abs(torsionConstant({ kind: "flat", widthMm: b, heightMm: t }) / exact - 1)).toBeLessThan(
      0.005,
    );
  });

  test("torsionConstant of square tube is Bredt's t·a³ for side a of the mid-line", () => {
    expect(torsionConstant({ kind: "tube", widthMm: 40, heightMm: 40, wallMm: 3 })).toBeCloseTo(
      3 * 37 ** 3,
      6,
    );
  });

  test("middleTwist against integration of the torque", () => {
    const [moment, length, g, j] = [67, 305, 77_500, 1084];
    const step = length / 2 / STEPS;
    const rate = Array.from({ length: STEPS + 1 }, (_, i) => (moment * (length / 2 - i * step)) / (g * j));
    expect(middleTwist(moment, length, g, j)).toBeCloseTo(integrated(rate, step).at(-1)!, 9);
  });
});
