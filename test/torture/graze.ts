/**
 * A block put where the moving side just reaches at its farthest in some direction: grazes of 1e-9 mm, edge along edge.
 * Which way a graze that thin falls is nobody's to say; that it lies between a clear miss and a clear hit is. Also: the
 * deeper the block stands, the sooner it is met. Source: the depth is set by the test from the reference's motion.
 */
import { judgeStep, type Step } from "../../src/contact/step.ts";
import { jobOf } from "../cases/answers.ts";
import { stageOf } from "../reference/pairs.ts";
import type { State } from "../reference/plainJob.ts";
import { nearBend } from "../reference/pose.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import type { Corner } from "../reference/shape.ts";

const INSET_MM = 0.01;
const STEPS = 240;
/** From a clear miss to a clear hit; the outer two bracket the rest. */
const DEPTHS_MM = [-0.05, -1e-6, -1e-9, 0, 1e-9, 1e-6, 0.05];

/** How far the moving side reaches in the direction n over the whole sweep, sampled. */
function farthest(file: RandomJob, state: State, nx: number, ny: number): number {
  const stage = stageOf(file, state, INSET_MM, 1e-3);
  const { motion, movingPieces, endPhi } = stage;
  const onFace = nearBend(movingPieces);
  let most = -Infinity;
  for (let k = 0; k <= STEPS; k++) {
    movingPieces.forEach((piece, i) => {
      const shape = motion.moving(piece.shape, (endPhi * k) / STEPS, i < onFace);
      if (shape === null) return;
      for (let j = 0; j < shape.length; j += 2) most = Math.max(most, nx * shape[j]! + ny * shape[j + 1]!);
    });
  }
  return most;
}

/** The job with a block whose edge stands `depth` inside what the moving side reaches in the direction `wayRad`. */
export function grazed(
  file: RandomJob,
  state: State,
  wayRad: number,
  depths: readonly number[],
): RandomJob[] {
  const [nx, ny] = [Math.cos(wayRad), Math.sin(wayRad)];
  const reach = farthest(file, state, nx, ny);
  // The bend zone takes all of the moving side there is: nothing to graze.
  if (reach === -Infinity) return [];
  const size = Math.max(50, Math.abs(reach));
  return depths.map((depth) => {
    const level = reach - depth;
    const block = [
      [level, -size],
      [level + size, -size],
      [level + size, size],
      [level, size],
    ].map(([out, along]): Corner => [nx * out! - ny * along!, ny * out! + nx * along!]);
    return { ...file, brake: { ...file.brake, frame: [...(file.brake.frame ?? []), block] } };
  });
}

const angleOf = (step: Step) => step.contact?.leafAngleRad ?? Infinity;

/** What is out of order among grazes of growing depth; undefined where they follow each other as they must. */
export function grazeFault(
  file: RandomJob,
  state: State,
  bendsDone: number,
  wayRad: number,
): string | undefined {
  const steps = grazed(file, state, wayRad, DEPTHS_MM).map((job) => {
    const { part, brake, marginMm } = jobOf(job);
    return judgeStep(part, brake, { bendsDone, bend: state.bend, clamped: state.end }, marginMm);
  });
  for (let i = 1; i < steps.length; i++) {
    const [before, after] = [angleOf(steps[i - 1]!), angleOf(steps[i]!)];
    if (after > before + 1e-6)
      return `block ${DEPTHS_MM[i]} deep is met at ${after} rad, ${DEPTHS_MM[i - 1]} deep at ${before} already`;
    const [gap, nearer] = [steps[i - 1]!.clearanceMm, steps[i]!.clearanceMm];
    if (gap !== undefined && nearer !== undefined && nearer > gap + 1e-6)
      return `block ${DEPTHS_MM[i]} deep leaves ${nearer} mm, ${DEPTHS_MM[i - 1]} deep ${gap}`;
  }
  return undefined;
}
