/**
 * One step of an answered job, ready to be posed at any leaf angle: what the stage needs while the leaf is dragged.
 * The engine's own motion is used for every picture; nothing is worked out twice.
 */
import type { Answer, StepAnswer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { stageAt } from "../../src/jobFile/stageAt.ts";
import { type Scene, sheetAt, stageScene } from "../../src/motion/scene.ts";
import { type Seat, seatFor } from "../../src/motion/seat.ts";
import { leastMomentDeg, offMetal } from "../../src/pictures/leastMoment.ts";
import { turnedOutline } from "../../src/plane/move.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { toRad } from "../../src/units/quantity.ts";

/** Nearer than a line of the drawing is wide. */
const ON_METAL_MM = 0.1;

export interface StepPose {
  readonly job: Job;
  readonly step: StepAnswer;
  readonly seat: Seat;
  readonly bendsDone: number;
  /** Brake and sheet with the leaf at rest. */
  readonly atRest: Scene;
  /** Where a bend that was begun before lies until the leaf comes up to it; 0 for a flat one. */
  readonly fromDeg: number;
  /** Largest leaf angle of this step: the overbend, or the leaf's swing when that is less. */
  readonly endDeg: number;
  /** Leaf angle at which metal meets metal; null when nothing does. */
  readonly stopDeg: number | null;
  /** Leaf angle of what the answer is about: where it stops, comes nearest, or ends. */
  readonly momentDeg: number;
}

/** Sets step `index` (from 0) up; null when the order has no such step. */
export function poseStep(job: Job, answer: Answer, index: number): StepPose | null {
  const step = answer.order[index];
  if (step === undefined) return null;
  const stage = stageAt(job, answer, index);
  const { part, brake, bend, clamped, bendsDone } = stage;
  const stopDeg = step.contact?.angle ?? null;
  const least = leastMomentDeg((deg) => stageScene(stage, toRad(deg)), step.reached, step);
  return {
    job,
    step,
    seat: seatFor(part, brake, bend, clamped),
    bendsDone,
    atRest: stageScene(stage, 0),
    fromDeg: step.from ?? 0,
    endDeg: Math.min(step.overbend, job.brake.leaf.swingDeg),
    stopDeg,
    momentDeg: stopDeg ?? least ?? step.reached,
  };
}

/** How far the sheet is bent with the leaf at an angle: a bend that was begun waits for the leaf. */
export function bentDeg(pose: StepPose, leafDeg: number): number {
  return Math.max(pose.fromDeg, leafDeg);
}

/** The sheet with the leaf at an angle. */
export function sheetAtDeg(pose: StepPose, leafDeg: number): Outline {
  return sheetAt(pose.seat, pose.bendsDone, toRad(bentDeg(pose, leafDeg)));
}

/** The leaf at an angle. */
export function leafAtDeg(pose: StepPose, leafDeg: number): Outline {
  return turnedOutline(pose.job.brake.leaf.outline, pose.seat.pivot, toRad(leafDeg));
}

/** The angle that the leaf really gets to when it is pulled to `leafDeg`. */
export function heldDeg(pose: StepPose, leafDeg: number): number {
  return pose.stopDeg === null ? leafDeg : Math.min(leafDeg, pose.stopDeg);
}

/** Whether the least clearance is to be seen with the leaf at an angle: both of its points lie on metal then. */
export function showsLeast(pose: StepPose, leafDeg: number): boolean {
  const scene = { ...pose.atRest, sheet: sheetAtDeg(pose, leafDeg), leaf: leafAtDeg(pose, leafDeg) };
  return (offMetal(scene, pose.step) ?? Number.POSITIVE_INFINITY) < ON_METAL_MM;
}

/** Sheets through the sweep, for the tinted path, every 3 degrees. */
export function sweepOf(pose: StepPose): readonly Outline[] {
  const { fromDeg } = pose;
  const run = Math.max(0, pose.step.reached - fromDeg);
  const count = Math.max(1, Math.ceil(run / 3));
  return Array.from({ length: count + 1 }, (_, i) => sheetAtDeg(pose, fromDeg + (run * i) / count));
}

/** The step where it is worst: the first that hits, else the one with the least to spare, else the last. From 0. */
export function worstStep(answer: Answer): number {
  const hit = answer.order.findIndex((step) => step.verdict === "hits");
  if (hit >= 0) return hit;
  let worst = Math.max(0, answer.order.length - 1);
  let least = Number.POSITIVE_INFINITY;
  answer.order.forEach((step, i) => {
    if (step.clearance !== null && step.clearance < least) {
      least = step.clearance;
      worst = i;
    }
  });
  return worst;
}
