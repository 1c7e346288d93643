/**
 * What the reference said of bends, second strokes and orders (answers.json, written by record.ts).
 * Contact to about 0.01° on levers over a millimetre, clearance to 0.002 mm, after a second stroke to 0.01 mm: the reference's
 * own bounds.
 */
import { readFileSync } from "node:fs";
import type { Pick } from "../contact/roughJob.ts";
import type { Handling } from "../reference/loading.ts";
import type { Member } from "../reference/pairs.ts";
import type { RandomJob } from "../reference/randomJob.ts";

type Verdict = "clear" | "tight" | "hits";
type Met = { readonly angleDeg: number; readonly members: readonly Member[] } | null;

export interface RecordedBend {
  readonly pick: Pick;
  readonly contact: Met;
  readonly clearanceMm: number | null;
  readonly load: Handling;
  readonly unload: Handling;
  readonly verdict: Verdict;
  readonly noseSetbackMm: number;
}

export interface RecordedStroke {
  readonly pick: Pick;
  /** Where the first stroke left the bend. */
  readonly leftDeg: number;
  readonly contact: Met;
  readonly clearanceMm: number | null;
  readonly load: Handling;
}

export interface RecordedSearch {
  readonly file: RandomJob;
  readonly viableOrders: number;
  readonly rank: {
    readonly verdict: Verdict;
    readonly changes: number;
    readonly swung: number;
    readonly clearance: number | null;
  } | null;
  readonly furthest: number;
}

export interface Recorded {
  readonly bends: readonly { readonly file: RandomJob; readonly states: readonly RecordedBend[] }[];
  readonly strokes: readonly { readonly file: RandomJob; readonly states: readonly RecordedStroke[] }[];
  readonly searches: readonly RecordedSearch[];
}

export const RECORDED = JSON.parse(
  readFileSync(new URL("answers.json", import.meta.url), "utf8"),
) as Recorded;
