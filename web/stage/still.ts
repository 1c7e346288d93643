/**
 * A small still of one step at its worst moment, for comparisons: painted once, no handles.
 */
import paper from "paper/dist/paper-core";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { fitted } from "./camera.ts";
import { inkOf } from "./ink.ts";
import { paintFinding, paintLeaf, paintSheet, paintStanding } from "./layers.ts";
import { windowOf } from "./stage.ts";
import { poseStep, worstStep } from "./stepPose.ts";

/** Paints the worst moment of an answer; returns the function that lets go of the canvas. */
export function paintStill(canvas: HTMLCanvasElement, job: Job, answer: Answer): () => void {
  const pose = poseStep(job, answer, worstStep(answer));
  const scope = new paper.PaperScope();
  scope.setup(canvas);
  scope.view.autoUpdate = false;
  // paper makes every canvas a stop for the Tab key; a still has no keys.
  canvas.removeAttribute("tabindex");
  const { width, height } = canvas.parentElement!.getBoundingClientRect();
  scope.view.viewSize = new scope.Size(Math.max(width, 50), Math.max(height, 50));
  if (pose) {
    const ink = inkOf(canvas);
    const camera = fitted(windowOf(pose), width, height, 14);
    paintStanding(scope, camera, pose, ink, false);
    paintLeaf(scope, camera, pose, pose.momentDeg, ink, false);
    paintSheet(scope, camera, pose, pose.momentDeg, ink, false);
    paintFinding(scope, camera, pose, pose.momentDeg, ink, false);
  }
  scope.view.update();
  return () => scope.project?.remove();
}
