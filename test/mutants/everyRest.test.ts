/**
 * What the disc beyond a flat promises, held to every rest of the sheet: all 2^r ways of forming the joints to come, laid out by
 * test/reference, at rest, on the way and with the bend finished. Its lengths are straight distances of corners.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Beyond } from "../../src/contact/beyond.ts";
import { Machine } from "../../src/contact/machine.ts";
import type { Side } from "../../src/contact/seatPieces.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { jobOf } from "../cases/answers.ts";
import { picks, roughJobs, stateOf } from "../contact/roughJob.ts";
import { barredBy } from "../reference/loading.ts";
import { type Stage, stageOf } from "../reference/pairs.ts";
import type { State } from "../reference/plainJob.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import type { Shape } from "../reference/shape.ts";
import { type Point, pointToSegment } from "./roundedBlocks.ts";

const CHORD_MM = 0.001;
const ANGLES = 4;

const pointsOf = (shape: Shape): Point[] =>
  Array.from({ length: shape.length / 2 }, (_, i) => [shape[2 * i]!, shape[2 * i + 1]!]);

/** Least distance of the sheet's corners from a body's border, and of the body's corners from the sheet's. */
function apart(sheet: Shape, body: Shape): number {
  const [S, B] = [pointsOf(sheet), pointsOf(body)];
  const from = (points: readonly Point[], border: readonly Point[]) =>
    Math.min(
      ...points.map((point) =>
        Math.min(...border.map((a, i) => pointToSegment(point, a, border[(i + 1) % border.length]!))),
      ),
    );
  return Math.min(from(S, B), from(B, S));
}

/** One bend with the pieces beyond flat k of one side, in one of the ways that they may be formed. */
interface Rest {
  readonly stage: Stage;
  readonly pieces: readonly Shape[];
}

function restsOf(file: RandomJob, state: State, side: Side, joints: readonly number[]): Rest[] {
  return Array.from({ length: 2 ** joints.length }, (_, set) => {
    const done = state.done.map((made, i) => {
      const at = joints.indexOf(i);
      return at < 0 ? made : ((set >> at) & 1) === 1;
    });
    const stage = stageOf(file, { ...state, done }, 0, CHORD_MM);
    const all = side === "moving" ? stage.movingPieces : stage.clampedPieces;
    return { stage, pieces: all.slice(all.length - 2 * joints.length).map(({ shape }) => shape) };
  });
}

/** Long flats at the bend and short ones beyond, in a brake that lifts far, so that much keeps off. */
function spreadOut({ part, brake, ...rest }: RandomJob, bend: number): RandomJob {
  const flats = part.flats.map((length, i) =>
    i === bend || i === bend + 1 ? 60 + 2 * length : 0.5 + length / 4,
  );
  return { ...rest, part: { ...part, dimensions: "flat", flats }, brake: { ...brake, lift: 60 } };
}

const cases = fc
  .sample(
    fc.noBias(
      fc.record({
        job: roughJobs(5).filter(({ part }) => part.bends.length >= 3),
        picked: picks(1),
        side: fc.constantFrom<Side[]>("moving", "clamped"),
      }),
    ),
    { seed: 91, numRuns: 60 },
  )
  .map(({ job, picked: [pick], side }) => ({
    file: spreadOut(job, pick!.bend % job.part.bends.length),
    pick: pick!,
    side,
  }));

/** A bend seated, with what its discs say flat by flat. */
function promisesOf({ file, pick, side }: (typeof cases)[number]) {
  const { part, brake } = jobOf(file);
  const { state, bendsDone } = stateOf(part.bends.length, pick);
  const seat = seatFor(part, brake, state.bend, state.end);
  const chain = side === "moving" ? seat.movingChain : seat.clampedChain;
  const formed = formedJoints(chain, bendsDone);
  const beyond = new Beyond(new SideChecks(seat, new Machine(brake, part.thicknessMm)), side);
  const promises = Array.from({ length: chain.joints }, (_, k) => {
    beyond.after(k, formed);
    return {
      joints: [...chain.bendNumber.subarray(k)],
      near: beyond.near,
      direction: beyond.direction,
      keepsOff: beyond.keepsOff(),
      clearance: beyond.leastClearance(),
      passes: [beyond.letsPass(false), beyond.letsPass(true)],
    };
  });
  return { seat, state, promises, liftMm: brake.liftMm };
}

describe.each(cases)("every rest of the sheet beyond a flat", (one) => {
  const { file, side } = one;

  it("keeps what its disc promises", () => {
    const { seat, state, promises, liftMm } = promisesOf(one);
    const { x: px, y: py } = seat.pivot;
    const angles = Array.from({ length: ANGLES }, (_, i) => (seat.sweepRad * i) / (ANGLES - 1));
    for (const { joints, near, direction, keepsOff, clearance, passes } of promises) {
      for (const { stage, pieces } of restsOf(file, state, side, joints)) {
        const { motion, machine, clamp } = stage;
        const placedAt = (phi: number) =>
          pieces.map((shape) =>
            side === "clamped" ? motion.clamped(shape) : motion.moving(shape, phi, false)!,
          );
        const swept = angles.map(placedAt);
        for (const [x, y] of swept.flat().flatMap(pointsOf))
          expect(Math.hypot(x - px, y - py)).toBeGreaterThan(near);
        if (!Number.isNaN(direction)) {
          for (const [x, y] of swept[0]!.flatMap(pointsOf)) {
            const way = Math.atan2(y - py, x - px);
            if (side === "moving") expect(way).toBeLessThan(direction);
            else expect(way < 0 ? way + 2 * Math.PI : way).toBeGreaterThan(direction);
          }
        }
        if (keepsOff || clearance > 0) {
          const still = [machine.bed, ...machine.frame, ...clamp];
          angles.forEach((phi, i) => {
            for (const body of [...still, motion.swung(machine.leaf, phi)])
              for (const shape of swept[i]!) expect(apart(shape, body)).toBeGreaterThan(clearance);
          });
        }
        for (const [i, passing] of passes.entries()) {
          if (!passing) continue;
          const seated = placedAt(i === 0 ? 0 : seat.angleRad);
          const below = [machine.bed, machine.leaf, ...machine.frame];
          for (const [bodies, sign] of [
            [below, 1],
            [clamp, -1],
          ] as const) {
            const barred = barredBy(seated, bodies, sign);
            expect(barred.free).toBeGreaterThanOrEqual(liftMm);
            expect(barred.intervals.filter(([low, high]) => low < liftMm && high > 0)).toEqual([]);
          }
        }
      }
    }
  });
});

it("is promised something often enough", () => {
  const all = cases.flatMap((one) => promisesOf(one).promises);
  const count = (one: (promise: (typeof all)[number]) => boolean) => all.filter(one).length;
  const counts = [
    count(({ keepsOff }) => keepsOff),
    count(({ clearance }) => clearance > 0),
    count(({ direction }) => !Number.isNaN(direction)),
    count(({ passes }) => passes[0]!),
    count(({ passes }) => passes[1]!),
  ];
  expect(Math.min(...counts)).toBeGreaterThanOrEqual(15);
});
