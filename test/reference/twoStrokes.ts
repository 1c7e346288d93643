/**
 * The second stroke of a bend that was left part way, by the model of sections 5 to 7: the begun part goes in, the leaf
 * comes up to it, and the sweep goes on from there. Contact to about 0.01° on levers over a millimetre; clearance sampled,
 * then narrowed, to about 0.01 mm.
 */
import { zoneOf } from "./chain.ts";
import { clearancePairs } from "./clearance.ts";
import { contactPairs, firstOverlap } from "./contact.ts";
import { type Handling, handlingOf, overlapsBrake } from "./loading.ts";
import { distance, separation } from "./overlap.ts";
import { leafAgainst, type Member, type Pair, type Stage, stageOf } from "./pairs.ts";
import type { PlainJob, State } from "./plainJob.ts";
import { nearBend } from "./pose.ts";
import { placed, rightOf, type Shape } from "./shape.ts";
import { apexAt } from "./sheet.ts";

const INSET = 0.01;
const CONTACT_CHORD = 0.0002;
const LOADING_CHORD = 0.002;
const CLEARANCE_CHORD = 0.001;
const FINEST = (0.02 * Math.PI) / 180;
const SAMPLES = 160;

export interface SecondStroke {
  readonly contact: { readonly angleDeg: number; readonly members: readonly Member[] } | null;
  /** Null where nothing is left to measure. */
  readonly clearanceMm: number | null;
  readonly load: Handling;
  /** Why the bend is not begun at all; what is swept and measured then means nothing. */
  readonly refused: "pinched" | null;
  /** The begun part would lie in itself: no first stroke can have left it so. */
  readonly liesInItself: boolean;
}

/** A pair and the leaf angles between which it counts. */
interface Watched {
  readonly pair: Pair;
  readonly from: number;
  readonly to: number;
}

/** Moving pieces where the bend was left, in the section frame. */
function movingAt(
  stage: Stage,
  phi: number,
): readonly { readonly shape: Shape | null; readonly i: number }[] {
  const straight = nearBend(stage.movingPieces);
  return stage.movingPieces.map(({ shape }, i) => ({
    shape: stage.motion.moving(shape, phi, i < straight),
    i,
  }));
}

/** Moving pairs from the angle where the bend was left, the leaf's own from rest, and the leaf on its way up. */
function watchedOf(stage: Stage, pairs: readonly Pair[], from: number, rising: readonly Pair[]): Watched[] {
  const leafOnly = (pair: Pair) => !pair.moverIsPart || pair.speed(stage.endPhi) === 0;
  return [
    ...pairs.map((pair) => ({ pair, from: leafOnly(pair) ? 0 : from, to: stage.endPhi })),
    ...rising.map((pair) => ({ pair, from: 0, to: from })),
  ];
}

function risingPairs(stage: Stage, from: number, counts: (i: number) => boolean): Pair[] {
  return movingAt(stage, from).flatMap(({ shape, i }) =>
    shape !== null && counts(i) ? [leafAgainst(stage, shape, "leaf")] : [],
  );
}

/**
 * The begun part as it goes in: clamped side, what is still flat of the zone on either side of its arc, moving side. The arc
 * begins where the first stroke's leaf, at the overbend of `from`, left its clamped tangent.
 */
function seatedBegun(stage: Stage, bend: number, from: number, chordMm: number): Shape[] {
  const { motion, sheet, clampedShapes } = stage;
  const T = sheet.thickness;
  const { radius, theta, thetaOver, allowance, neutral } = motion.bend;
  const left = (from * thetaOver) / theta;
  const arcX = apexAt(motion.pivot, left) - (radius + T) * Math.tan(left / 2);
  const begun = {
    ...sheet,
    bends: sheet.bends.map((one, i) => (i === bend ? { ...one, theta: from } : one)),
  };
  const strip = (length: number): Shape =>
    Float64Array.of(0, INSET, length, INSET, length, T - INSET, 0, T - INSET);
  const beside = arcX - motion.tangentX;
  const beyond = allowance - from * neutral - beside;
  const endX = arcX + (radius + T) * Math.sin(from);
  const endY = (radius + T) * (1 - Math.cos(from));
  const [flatX, flatY] = [endX + beyond * Math.cos(from), endY + beyond * Math.sin(from)];
  return [
    ...clampedShapes,
    ...(beside > 0 ? [placed(strip(beside), 0, motion.tangentX, 0)] : []),
    placed(zoneOf(begun, bend, true, INSET, chordMm), 0, arcX, 0),
    ...(beyond > 0 ? [placed(strip(beyond), from, endX, endY)] : []),
    // A bend that slides out far takes some of the flat into its arc.
    ...stage.movingPieces.flatMap(({ shape }, i) => {
      const left = beyond < 0 && i < nearBend(stage.movingPieces) ? rightOf(shape, -beyond) : shape;
      return left === null ? [] : [placed(left, from, flatX, flatY)];
    }),
  ];
}

