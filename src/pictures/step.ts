/**
 * The picture of one bend of an answered job: scenes gathered through the sweep, handed to stepPicture.
 * Every 3° of leaf angle, so that the tinted band strays from the true path by at most 0.0004 of its radius.
 */

import type { Drawing } from "../drawing/model.ts";
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { stageAt } from "../jobFile/stageAt.ts";
import { type Scene, stageScene } from "../motion/scene.ts";
import { type Deg, toRad } from "../units/quantity.ts";
import { leastMomentDeg } from "./leastMoment.ts";
import { stepPicture } from "./stepPicture.ts";

const STEP_DEG: Deg = 3;

function stepAt(answer: Answer, stepIndex: number): StepAnswer {
  const step = answer.order[stepIndex];
  if (step === undefined) throw new RangeError(`the order has no step ${stepIndex + 1}`);
  return step;
}

/** Scenes of a step at as many leaf angles as the picture wants. */
function scenesOf(job: Job, answer: Answer, stepIndex: number): Scene[] {
  const step = stepAt(answer, stepIndex);
  const { reached } = step;
  const count = Math.max(1, Math.ceil(reached / STEP_DEG));
  const leafDegs = Array.from({ length: count + 1 }, (_, i) => (reached * i) / count);
  const stage = stageAt(job, answer, stepIndex);
  // The moment of least clearance itself, so that what is measured ends on metal.
  const least = leastMomentDeg((leafDeg) => stageScene(stage, toRad(leafDeg)), reached, step);
  const all = least === undefined ? leafDegs : [...new Set([...leafDegs, least])].sort((a, b) => a - b);
  return scenesAt(job, answer, stepIndex, all);
}

/** Scenes of step `stepIndex` (from 0) at these leaf angles. */
function scenesAt(job: Job, answer: Answer, stepIndex: number, leafDegs: readonly Deg[]): Scene[] {
  const stage = stageAt(job, answer, stepIndex);
  return leafDegs.map((leafDeg) => stageScene(stage, toRad(leafDeg)));
}

/**
 * Picture of the step `stepIndex` (from 0) of the order.
 * @throws RangeError when the order has no such step
 */
export function drawStep(job: Job, answer: Answer, stepIndex: number): Drawing {
  const step = stepAt(answer, stepIndex);
  const scenes = scenesOf(job, answer, stepIndex);
  return stepPicture({
    scenes,
    pivot: job.brake.leaf.pivot,
    step,
    bendCount: job.part.bends.length,
    units: job.units,
    clamp: job.brake.clamp.kind,
  });
}
