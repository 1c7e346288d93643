/**
 * The leaf's swing and the sheet's slide: tables, bounds and the seat's own figures.
 * Source: the closed formulas of the design (section 5), written out again here; bounds by dense sampling.
 */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seatFor } from "../../src/motion/seat.ts";
import { slideAt } from "../../src/motion/slide.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { toRad } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { roughJobs } from "../contact/roughJob.ts";
import { rectangle } from "../rectangle.ts";
import { randomJobs } from "../reference/randomJob.ts";

const angles = fc.double({ min: 0, max: 1, noNaN: true });

describe("slideAt", () => {
  it("is d(φ) − d(0) less what the apex itself has moved along the leaf", () => {
    fc.assert(
      fc.property(roughJobs(1), angles, (file, share) => {
        const { part, brake } = jobOf(file);
        const seat = seatFor(part, brake, 0, "start");
        const bend = part.bends[0]!;
        if (bend.pinched) return;
        const { x: Px, y: Py } = brake.leaf.pivot;
        const [r, T, k] = [bend.insideRadiusMm, part.thicknessMm, part.kFactor];
        const X = -(bend.noseSetbackMm + brake.clamp.noseRunMm);
        const apex = (phi: number) => Px + Py * Math.tan(phi / 2);
        // src/model.md, section 5: distance of the moving tangent from the apex, along the leaf.
        const d = (phi: number) =>
          bend.allowanceMm + X - apex(phi) + 2 * (r + T) * Math.tan(phi / 2) - phi * (r + k * T);
        // Seen from the leaf at rest the apex lies at Px − Py·tan(φ/2).
        const onLeaf = (phi: number) => Px - Py * Math.tan(phi / 2) + d(phi);
        const phi = share * toRad(bend.overbendDeg);
        expect(seat.movingTangentX + slideAt(seat, phi)).toBeCloseTo(onLeaf(phi), 9);
      }),
      { seed: 61, numRuns: 300 },
    );
  });

  it("comes to the bend deduction over a bend without overbend, with the pivot on the bed's edge", () => {
    fc.assert(
      fc.property(randomJobs(1), (file) => {
        const leaf = { ...file.brake.leaf, pivot: [0, 0] as [number, number] };
        const bends = file.part.bends.map((bend) => ({ ...bend, overbend: bend.angle }));
        const { part, brake } = jobOf({
          ...file,
          part: { ...file.part, bends },
          brake: { ...file.brake, leaf, setback: "auto" },
        });
        const seat = seatFor(part, brake, 0, "end");
        const bend = part.bends[0]!;
        expect(slideAt(seat, toRad(bend.angleDeg))).toBeCloseTo(bend.deductionMm, 9);
        expect(seat.movingTangentX).toBeCloseTo(bend.allowanceMm - bend.bendSetbackMm, 9);
      }),
      { seed: 62, numRuns: 200 },
    );
  });
});

describe("tableSwing", () => {
  it("tables turn and slide at equal steps, and bounds them over the whole sweep", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -4, max: 12, noNaN: true }),
        fc.double({ min: 0.2, max: 6, noNaN: true }),
        fc.double({ min: 0.02, max: 2.6, noNaN: true }),
        (slideTan, slideTurn, sweep) => {
          const swing = tableSwing(1, slideTan, slideTurn, sweep);
          const slide = (phi: number) => slideTan * Math.tan(phi / 2) - slideTurn * phi;
          const rate = (phi: number) => slideTan / 2 / Math.cos(phi / 2) ** 2 - slideTurn;
          const bend = (phi: number) => (slideTan / 2) * (Math.tan(phi / 2) / Math.cos(phi / 2) ** 2);
          expect(swing.steps * swing.stepRad).toBeCloseTo(sweep, 12);
          for (let j = 0; j <= swing.steps; j++) {
            const phi = j * swing.stepRad;
            expect(swing.cos[j]).toBeCloseTo(Math.cos(phi), 12);
            expect(swing.sin[j]).toBeCloseTo(Math.sin(phi), 12);
            expect(swing.slide[j]).toBeCloseTo(slide(phi), 9);
            expect(swing.slideRate[j]).toBeCloseTo(rate(phi), 9);
          }
          let [most, fastest, sharpest] = [0, 0, 0];
          for (let i = 0; i <= 2000; i++) {
            const phi = (sweep * i) / 2000;
            most = Math.max(most, Math.abs(slide(phi)));
            fastest = Math.max(fastest, Math.abs(rate(phi)));
            sharpest = Math.max(sharpest, Math.abs(bend(phi)));
          }
          const hair = 1e-9 * (1 + sharpest);
          expect(swing.maxSlide).toBeGreaterThan(most - hair);
          expect(swing.maxSlideRate).toBeGreaterThan(fastest - hair);
          expect(swing.maxSlideBend).toBeGreaterThan(sharpest - hair);
          // Bounds that are far too wide would cost time: the slide's is the true peak.
          expect(swing.maxSlide).toBeLessThan(most + 1e-4 * (1 + sharpest));
        },
      ),
      { seed: 63, numRuns: 200 },
    );
  });

  it("of no sweep holds the pose at rest alone", () => {
    const rest = tableSwing(1, 3, 2, 0);
    expect([rest.steps, rest.cos.length, rest.cos[0], rest.sin[0], rest.slide[0]]).toEqual([0, 1, 1, 0, 0]);
  });
});

