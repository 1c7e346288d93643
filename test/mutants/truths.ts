/**
 * What the reference said of bends and searches (truths.json, written by record.ts).
 * Contact to about 0.01° on levers over a millimetre, clearance to 0.002 mm: the reference's own bounds.
 */
import { readFileSync } from "node:fs";
import type { Pick } from "../contact/roughJob.ts";
import type { Handling } from "../reference/loading.ts";
import type { Member } from "../reference/pairs.ts";
import type { RandomJob } from "../reference/randomJob.ts";

type Verdict = "clear" | "tight" | "hits";

export interface BendTruth {
  readonly pick: Pick;
  readonly contact: { readonly angleDeg: number; readonly members: readonly Member[] } | null;
  readonly clearanceMm: number | null;
  readonly load: Handling;
  readonly unload: Handling;
  readonly verdict: Verdict;
  readonly noseSetbackMm: number;
}

export interface Truths {
  readonly bends: readonly { readonly file: RandomJob; readonly states: readonly BendTruth[] }[];
  readonly searches: readonly {
    readonly file: RandomJob;
    readonly viableOrders: number;
    readonly rank: {
      readonly verdict: Verdict;
      readonly changes: number;
      readonly clearance: number | null;
    } | null;
    readonly furthest: number;
  }[];
}

export const TRUTHS = JSON.parse(readFileSync(new URL("truths.json", import.meta.url), "utf8")) as Truths;
