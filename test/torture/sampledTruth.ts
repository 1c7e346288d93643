/**
 * One bend judged by the engine, held against the reference's own shapes at single leaf angles: no overlap before the
 * contact, overlap right after it, nowhere nearer than the clearance. Cheaper than the whole reference by far, so that
 * many cases can be tried; what it finds it finds at the angles tried only.
 */
import type { Step } from "../../src/contact/step.ts";
import type { Piece } from "../reference/chain.ts";
import { clearancePairs } from "../reference/clearance.ts";
import { contactPairs } from "../reference/contact.ts";
import { depthOf, distance, overlaps, roomBetween, separation } from "../reference/overlap.ts";
import { leafAgainst, type Pair, type Stage, stageOf } from "../reference/pairs.ts";
import type { PlainJob, State } from "../reference/plainJob.ts";
import { nearBend } from "../reference/pose.ts";
import { placed, type Shape } from "../reference/shape.ts";

const INSET_MM = 0.01;
const CHORD_MM = 0.0005;
/** Where bodies close in by less than a micrometre in a degree, or graze by less, the finer ones tell. */
const FINE_CHORDS_MM = [0.00004, 0.0000025, 1e-8];
/** Deeper than rounding puts a corner that only touches. */
const DEEP_MM = 1e-8;
/** What two answers may differ by: the bounds of the proof. */
export const ANGLE_RAD = (0.05 * Math.PI) / 180;
export const LENGTH_MM = 0.02;
/** Overlaps that a shift this small undoes are touching, flattened arcs and all. */
const SHALLOW_MM = 0.002;
const SHARES = [0, 0.13, 0.29, 0.41, 0.57, 0.68, 0.83, 0.94, 0.999];

function meets(pair: Pair, shape: Shape): boolean {
  return sharesArea(shape, pair) && !shallow(shape, pair);
}

function sharesArea(shape: Shape, pair: Pair): boolean {
  return roomBetween(shape, pair.convex, pair.still, pair.stillConvex) < 0;
}

function shallow(shape: Shape, pair: Pair): boolean {
  for (let i = 0; i < 12; i++) {
    const way = (i * Math.PI) / 6;
    const moved = placed(shape, 0, SHALLOW_MM * Math.cos(way), SHALLOW_MM * Math.sin(way));
    if (!overlaps(moved, pair.still)) return true;
  }
  return false;
}

function allPairs(stage: Stage): Pair[] {
  const { machine, clamp } = stage;
  const alone = [
    leafAgainst(stage, machine.bed, "bed"),
    ...clamp.map((body) => leafAgainst(stage, body, "clamp")),
  ];
  return [...contactPairs(stage), ...alone];
}

/** A pair that overlaps at φ by more than a touch. */
function metAt(pairs: readonly Pair[], phi: number): Pair | undefined {
  return pairs.find((pair) => {
    const shape = pair.at(phi);
    return shape !== null && meets(pair, shape);
  });
}

/** What disagrees, in a sentence; undefined where nothing does. */
export function sampledFault(file: PlainJob, state: State, step: Step): string | undefined {
  const stage = stageOf(file, state, INSET_MM, CHORD_MM);
  if (stage.motion.bend.pinched) return `pinched, ${said(step)}`;
  const pairs = allPairs(stage);
  const contactRad = step.contact?.leafAngleRad;
  const freeUntil = contactRad === undefined ? stage.endPhi : contactRad - ANGLE_RAD;
  if (freeUntil > 0) {
    for (const part of SHARES) {
      const met = metAt(pairs, part * freeUntil);
      if (met) return `overlap with ${met.member} at ${deg(part * freeUntil)}, ${said(step)}`;
    }
  }
  if (contactRad !== undefined) {
    if (sharesAreaAfter(pairs, contactRad, stage.endPhi)) return undefined;
    return `nothing met at ${deg(contactRad)}, ${said(step)}`;
  }
  if (step.clearanceMm === undefined) return undefined;
  for (const pair of clearancePairs(stageOf(file, state, 0, CHORD_MM))) {
    for (const part of SHARES) {
      const shape = pair.at(part * stage.endPhi);
      if (shape === null) continue;
      if (separation(shape, pair.convex, pair.still, pair.stillConvex) > step.clearanceMm) continue;
      const { gap } = distance(shape, pair.still);
      if (gap < step.clearanceMm - LENGTH_MM)
        return `only ${gap} from ${pair.member} at ${deg(part * stage.endPhi)}, ${said(step)}`;
      if (pair.speed(1) === 0) break;
    }
  }
  return undefined;
}

