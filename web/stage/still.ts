/**
 * One moment of an answer on a canvas of its own, without handles: the worst one, for comparisons, or any of a whole order, for
 * orders played side by side.
 */
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { paintFinding } from "./findings.ts";
import { inkOf } from "./ink.ts";
import { paintLeaf, paintMarkedFace, paintSheet, paintStanding } from "./layers.ts";
import { cleanSheet } from "./pen.ts";
import { poseStep, worstStep } from "./stepPose.ts";
import { framed } from "./window.ts";

/** Paints the worst step at the moment that it is about, or step `index` with the leaf at `share` of its way, from 0 to 1. */
export function paintStill(
  canvas: HTMLCanvasElement,
  { job, answer }: { readonly job: Job; readonly answer: Answer },
  moment?: { readonly index: number; readonly share: number },
): void {
  const pose = poseStep(job, answer, moment?.index ?? worstStep(answer));
  const { width, height } = canvas.parentElement!.getBoundingClientRect();
  const sheet = cleanSheet(canvas, Math.max(width, 50), Math.max(height, 50));
  if (pose === null) return;
  const ink = inkOf(canvas);
  const camera = framed(pose, sheet.width, sheet.height, 14);
  const leafDeg = moment ? pose.step.reached * moment.share : pose.momentDeg;
  paintStanding(sheet, camera, pose, ink, { names: false });
  paintLeaf(sheet, camera, pose, leafDeg, ink, false);
  paintSheet(sheet, camera, pose, leafDeg, ink, false);
  paintMarkedFace(sheet, camera, pose, leafDeg, ink);
  paintFinding(sheet, camera, pose, leafDeg, ink);
}