/** Least distance of the pairs, sampled and then narrowed round the best sample of each. */
function leastOf(watched: readonly Watched[]): number | null {
  let least: number | null = null;
  for (const { pair, from, to } of watched) {
    const at = (phi: number): number => {
      const shape = pair.at(phi);
      if (shape === null) return Infinity;
      const far = separation(shape, pair.convex, pair.still, pair.stillConvex);
      return far > 2 * (least ?? Infinity) ? far : distance(shape, pair.still).gap;
    };
    const width = (to - from) / SAMPLES;
    const samples = pair.speed(to) === 0 ? 0 : SAMPLES;
    let [best, where] = [Infinity, from];
    for (let i = 0; i <= samples; i++) {
      const gap = at(from + i * width);
      if (gap < best) [best, where] = [gap, from + i * width];
    }
    let [low, high] = [Math.max(from, where - width), Math.min(to, where + width)];
    for (let i = 0; samples > 0 && best < (least ?? Infinity) + 0.2 && i < 40; i++) {
      const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
      const [gapLeft, gapRight] = [at(left), at(right)];
      best = Math.min(best, gapLeft, gapRight);
      if (gapLeft < gapRight) high = right;
      else low = left;
    }
    if (best < Infinity) least = Math.min(least ?? Infinity, best);
  }
  return least;
}

/** Checks the stroke that finishes `state.bend`, left at `fromDeg`, after the bends in `state.done`. */
export function checkSecondStroke(job: PlainJob, state: State, fromDeg: number): SecondStroke {
  const from = (fromDeg * Math.PI) / 180;
  const stage = stageOf(job, state, INSET, CONTACT_CHORD);
  const watched = watchedOf(
    stage,
    contactPairs(stage),
    from,
    risingPairs(stage, from, () => true),
  );
  const self = watched.filter(({ pair }) => pair.member === "part");
  const liesInItself = self.some(({ pair }) => firstOverlap(pair, from, FINEST, from) !== null);
  const first = watched.reduce((so, one) => {
    const phi = firstOverlap(one.pair, one.to, FINEST, one.from);
    return phi !== null && phi < so ? phi : so;
  }, Infinity);
  const past = first + (1e-3 * Math.PI) / 180;
  const members = watched
    .filter(
      (one) => past >= one.from && first <= one.to && firstOverlap(one.pair, past, FINEST, past) !== null,
    )
    .map(({ pair }) => pair.member);
  const coarse = stageOf(job, state, INSET, LOADING_CHORD);
  const load = handlingOf(
    coarse,
    seatedBegun(coarse, state.bend, from, LOADING_CHORD),
    overlapsBrake(stage, seatedBegun(stage, state.bend, from, CONTACT_CHORD)),
  );
  const contact = first < Infinity ? { angleDeg: (first * 180) / Math.PI, members } : null;
  const clearanceMm = contact ? 0 : clearanceOf(job, state, from);
  return { contact, clearanceMm, load, refused: stage.motion.bend.pinched ? "pinched" : null, liesInItself };
}

function clearanceOf(job: PlainJob, state: State, from: number): number | null {
  const stage = stageOf(job, state, 0, CLEARANCE_CHORD);
  const offLeaf = (i: number) => {
    const { run, besideRun } = stage.movingPieces[i]!;
    return !run && !besideRun;
  };
  return leastOf(watchedOf(stage, clearancePairs(stage), from, risingPairs(stage, from, offLeaf)));
}
