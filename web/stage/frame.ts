/**
 * What the stage tells of each frame that it painted.
 */
import type { Placed } from "../drafting/asked.ts";
import type { Camera } from "./camera.ts";

/** What a frame looked like, for the words and labels around the canvas. */
export interface Frame {
  readonly pulledDeg: number;
  readonly heldDeg: number;
  /** Dimensions and numbers, by key: "flat 0", "bend 0", "angle"; and the words of the "finding". */
  readonly labels: readonly Placed[];
  /** What of the section the canvas shows. */
  readonly camera: Camera;
  readonly width: number;
  readonly height: number;
}
