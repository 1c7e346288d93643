/**
 * The stage while the part is on its way into a step: the clamp open, leaf at rest, the view gliding from the step before.
 */
import type { Camera } from "./camera.ts";
import type { Ink } from "./ink.ts";
import { fillSheet, paintLeaf, paintStanding } from "./layers.ts";
import { pathOf, type Sheet } from "./pen.ts";
import type { StepPose } from "./stepPose.ts";
import { sheetOnTheWay } from "./turnOver.ts";

export interface Turning {
  /** The step before; null for the flat blank. */
  readonly from: StepPose | null;
  /** How that was looked at. */
  readonly camera: Camera;
  /** Of the way, from 0 to 1. */
  readonly share: number;
}

/** Paints both canvases at a share of the way into `pose`. */
export function paintTurning(
  back: Sheet,
  front: Sheet,
  pose: StepPose,
  { turning, camera, ink }: { readonly turning: Turning; readonly camera: Camera; readonly ink: Ink },
): void {
  const { from, share } = turning;
  const gliding = from === null ? camera : between(turning.camera, camera, share);
  const raisedMm = Math.max(0.01, pose.job.brake.liftMm * Math.sin(Math.PI * share));
  paintStanding(back, gliding, pose, ink, { names: false, raisedMm });
  paintLeaf(front, gliding, pose, 0, ink, false);
  fillSheet(front, pathOf(gliding, sheetOnTheWay(from, pose, share)), ink);
}

/** The camera on its way from one to another. */
function between(from: Camera, to: Camera, share: number): Camera {
  const eased = share * share * (3 - 2 * share);
  const mix = (a: number, b: number) => a + (b - a) * eased;
  return {
    scale: mix(from.scale, to.scale),
    originX: mix(from.originX, to.originX),
    originY: mix(from.originY, to.originY),
  };
}
