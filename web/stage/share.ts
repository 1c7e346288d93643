/**
 * One moment of a whole order on a canvas of its own, for orders played side by side: a step, and how much of its swing is done.
 */
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { paintFinding } from "./findings.ts";
import { inkOf } from "./ink.ts";
import { paintLeaf, paintMarkedFace, paintSheet, paintStanding } from "./layers.ts";
import { cleanSheet } from "./pen.ts";
import { poseStep } from "./stepPose.ts";
import { framed } from "./window.ts";

/** Paints step `index` with the leaf at `share` of its way, from 0 to 1; all steps alike keep the first one's scale. */
export function paintShare(
  canvas: HTMLCanvasElement,
  job: Job,
  answer: Answer,
  index: number,
  share: number,
): void {
  const pose = poseStep(job, answer, index);
  const { width, height } = canvas.parentElement!.getBoundingClientRect();
  const sheet = cleanSheet(canvas, Math.max(width, 50), Math.max(height, 50));
  if (pose === null) return;
  const ink = inkOf(canvas);
  const camera = framed(pose, sheet.width, sheet.height, 14);
  const leafDeg = pose.step.reached * share;
  paintStanding(sheet, camera, pose, ink, { names: false });
  paintLeaf(sheet, camera, pose, leafDeg, ink, false);
  paintSheet(sheet, camera, pose, leafDeg, ink, false);
  paintMarkedFace(sheet, camera, pose, leafDeg, ink);
  paintFinding(sheet, camera, pose, leafDeg, ink);
}
