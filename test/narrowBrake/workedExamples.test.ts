/**
 * Strength formulas against worked examples of textbooks and handbooks, each named.
 * Inch examples are changed over and back, so that a slip in units shows.
 */
import { describe, expect, test } from "vitest";
import { stressArea, tighteningTorque } from "../../src/narrowBrake/strength/bolt.ts";
import { allowedShear, pinShear, thinnestPin } from "../../src/narrowBrake/strength/pin.ts";
import { sectionOf } from "../../src/narrowBrake/strength/section.ts";
import {
  flowStress,
  foldingMoment,
  PLANE_STRAIN_FACTOR,
  plasticMoment,
} from "../../src/narrowBrake/strength/sheetMoment.ts";
import { torsionConstant } from "../../src/narrowBrake/strength/torsion.ts";
import {
  beamDeflection,
  beamMoment,
  evenOverhang,
  largestMoment,
  midDeflection,
  slopeAt,
  type UniformBeam,
} from "../../src/narrowBrake/strength/uniformBeam.ts";

const IN = 25.4;
const N_PER_LBF = 4.4482216;

describe("sections", () => {
  test("box beam of Gere, Mechanics of Materials 7th ed., problem 6.10-13: I 183.10 in⁴, S 38.55 in³", () => {
    const b = 5.25 * IN;
    const h = 9.5 * IN;
    // Flanges 0.75 in, webs 0.375 in: outside less inside as two flats of the same centroid.
    const outside = sectionOf({ kind: "flat", widthMm: b, heightMm: h }).secondMomentXMm4;
    const inside = sectionOf({ kind: "flat", widthMm: 4.5 * IN, heightMm: 8 * IN }).secondMomentXMm4;
    expect((outside - inside) / IN ** 4).toBeCloseTo(183.1, 1);
    expect((outside - inside) / (h / 2) / IN ** 3).toBeCloseTo(38.55, 2);
  });

  test("box beam of Gere 7th ed., problem 6.10-14: I 55.63·10⁶ mm⁴, S 556.3·10³ mm³, yield moment 122 kN·m at 220 MPa", () => {
    const outside = sectionOf({ kind: "flat", widthMm: 150, heightMm: 200 }).secondMomentXMm4;
    const inside = sectionOf({ kind: "flat", widthMm: 130, heightMm: 160 }).secondMomentXMm4;
    expect((outside - inside) / 1e6).toBeCloseTo(55.63, 2);
    expect((outside - inside) / 100 / 1e3).toBeCloseTo(556.3, 1);
    expect((220 * (outside - inside)) / 100 / 1e6).toBeCloseTo(122, 0);
  });

  test("hollow shaft of Philpot's Mechanics of Materials (MecMovies 6.4), 40 mm by 5 mm wall: J 171 805.85 mm⁴", () => {
    const tube = { kind: "roundTube", diameterMm: 40, wallMm: 5 } as const;
    expect(torsionConstant(tube)).toBeCloseTo(171_805.85, 1);
    expect(sectionOf(tube).secondMomentXMm4).toBeCloseTo(171_805.85 / 2, 1);
    expect(sectionOf(tube).secondMomentYMm4).toBeCloseTo(171_805.85 / 2, 1);
  });

  test("channel of Gere, example 5-4 (from memory): 300 × 80 mm, 12 mm thick, c 18.48 mm, I 2.469·10⁶ mm⁴", () => {
    const s = sectionOf({ kind: "channel", widthMm: 300, heightMm: 80, webMm: 12, flangeMm: 12 });
    expect(s.centroidYMm).toBeCloseTo(18.48, 2);
    expect(s.secondMomentXMm4 / 1e6).toBeCloseTo(2.469, 3);
  });
});

describe("fully plastic bending", () => {
  test("plasticMoment of a box, Gere 7th ed. problem 6.10-13: Mp 1951 k·in at 42 ksi", () => {
    const ksi = 6.894757;
    const moment = plasticMoment(42 * ksi, 9.5 * IN) * 5.25 * IN - plasticMoment(42 * ksi, 8 * IN) * 4.5 * IN;
    expect(moment / (1000 * N_PER_LBF * IN)).toBeCloseTo(1951, -1);
    expect(Math.abs(moment / (1000 * N_PER_LBF * IN) / 1951 - 1)).toBeLessThan(0.001);
  });

  test("plasticMoment is 1.5 times the yield moment of a rectangle: Craig, Mechanics of Materials, example 6.11", () => {
    const modulus = sectionOf({ kind: "flat", widthMm: 1, heightMm: 7 }).modulusXMm3;
    expect(plasticMoment(250, 7) / (250 * modulus)).toBeCloseTo(1.5, 12);
  });

  test("foldingMoment is S·t²/4 with S = (2/√3)·σf: Marciniak, Duncan & Hu, eq. 6.21", () => {
    const metal = { name: "sheet", yieldMpa: 240, modulusMpa: 200_000, ultimateMpa: 340 };
    expect(flowStress(metal)).toBe(290);
    // S = 334.86 MPa; 334.86 · 0.8² / 4 by hand.
    expect(foldingMoment(metal, 0.8)).toBeCloseTo(53.578, 3);
    expect(PLANE_STRAIN_FACTOR).toBeCloseTo(1.1547, 4);
  });

  test("foldingMoment guesses the ultimate where it is not given", () => {
    expect(flowStress({ name: "sheet", yieldMpa: 200, modulusMpa: 200_000 })).toBe(250);
  });
});

