/**
 * The answer to a job, as plain data: what `check --json` prints and the page shows.
 * Lengths in mm, angles in degrees, flats and bends counted from 1.
 */
import type { Handling } from "../contact/loading.ts";
import type { Member } from "../contact/sideChecks.ts";
import type { Verdict } from "../contact/step.ts";
import type { End } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { Remedy } from "./wayOut.ts";

export type { Handling, Member, Verdict };

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
  /** Nose setback for this bend. */
  readonly setback: Mm;
}

export interface BlankBendAnswer {
  readonly bend: number;
  readonly tangents: readonly [Mm, Mm];
  readonly sightLine: Mm;
  readonly allowance: Mm;
  readonly deduction: Mm;
}

export interface Answer {
  readonly verdict: Verdict;
  readonly order: readonly StepAnswer[];
  /** Exact count; past 2^53 it is a bigint and prints as its digits. */
  readonly viableOrders: number | bigint;
  readonly statesChecked: number;
  readonly blank: { readonly developedWidth: Mm; readonly bends: readonly BlankBendAnswer[] };
  /** Empty from `check` alone; `waysOut` finds them from the job file. */
  readonly remedies: readonly Remedy[];
  readonly warnings: readonly string[];
}
