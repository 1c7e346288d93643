/**
 * Strength formulas against worked examples of textbooks and handbooks, each named.
 * Inch examples are changed over and back, so that a slip in units shows.
 */
import { describe, expect, test } from "vitest";
import { stressArea, tighteningTorque } from "../../src/narrowBrake/strength/bolt.ts";
import { centralMoment, centralSag } from "../../src/narrowBrake/strength/centralLoad.ts";
import { type Rectangle, sectionOf } from "../../src/narrowBrake/strength/rectangles.ts";
import {
  flowStress,
  foldingMoment,
  PLANE_STRAIN_FACTOR,
  plasticMoment,
} from "../../src/narrowBrake/strength/sheetMoment.ts";
import { springFor, springOf } from "../../src/narrowBrake/strength/spring.ts";
import { weldStress } from "../../src/narrowBrake/strength/weldLines.ts";

const IN = 25.4;
const N_PER_LBF = 4.4482216;

const flat = (widthMm: number, heightMm: number): Rectangle[] => [
  { minX: 0, maxX: widthMm, minY: 0, maxY: heightMm },
];

describe("sections", () => {
  test("box beam of Gere, Mechanics of Materials 7th ed., problem 6.10-13: I 183.10 in⁴, S 38.55 in³", () => {
    const b = 5.25 * IN;
    const h = 9.5 * IN;
    // Flanges 0.75 in, webs 0.375 in: outside less inside as two flats of the same centroid.
    const outside = sectionOf(flat(b, h)).secondMomentXMm4;
    const inside = sectionOf(flat(4.5 * IN, 8 * IN)).secondMomentXMm4;
    expect((outside - inside) / IN ** 4).toBeCloseTo(183.1, 1);
    expect((outside - inside) / (h / 2) / IN ** 3).toBeCloseTo(38.55, 2);
  });

  test("box beam of Gere 7th ed., problem 6.10-14: I 55.63·10⁶ mm⁴, S 556.3·10³ mm³, yield moment 122 kN·m at 220 MPa", () => {
    const outside = sectionOf(flat(150, 200)).secondMomentXMm4;
    const inside = sectionOf(flat(130, 160)).secondMomentXMm4;
    expect((outside - inside) / 1e6).toBeCloseTo(55.63, 2);
    expect((outside - inside) / 100 / 1e3).toBeCloseTo(556.3, 1);
    expect((220 * (outside - inside)) / 100 / 1e6).toBeCloseTo(122, 0);
  });

  test("channel of Gere, example 5-4 (from memory): 300 × 80 mm, 12 mm thick, c 18.48 mm, I 2.469·10⁶ mm⁴", () => {
    const s = sectionOf([
      { minX: 0, maxX: 300, minY: 0, maxY: 12 },
      { minX: 0, maxX: 12, minY: 12, maxY: 80 },
      { minX: 288, maxX: 300, minY: 12, maxY: 80 },
    ]);
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
    const modulus = sectionOf(flat(1, 7)).modulusXMm3;
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
  test("a beam loaded all along: sag 5·q·L⁴/384·E·I, moment q·L²/8: Gere 7th ed., solution 9.6-7", () => {
    const beam = { loadNPerMm: 3, loadedMm: 800, spanMm: 800 };
    const stiffness = 2e5 * 1.2e5;
    expect(centralSag(beam, stiffness)).toBeCloseTo((5 * 3 * 800 ** 4) / (384 * stiffness), 12);
    expect(centralMoment(beam)).toBeCloseTo((3 * 800 ** 2) / 8, 9);
  });

  test("a short load in the middle nears a point load: P·L³/48·E·I (Gere, app. H-2, case 4)", () => {
    const beam = { loadNPerMm: 1000, loadedMm: 1, spanMm: 800 };
    expect(centralSag(beam, 1e10) / ((1000 * 800 ** 3) / 48e10)).toBeCloseTo(1, 4);
  });
});

describe("springs", () => {
  // Music wire no. 16, 0.037 in, 7/16 in outside, 12 1/2 coils of which two are squared ends (answers from memory).
  const spring = springOf((7 / 16) * IN, 0.037 * IN, 10.5);

  test("springOf: Shigley 9th ed., example 10-1: 4.13 lbf/in, and 6.46 lbf at the yield of its wire", () => {
    expect((spring.rateNPerMm * IN) / N_PER_LBF / 4.13).toBeCloseTo(1, 1);
    expect(spring.mostN / N_PER_LBF / 6.46).toBeCloseTo(1, 2);
  });

  test("springFor: pushes what it must when open, is not solid nor overstressed when shut, and none is made up", () => {
    const room = { outsideMm: 12, wiresMm: [0.8, 1, 1.25, 1.6, 2] };
    const work = { openN: 20, openMm: 19, shutMm: 14 };
    const found = springFor(room, work)!;
    expect(found.rateNPerMm * (found.freeMm - work.openMm)).toBeCloseTo(20, 6);
    expect((found.activeCoils + 2) * found.wireMm).toBeLessThan(14);
    expect(found.rateNPerMm * (found.freeMm - work.shutMm)).toBeLessThanOrEqual(found.mostN);
    expect(springFor(room, { ...work, openMm: 80 })).toBeUndefined();
  });
});

describe("welds", () => {
  test("3/8 in fillet of E70 takes 5.57 kip/in: Shigley, table 9-6, schedule A", () => {
    const one = weldStress(
      [
        [
          [0, 0],
          [0, IN],
        ],
      ],
      (3 / 8) * IN,
      { force: [0, 5570 * N_PER_LBF], at: [0, 0], offMm: 0 },
    );
    // 21.0 ksi in the throat.
    expect(one / 6.894757 / 21).toBeCloseTo(1, 2);
  });
});