describe("seatFor", () => {
  // Worked by hand: T 1, r 1, 90°, so SB 2; K 0.5, so BA = π/2·1.5 = 2.3562; nose radius 0.8, so s = r + T − Rn = 1.2.
  const file = {
    noseroom: 1,
    units: "mm",
    part: {
      name: "angle",
      material: "mild steel",
      thickness: 1,
      insideRadius: 1,
      kFactor: 0.5,
      dimensions: "outside",
      flats: [12, 22],
      bends: [{ angle: 90, turn: "down", overbend: 93 }],
    },
    brake: {
      name: "plain",
      clamp: { type: "bar", thickness: 5, depth: 30, noseRadius: 0.8 },
      bed: { profile: rectangle(-50, -20, 0, 0) },
      leaf: { profile: rectangle(0, -5, 20, 0), swing: 120 },
      lift: 20,
      openEnds: true,
    },
  };

  it("puts the clamped tangent where the nose's rounding begins", () => {
    const { part, brake } = jobOf(file);
    const seat = seatFor(part, brake, 0, "start");
    // (r + T)·tan(θo/2) behind the apex at 0, at the leaf's 93°.
    expect(seat.clampedTangentX).toBeCloseTo(-2 * Math.tan(toRad(46.5)), 12);
    expect(seat.clampedTangentX).toBeCloseTo(-(seat.noseSetbackMm + 0.8), 12);
    expect(seat.movingTangentX).toBeCloseTo(-2 * Math.tan(toRad(46.5)) + (Math.PI / 2) * 1.5, 12);
    expect(Array.from(seat.clampedChain.flatMm)).toEqual([10]);
    expect(Array.from(seat.movingChain.flatMm)).toEqual([20]);
    expect(seat.sweepRad).toBeCloseTo(toRad(93), 12);
    expect(seat.noseSetbackMm).toBeCloseTo(2 * Math.tan(toRad(46.5)) - 0.8, 12);
  });

  it("lets the other end lie in the throat, and stops at the leaf's swing", () => {
    const short = { ...file, brake: { ...file.brake, leaf: { ...file.brake.leaf, swing: 60 } } };
    const { part, brake } = jobOf(short);
    const seat = seatFor(part, brake, 0, "end");
    expect(Array.from(seat.clampedChain.flatMm)).toEqual([20]);
    expect(Array.from(seat.movingChain.flatMm)).toEqual([10]);
    expect(seat.sweepRad).toBeCloseTo(toRad(60), 12);
    expect(seat.overbendRad).toBeCloseTo(toRad(93), 12);
  });

  it("moves all with the apex where the pivot is off the edge", () => {
    const leaf = { ...file.brake.leaf, pivot: [0.3, 0.4] };
    const { part, brake } = jobOf({ ...file, brake: { ...file.brake, leaf } });
    const seat = seatFor(part, brake, 0, "start");
    const apexAtOverbend = 0.3 + 0.4 * Math.tan(toRad(46.5));
    expect(seat.clampedTangentX).toBeCloseTo(apexAtOverbend - 2 * Math.tan(toRad(46.5)), 12);
    expect(seat.noseSetbackMm).toBeCloseTo(2 * Math.tan(toRad(46.5)) - 0.8 - apexAtOverbend, 12);
  });
});