describe("pins", () => {
  test("pinShear: Hibbeler, Mechanics of Materials 8th ed., problem 1-47: 135.61 kN, 25 mm, double shear, 138 MPa", () => {
    expect(pinShear(135_610, 25, 2)).toBeCloseTo(138, 0);
  });

  test("thinnestPin: Hibbeler 8th ed., problem 1-61: 2 · 15.268 kN at 60 MPa needs 18 mm", () => {
    expect(thinnestPin(2 * 15_268, 60, 2)).toBeCloseTo(18, 3);
  });

  test("pinShear: Gere 5th ed., problem 1.6-3: 8.0 k on three 5/8 in bolts in double shear, 4350 psi", () => {
    const mpa = pinShear((8000 * N_PER_LBF) / 3, 0.625 * IN, 2);
    expect(mpa / 6.894757e-3 / 4350).toBeCloseTo(1, 2);
  });

  test("allowedShear: Shigley, problem 8-48: Ssy = 0.577·420 = 242.3 MPa, 12 mm bolt, F = 4.18 kN", () => {
    expect(allowedShear(420, 1)).toBeCloseTo(242.3, 1);
    const forceN = (allowedShear(420, 2.8) * Math.PI * 12 ** 2) / 4 / 2.343;
    expect(forceN / 1000).toBeCloseTo(4.18, 2);
  });
});

describe("bolts", () => {
  const unf = { name: "3/4-16", diameterMm: 0.75 * IN, pitchMm: IN / 16, series: "unified" as const };

  test("stressArea: Shigley 9th ed., example 8-3: 25 kip on 3/4 in-16 UNF is 67.02 kpsi", () => {
    expect(25_000 / (stressArea(unf) / IN ** 2) / 67_020).toBeCloseTo(1, 2);
  });

  test("tighteningTorque: same example, eq. 8-27 with K 0.2 (answer from memory): 3750 lbf·in", () => {
    const nm = tighteningTorque(unf, 25_000 * N_PER_LBF, 0.2);
    expect((nm * 1000) / (N_PER_LBF * IN)).toBeCloseTo(3750, 6);
  });
});

describe("beams", () => {
  const plain: UniformBeam = { loadNPerMm: 3, spanMm: 800, overhangLeftMm: 0, overhangRightMm: 0 };
  const stiffness = 2e5 * 1.2e5;

  test("midDeflection of a plain beam is 5·q·L⁴/384·E·I: Gere 7th ed., solution 9.6-7", () => {
    expect(midDeflection(plain, stiffness)).toBeCloseTo((5 * 3 * 800 ** 4) / (384 * stiffness), 12);
    expect(slopeAt(plain, stiffness, "left")).toBeCloseTo((3 * 800 ** 3) / (24 * stiffness), 12);
    expect(largestMoment(plain)).toBeCloseTo((3 * 800 ** 2) / 8, 9);
  });

  test("overhang at one end: Gere, example 8-9, θB = q·L·(4a² − L²)/24·E·I and δC", () => {
    const [q, L, a] = [3, 500, 220];
    const beam = { loadNPerMm: q, spanMm: L, overhangLeftMm: 0, overhangRightMm: a };
    expect(slopeAt(beam, stiffness, "right")).toBeCloseTo(
      (q * L * (4 * a * a - L * L)) / (24 * stiffness),
      12,
    );
    const end = (q * a * (a + L) * (3 * a * a + a * L - L * L)) / (24 * stiffness);
    expect(beamDeflection(beam, stiffness, L + a)).toBeCloseTo(end, 12);
  });

  test("Machinery's Handbook: with a span of 2.828 overhangs the moments at support and middle are equal", () => {
    const whole = 1000;
    const overhang = evenOverhang(whole);
    const spanMm = whole - 2 * overhang;
    expect(spanMm / overhang).toBeCloseTo(2.828, 3);
    const beam = { loadNPerMm: 2, spanMm, overhangLeftMm: overhang, overhangRightMm: overhang };
    expect(beamMoment(beam, spanMm / 2)).toBeCloseTo(-beamMoment(beam, 0), 6);
    for (const other of [0.9, 1.1]) {
      const shifted = {
        ...beam,
        overhangLeftMm: other * overhang,
        overhangRightMm: other * overhang,
        spanMm: whole - 2 * other * overhang,
      };
      expect(largestMoment(shifted)).toBeGreaterThan(largestMoment(beam));
    }
  });

  test("Machinery's Handbook: between 2 and 2.449 overhangs the span arches up on both sides of the middle", () => {
    const arches = (ratio: number) => {
      const beam = { loadNPerMm: 2, spanMm: ratio * 100, overhangLeftMm: 100, overhangRightMm: 100 };
      return beamDeflection(beam, stiffness, 0.05 * beam.spanMm) < 0;
    };
    expect(arches(2.3)).toBe(true);
    expect(arches(2.6)).toBe(false);
    const level = { loadNPerMm: 2, spanMm: Math.sqrt(6) * 100, overhangLeftMm: 100, overhangRightMm: 100 };
    expect(slopeAt(level, stiffness, "left")).toBeCloseTo(0, 12);
    const middle = { ...level, spanMm: 2 * 100 };
    expect(beamMoment(middle, 100)).toBeCloseTo(0, 9);
  });

  test("overhang over a level support is a cantilever: 1 m of 50 × 50 mm under 1 N/mm gives 1.20 mm (Timoshenko, q·L⁴/8·E·I)", () => {
    const section = sectionOf({ kind: "flat", widthMm: 50, heightMm: 50 });
    const beam = { loadNPerMm: 1, spanMm: Math.sqrt(6) * 1000, overhangLeftMm: 1000, overhangRightMm: 1000 };
    const ei = 200_000 * section.secondMomentXMm4;
    expect(beamDeflection(beam, ei, -1000)).toBeCloseTo(1.2, 6);
    expect(beamDeflection(beam, ei, beam.spanMm + 1000)).toBeCloseTo(1.2, 6);
  });
});
