/**
 * The motion of the reference at its two ends: the moving side must join on to the flat strip before the bend, and at the
 * overbend end that much of the sheet short of the arc as the last degrees took up, wherever the pivot is. Source: the sheet is one piece; BA and the arc come by their own road.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { stageOf } from "./pairs.ts";
import { randomJobs } from "./randomJob.ts";
import { sheetOf } from "./sheet.ts";

it("joins the moving side to the strip at rest, and to the arc less what the overbend took up at its end", () => {
  fc.assert(
    fc.property(randomJobs(1), fc.double({ min: -2, max: 2, noNaN: true }), (job, pivotY) => {
      const leaf = { ...job.brake.leaf, pivot: [0.3, pivotY] as [number, number] };
      const brake = { ...job.brake, leaf, setback: "auto" as const };
      const { motion, clampedPieces, movingPieces, sheet } = stageOf(
        { ...job, brake },
        { done: [false], bend: 0, end: "start" },
        0,
        0.001,
      );
      const first = movingPieces[0]!.shape;
      const placedBy = motion.seated(clampedPieces, movingPieces, false, 0, 0.001).at(-1)!;
      motion.moving(first, 0, false)!.forEach((value, i) => {
        expect(value).toBeCloseTo(placedBy[i]!, 9);
      });
      // The arc at the overbend angle starts on the clamped tangent and ends (r + T)·sin θo on and (r + T)(1 − cos θo) up.
      const { thetaOver, theta, radius, neutral } = motion.bend;
      const high = radius + sheet.thickness;
      const short = (thetaOver - theta) * neutral;
      const [c, s] = [Math.cos(thetaOver), Math.sin(thetaOver)];
      const start = motion.moving(Float64Array.of(0, 0), thetaOver, false)!;
      expect(start[0]).toBeCloseTo(motion.tangentX + high * s - short * c, 9);
      expect(start[1]).toBeCloseTo(high - high * c - short * s, 9);
    }),
    { seed: 11, numRuns: 200 },
  );
});

it("swings the leaf face through the apex on y = 0, wherever the pivot is", () => {
  fc.assert(
    fc.property(
      randomJobs(1),
      fc.double({ min: -2, max: 2, noNaN: true }),
      fc.double({ min: 0.05, max: 2.2, noNaN: true }),
      (job, pivotY, phi) => {
        const leaf = { ...job.brake.leaf, pivot: [0.3, pivotY] as [number, number] };
        const { motion } = stageOf(
          { ...job, brake: { ...job.brake, leaf } },
          { done: [false], bend: 0, end: "start" },
          0,
          0.001,
        );
        const [ax, ay, bx, by] = motion.swung(Float64Array.of(0, 0, 1, 0), phi);
        const crossing = ax! - (ay! * (bx! - ax!)) / (by! - ay!);
        const atApex = motion.moving(Float64Array.of(-motion.slide(phi), 0), phi, false)!;
        expect(atApex[0]).toBeCloseTo(crossing, 9);
        expect(atApex[1]).toBeCloseTo(0, 9);
      },
    ),
    { seed: 12, numRuns: 200 },
  );
});

it("sets out the handbook's U-channel", () => {
  // FAA-H-8083-31, bending a U-channel: T .040, R .16, mold lines 1.00/2.00/1.00 in; SB .20, flats .80/1.60/.80.
  const bend = { angle: 90, turn: "up" as const, overbend: 90 };
  const part = {
    thickness: 0.04,
    insideRadius: 0.16,
    kFactor: 0.44,
    dimensions: "outside" as const,
    flats: [1, 2, 1],
    bends: [bend, bend],
  };
  const brake = {
    clamp: { type: "bar" as const, noseRadius: 0.1, thickness: 0.5, depth: 2 },
    bed: { profile: [] },
    leaf: { profile: [], swing: 135 },
    lift: 1,
    openEnds: true,
  };
  const sheet = sheetOf({ part, brake });
  expect(sheet.bends[0]!.setbackOut).toBeCloseTo(0.2, 9);
  [0.8, 1.6, 0.8].forEach((flat, i) => {
    expect(sheet.flats[i]).toBeCloseTo(flat, 9);
  });
});
