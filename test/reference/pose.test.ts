/**
 * The motion of the reference at its two ends: the moving side must join on to the flat strip before the bend and on
 * to the finished arc after it, wherever the pivot is. Source: the sheet is one piece; BA and the arc come by their own road.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { stageOf } from "./pairs.ts";
import { randomJobs } from "./randomJob.ts";
import { sheetOf } from "./sheet.ts";

it("joins the moving side to the strip at 0 and to the arc at the bend angle", () => {
  fc.assert(
    fc.property(randomJobs(1), fc.double({ min: -2, max: 2, noNaN: true }), (job, pivotY) => {
      const leaf = { ...job.brake.leaf, pivot: [0.3, pivotY] as [number, number] };
      const stage = stageOf(
        { ...job, brake: { ...job.brake, leaf } },
        { done: [false], bend: 0, end: "start" },
        0,
        0.001,
      );
      const { motion, clampedPieces, movingPieces } = stage;
      for (const formed of [false, true]) {
        const placedBy = motion.seated(clampedPieces, movingPieces, formed, 0, 0.001).at(-1)!;
        const swung = motion.moving(movingPieces[0]!.shape, formed ? motion.bend.theta : 0, false)!;
        swung.forEach((value, i) => {
          expect(value).toBeCloseTo(placedBy[i]!, 9);
        });
      }
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