/** Right after a contact some area is shared, however thin: touching alone is no contact. */
function sharesAreaAfter(pairs: readonly Pair[], contactRad: number, endRad: number): boolean {
  return [0.001, 0.02, 0.2, 0.6, 1].some((past) => {
    const phi = Math.min(endRad, contactRad + past * ANGLE_RAD);
    return pairs.some((pair) => {
      const shape = pair.at(phi);
      return shape !== null && sharesArea(shape, pair);
    });
  });
}

/** Whether the reference's shapes, arcs flattened finely, share some area right after the angle. */
export function meetsRightAfter(file: PlainJob, state: State, contactRad: number): boolean {
  return FINE_CHORDS_MM.some((chordMm) => {
    const stage = stageOf(file, state, INSET_MM, chordMm);
    const pairs = allPairs(stage);
    if (sharesAreaAfter(pairs, contactRad, stage.endPhi)) return true;
    // A corner may lie in a small round of a large body, and share next to nothing with it.
    const phi = Math.min(stage.endPhi, contactRad + ANGLE_RAD / 2);
    return pairs.some((pair) => {
      const shape = pair.at(phi);
      if (shape === null || separation(shape, pair.convex, pair.still, pair.stillConvex) > 0) return false;
      return Math.max(depthOf(shape, pair.still), depthOf(pair.still, shape)) > DEEP_MM;
    });
  });
}

/** Whether between two angles nothing is met by more than a touch. */
export function onlyTouches(file: PlainJob, state: State, fromRad: number, toRad: number): boolean {
  const stage = stageOf(file, state, INSET_MM, CHORD_MM);
  const pairs = allPairs(stage);
  const steps = 24;
  for (let i = 0; i <= steps; i++) if (metAt(pairs, fromRad + ((toRad - fromRad) * i) / steps)) return false;
  return true;
}

/**
 * What the bend zone takes of the moving side at some angle: less than its first flat; the whole flat, with more of the
 * sheet beyond; or all there is up to the free end. Of the last the model does not say what stands there (a flange that
 * short can't be bent), and the answers are not compared.
 */
export function zoneTakes(file: PlainJob, state: State): "less" | "flat" | "all" {
  const { motion, sheet, movingPieces, endPhi } = stageOf(file, state, 0, 1);
  const { radius } = motion.bend;
  const onFace = movingPieces.slice(0, nearBend(movingPieces));
  const lengthOf = ({ kind, index }: Piece) =>
    kind === "flat" ? sheet.flats[index]! : sheet.bends[index]!.allowance;
  const flat = lengthOf(onFace[0]!);
  const run = onFace.reduce((sum, piece) => sum + lengthOf(piece), 0);
  let most = 0;
  for (let i = 0; i <= 64; i++) {
    const phi = (endPhi * i) / 64;
    most = Math.max(most, (radius + sheet.thickness) * Math.tan(phi / 2) - motion.slide(phi));
  }
  if (most <= flat - LENGTH_MM) return "less";
  return onFace.length === movingPieces.length && most > run - LENGTH_MM ? "all" : "flat";
}

const deg = (rad: number) => `${((rad * 180) / Math.PI).toFixed(4)}°`;

function said(step: Step): string {
  if (!step.contact) return `engine: no contact, clearance ${step.clearanceMm}`;
  return `engine: ${step.contact.member} (tag ${step.contact.tag}) at ${deg(step.contact.leafAngleRad)}`;
}
