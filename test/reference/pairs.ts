/**
 * Pairs of shapes that may come near each other while the leaf swings: a mover, seen in the frame in which the other
 * stands still, with a bound on its speed. Contact (inset faces) and clearance (true faces) list their own pairs.
 */
import { chainOf, type Piece } from "./chain.ts";
import { type Machine, machineOf } from "./machine.ts";
import { isConvex } from "./overlap.ts";
import type { PlainJob, State } from "./plainJob.ts";
import { Motion, nearBend } from "./pose.ts";
import { placed, type Shape } from "./shape.ts";
import { type Sheet, sheetOf } from "./sheet.ts";

export type Member = "clamp" | "bed" | "frame" | "leaf" | "part";

export interface Pair {
  member: Member;
  /** The moving shape at φ, null where the bend zone has taken it; constant where `speed` is 0. */
  at: (phi: number) => Shape | null;
  convex: boolean;
  /** What stands still. */
  still: Shape;
  stillConvex: boolean;
  /** Bound of the mover's speed up to φ, mm per radian. */
  speed: (phi: number) => number;
  /** From the frame of the pair to the section frame at φ. */
  toSection: (x: number, y: number, phi: number) => [number, number];
  /** True where the mover is the sheet and the other is met by it; false where the leaf swings against the sheet. */
  moverIsPart: boolean;
}

/** One bend in one state, with the brake closed on it. */
export interface Stage {
  machine: Machine;
  sheet: Sheet;
  motion: Motion;
  clampedPieces: Piece[];
  movingPieces: Piece[];
  /** Clamped side in the section frame, in step with `clampedPieces`. */
  clampedShapes: Shape[];
  clamp: Shape[];
  noseSetback: number;
  /** Largest leaf angle that is looked at, min(overbend angle, swing), in radians. */
  endPhi: number;
  overbendPastSwing: boolean;
}

/** Sets the stage: `inset` 0.01 for contact and loading, 0 for clearance. */
export function stageOf(job: PlainJob, state: State, inset: number, chordMm: number): Stage {
  const machine = machineOf(job.brake, chordMm);
  const sheet = sheetOf(job);
  const motion = new Motion(sheet, state.bend, machine);
  const clampedPieces = chainOf(sheet, state, "clamped", inset, chordMm);
  const movingPieces = chainOf(sheet, state, "moving", inset, chordMm);
  const { noseSetback } = motion.bend;
  const swing = (machine.swing * Math.PI) / 180;
  return {
    machine,
    sheet,
    motion,
    clampedPieces,
    movingPieces,
    clampedShapes: clampedPieces.map((piece) => motion.clamped(piece.shape)),
    clamp: machine.clamp.map((shape) => placed(shape, 0, -noseSetback, sheet.thickness)),
    noseSetback,
    endPhi: Math.min(motion.bend.thetaOver, swing),
    overbendPastSwing: motion.bend.thetaOver > swing + 1e-9,
  };
}

const asItStands = (x: number, y: number): [number, number] => [x, y];
const standsStill = () => 0;

/** Largest distance of a shape from a point. */
function reachOf(shape: Shape, x: number, y: number): number {
  let reach = 0;
  for (let i = 0; i < shape.length; i += 2)
    reach = Math.max(reach, Math.hypot(shape[i]! - x, shape[i + 1]! - y));
  return reach;
}

/** A moving piece against something that stands in the section. */
export function movingAgainst(stage: Stage, i: number, still: Shape, member: Member): Pair {
  const { motion, movingPieces } = stage;
  const piece = movingPieces[i]!;
  const onFace = i < nearBend(movingPieces);
  const slideMost = Math.max(Math.abs(motion.slide(0)), Math.abs(motion.slide(stage.endPhi)));
  const reach = reachOf(piece.shape, 0, 0) + slideMost + motion.bend.setbackOut;
  return {
    member,
    at: (phi) => motion.moving(piece.shape, phi, onFace),
    convex: piece.convex,
    still,
    stillConvex: isConvex(still),
    speed: (phi) => motion.speed(reach, phi),
    toSection: asItStands,
    moverIsPart: true,
  };
}

/** A moving piece against the leaf, seen from the leaf. */
export function movingAgainstLeaf(stage: Stage, i: number): Pair {
  const { motion, movingPieces, machine } = stage;
  const piece = movingPieces[i]!;
  const onFace = i < nearBend(movingPieces);
  return {
    member: "leaf",
    at: (phi) => motion.onLeaf(piece.shape, phi, onFace),
    convex: piece.convex,
    still: machine.leaf,
    stillConvex: isConvex(machine.leaf),
    speed: (phi) => motion.slideSpeed(phi),
    toSection: (x, y, phi) => {
      const at = motion.swung(Float64Array.of(x, y), phi);
      return [at[0]!, at[1]!];
    },
    moverIsPart: true,
  };
}

/** The leaf against something that stands in the section. */
export function leafAgainst(stage: Stage, still: Shape, member: Member): Pair {
  const { motion, machine } = stage;
  const reach = reachOf(machine.leaf, machine.pivot[0], machine.pivot[1]);
  return {
    member,
    at: (phi) => motion.swung(machine.leaf, phi),
    convex: isConvex(machine.leaf),
    still,
    stillConvex: isConvex(still),
    speed: () => reach,
    toSection: asItStands,
    moverIsPart: false,
  };
}

/** Two shapes of which neither moves. */
export function bothStill(shape: Shape, still: Shape, member: Member): Pair {
  return {
    member,
    at: () => shape,
    convex: isConvex(shape),
    still,
    stillConvex: isConvex(still),
    speed: standsStill,
    toSection: asItStands,
    moverIsPart: true,
  };
}
