/**
 * The answer to a job, as plain data: what `check --json` prints and the page shows.
 * Lengths in mm, angles in degrees, flats and bends counted from 1.
 */
import type { Handling } from "../contact/loading.ts";
import type { Refusal, Verdict } from "../contact/step.ts";
import type { End } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { Remedy } from "./wayOut.ts";

export type { Handling, Refusal, Verdict };

/** A piece of the brake, `finger` one of several side by side, or the part's own other side. */
export type Member = "finger" | "clamp" | "holder" | "leaf" | "bed" | "frame" | "part";

/** What the part meets or comes nearest to; `name` of a frame piece that the job names. */
export interface Met {
  readonly member: Member;
  readonly name?: string;
}

export type PointPair = readonly [x: Mm, y: Mm];

export interface ContactAnswer extends Met {
  readonly angle: Deg;
  /** The part's feature in words: "end of flat 1", "inside of bend 2"; "leaf" where the brake meets itself. */
  readonly part: string;
  readonly point: PointPair;
}

/** The run of sheet that the leaf turned up, from the new bend to its free end or to the next formed bend, outside. */
export interface FlangeAnswer {
  readonly length: Mm;
  /** Where the run ends: null at the free end, else the formed bend. */
  readonly to: number | null;
  /** Both bends of the run are square, so that callipers read it; else it runs to a mold line in the air. */
  readonly square: boolean;
}

/** Where within the doubts of springback, nose setback and nose radius a bend fails. */
export interface FailsAt {
  readonly overbend: Deg;
  /** How much farther back (+) or forward the nose stands, and how much rounder (+) or sharper it is, than the job says. */
  readonly noseSetbackBy: Mm;
  readonly noseRadiusBy: Mm;
}

/** How a bend of a section or a stroke of a whole part came out. */
export interface JudgedBend {
  readonly markedFaceUp: boolean;
  readonly angle: Deg;
  /** The likely leaf angle; all figures of the step are for it. */
  readonly overbend: Deg;
  /** Leaf angles from least to most springback; both are `overbend` where that was given. */
  readonly overbendRange: readonly [Deg, Deg];
  /**
   * Leaf angles around the likely one for which the bend folds: all of `overbendRange` where the verdict holds for it; null where
   * it does not even fold as likely.
   */
  readonly foldsFor: readonly [Deg, Deg] | null;
  /** Of a bend that folds as likely and not over all of the doubts: how far off it is where it first fails. */
  readonly failsAt?: FailsAt;
  readonly reached: Deg;
  readonly relaxesTo: Deg;
  readonly verdict: Verdict;
  /** Least distance over the sweep at the likely leaf angle; null when nothing is left to measure. */
  readonly clearance: Mm | null;
  /** The least over all of the doubts for which it folds; `clearance` where nothing is doubted. */
  readonly leastClearance: Mm | null;
  /** Nose setback for this bend; less than 0 where the nose stands over the leaf. */
  readonly setback: Mm;
}

/** One bend as it was judged. */
export interface JudgedStep extends JudgedBend {
  readonly bend: number;
  readonly clamped: End;
  /** First the point of the part, then the point of what it is nearest to. */
  readonly clearancePoints: readonly [PointPair, PointPair] | null;
  /** What the clearance was measured to. */
  readonly nearest: Met | null;
  /** What is met as likely, else first within the doubts. */
  readonly contact: ContactAnswer | null;
  /** Where the clamp is met: how much farther back the nose would have to stand for this bend to pass, if so little helps. */
  readonly noseBack?: Mm;
  readonly load: Handling;
  readonly unload: Handling;
  /** Why the bend is not even begun: it `hits`, with nothing met or measured. */
  readonly refused: Refusal | null;
  /** The same in words with the figures, to follow "because"; absent where it is begun. */
  readonly because?: string;
  /**
   * Of a bend made in two strokes: `begin` leaves it at `angle`, `finish` takes it up at `from` and bends on. Of a hem: `fold` bends it
   * as far as the leaf gets, `flatten` presses it flat under the clamp, the leaf at rest: `overbend` 0, `angle` 180.
   */
  readonly stroke?: "begin" | "finish" | "fold" | "flatten";
  readonly from?: Deg;
}

/** The same with what the layout of the part says of it. */
export interface StepAnswer extends JudgedStep {
  /** Where to sight with this end clamped, from the blank's datum edge, the free end of flat 1. */
  readonly sightLine: Mm;
  /** What to measure when the bend is made. */
  readonly flange: FlangeAnswer;
}

export interface BlankBendAnswer {
  readonly bend: number;
  readonly tangents: readonly [Mm, Mm];
  readonly sightLine: Mm;
  readonly allowance: Mm;
  readonly deduction: Mm;
}

/** A relief hole of the blank: x from the datum edge, y from the blank's start along the bend lines. */
export interface ReliefHoleAnswer {
  readonly x: Mm;
  readonly y: Mm;
  readonly diameter: Mm;
  readonly bend: number;
  readonly cutOut: number;
}

/** What the doubts of the job's flats do to the order found. */
export interface DoubtsAnswer {
  /** `tight` where some mix of the doubts hits, or none could be ruled out, or the margin is short as read. */
  readonly verdict: Verdict;
  /** The mix that stops soonest: by how much each flat is longer (+) or shorter than read. Null where none hits. */
  readonly worst: { readonly flats: readonly Mm[]; readonly bend: number } | null;
  /** Flats whose reading alone turns folding into hitting, or hitting into folding. */
  readonly deciding: readonly number[];
  readonly proved: boolean;
  readonly mixesTried: number;
}

/** A bend that the leaf leaves at `to` degrees after springback, to be closed by hand to `angle`. */
export interface HandFinishAnswer {
  readonly bend: number;
  readonly to: Deg;
  readonly angle: Deg;
  /** Thickness of what it is closed over; null where the job names none. */
  readonly filler: Mm | null;
}

export interface Answer {
  readonly verdict: Verdict;
  readonly order: readonly StepAnswer[];
  /** Exact count; past 2^53 it is a bigint and prints as its digits. Null where orders are not counted, for many bends. */
  readonly viableOrders: number | bigint | null;
  /** Strokes judged after some set of bends. */
  readonly statesChecked: number;
  /** Of many bends: too much would have to be looked at to tell whether some order folds. */
  readonly decided?: false;
  readonly blank: {
    readonly developedWidth: Mm;
    readonly bends: readonly BlankBendAnswer[];
    /** Only where the job has the key `cutOuts`. */
    readonly reliefHoles?: readonly ReliefHoleAnswer[];
  };
  /** Only where the job has the key `finishByHand`. */
  readonly finishByHand?: readonly HandFinishAnswer[];
  /** Only where the job has the key `doubts`. */
  readonly doubts?: DoubtsAnswer;
  /** Empty from `check` alone; `waysOut` finds them from the job file. */
  readonly remedies: readonly Remedy[];
  readonly warnings: readonly string[];
}
