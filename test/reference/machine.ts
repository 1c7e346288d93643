/**
 * The brake of a plain job as flattened shapes: clamp in nose coordinates, bed, leaf at rest and frame in the section.
 * Finger and bar from the formulas of the model's brake section; every arc flattened to the given chord error.
 */
import { noseRunOf, roundedProfiles } from "./nose.ts";
import type { PlainBrake, PlainClamp } from "./plainJob.ts";
import { type Corner, flattenProfile, placed, type Shape } from "./shape.ts";

export interface Machine {
  clamp: Shape[];
  bed: Shape;
  leaf: Shape;
  frame: Shape[];
  /** How far the underside ends behind the foremost point. */
  noseRun: number;
  swing: number;
  pivot: readonly [number, number];
  lift: number;
  openEnds: boolean;
}

/** Corners of the clamp's polygons in nose coordinates. */
export function clampProfiles(clamp: PlainClamp): Corner[][] {
  if (clamp.type === "profile") return roundedProfiles(clamp);
  const height = clamp.type === "finger" ? clamp.height : clamp.thickness;
  const depth = clamp.type === "finger" ? clamp.footDepth : clamp.depth;
  const beta = ((clamp.noseAngle ?? 90) * Math.PI) / 180;
  const corner = clamp.noseRadius / Math.tan(beta / 2) - clamp.noseRadius;
  const top = corner - height / Math.tan(beta);
  const profiles: Corner[][] = [
    [
      [corner, 0, clamp.noseRadius],
      [top, height, clamp.topRadius ?? 0],
      [-depth, height],
      [-depth, 0],
    ],
  ];
  if (clamp.holderHeight !== undefined && clamp.holderDepth !== undefined) {
    const front = -(clamp.holderBack ?? 0);
    const back = front - clamp.holderDepth;
    const over = height + clamp.holderHeight;
    profiles.push([
      [front, height],
      [front, over],
      [back, over],
      [back, height],
    ]);
  }
  return profiles;
}

/** The whole brake, arcs flattened to `chordMm`. */
export function machineOf(brake: PlainBrake, chordMm: number): Machine {
  const flatten = (profile: readonly Corner[]) => flattenProfile(profile, chordMm);
  // A shim lies between nose and sheet: the clamp stands its thickness higher and farther back.
  const shim = brake.clamp.shim ?? 0;
  return {
    clamp: clampProfiles(brake.clamp).map((profile) => placed(flatten(profile), 0, -shim, shim)),
    bed: flatten(brake.bed.profile),
    leaf: flatten(brake.leaf.profile),
    frame: (brake.frame ?? []).map(flatten),
    noseRun: noseRunOf(brake.clamp),
    swing: brake.leaf.swing,
    pivot: brake.leaf.pivot ?? [0, 0],
    lift: brake.lift,
    openEnds: brake.openEnds,
  };
}
