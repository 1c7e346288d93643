/**
 * The answer to a job, as plain data: what `check --json` prints and the page shows.
 * Lengths in mm, angles in degrees, flats and bends counted from 1.
 */
import type { Handling } from "../contact/loading.ts";
import type { Member } from "../contact/sideChecks.ts";
import type { Refusal, Verdict } from "../contact/step.ts";
import type { End } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { Remedy } from "./wayOut.ts";

export type { Handling, Member, Refusal, Verdict };

export type PointPair = readonly [x: Mm, y: Mm];

export interface ContactAnswer {
  readonly angle: Deg;
  /** The part's feature in words: "end of flat 1", "inside of bend 2"; "leaf" where the brake meets itself. */
  readonly part: string;
  readonly member: Member;
  readonly point: PointPair;
}

export interface StepAnswer {
  readonly bend: number;
  readonly clamped: End;
  readonly markedFaceUp: boolean;
  readonly angle: Deg;
  readonly overbend: Deg;
  readonly reached: Deg;
  readonly relaxesTo: Deg;
  readonly verdict: Verdict;
  /** Least distance over the sweep; null when nothing is left to measure. */
  readonly clearance: Mm | null;
  /** First the point of the part, then the point of what it is nearest to. */
  readonly clearancePoints: readonly [PointPair, PointPair] | null;
  readonly contact: ContactAnswer | null;
  readonly load: Handling;
  readonly unload: Handling;
  /** Why the bend is not even begun: it `hits`, with nothing met or measured. */
  readonly refused: Refusal | null;
  /** Nose setback for this bend; less than 0 where the nose stands over the leaf. */
  readonly setback: Mm;
  /** Of a bend made in two strokes: `begin` leaves it at `angle`, `finish` takes it up at `from` and bends on. */
  readonly stroke?: "begin" | "finish";
  readonly from?: Deg;
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

export interface Answer {
  readonly verdict: Verdict;
  readonly order: readonly StepAnswer[];
  /** Exact count; past 2^53 it is a bigint and prints as its digits. */
  readonly viableOrders: number | bigint;
  readonly statesChecked: number;
  readonly blank: {
    readonly developedWidth: Mm;
    readonly bends: readonly BlankBendAnswer[];
    /** Only where the job has the key `cutOuts`. */
    readonly reliefHoles?: readonly ReliefHoleAnswer[];
  };
  /** Only where the job has the key `doubts`. */
  readonly doubts?: DoubtsAnswer;
  /** Empty from `check` alone; `waysOut` finds them from the job file. */
  readonly remedies: readonly Remedy[];
  readonly warnings: readonly string[];
}
