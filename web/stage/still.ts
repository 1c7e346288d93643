/**
 * A small still of one step at its worst moment, for comparisons: painted once, no handles.
 */
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { paintFinding } from "./findings.ts";
import { inkOf } from "./ink.ts";
import { paintLeaf, paintSheet, paintStanding } from "./layers.ts";
import { cleanSheet } from "./pen.ts";
import { poseStep, worstStep } from "./stepPose.ts";
import { framed } from "./window.ts";

/** Paints step `index` of an answer at the moment that it is about; the worst step unless one is named. */
export function paintStill(
  canvas: HTMLCanvasElement,
  job: Job,
  answer: Answer,
  index = worstStep(answer),
): void {
  const pose = poseStep(job, answer, index);
  const { width, height } = canvas.parentElement!.getBoundingClientRect();
  const sheet = cleanSheet(canvas, Math.max(width, 50), Math.max(height, 50));
  if (pose === null) return;
  const ink = inkOf(canvas);
  const camera = framed(pose, sheet.width, sheet.height, 14);
  paintStanding(sheet, camera, pose, ink, { names: false });
  paintLeaf(sheet, camera, pose, pose.momentDeg, ink, false);
  paintSheet(sheet, camera, pose, pose.momentDeg, ink, false);
  paintFinding(sheet, camera, pose, pose.momentDeg, ink);
}
