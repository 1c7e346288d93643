/**
 * A way out as plain data: what `check --json` lists under `remedies` and the page shows with a button.
 * Lengths in mm, angles in degrees, flats and bends from 1. `changes` can be applied to the job file (changeFile.ts).
 */

import type { Deg, Mm } from "../units/quantity.ts";
import type { Change, OrderedBend } from "./change.ts";
import type { JobFile } from "./schema.ts";
import type { Limit, WayKind } from "./way.ts";

/** Another brake in the place of this one, as a job file describes it. */
export interface BrakeChange {
  readonly kind: "brake";
  readonly brake: JobFile["brake"];
}

export type FileChange = Change | BrakeChange;

export interface WayOut {
  readonly kind: WayKind | "otherBrake" | "shopBar";
  readonly sentence: string;
  /** A second sentence: why, or what to mind. */
  readonly because?: string;
  readonly changes: readonly FileChange[];
  /** How the changed job comes out, and its least clearance: null where nothing is near. */
  readonly verdict: "clear" | "tight";
  readonly clearance: Mm | null;
  readonly order: readonly OrderedBend[];
  readonly cost: number;
  /** Flat or bend that changes. */
  readonly index?: number;
  /** The flat or bend that may be changed in its place, in a part that reads the same from both ends. */
  readonly twin?: number;
  /** Of two flats changed together: the other one. */
  readonly also?: number;
  /** The figure as it is and as it should be, in mm or degrees; of a flat, by how much it changes. */
  readonly from?: number;
  readonly to?: number;
  /** Where that is tight: the next round figure from which the job is clear, if it is near. */
  readonly clearFrom?: number;
  /** Of a bend made in two strokes: the least angle at which it may be left; `limit` has the largest. */
  readonly notUnder?: Deg;
  readonly limit?: Limit;
  /** True where less may do in another order: not all of them were tried at one step less. */
  readonly thisOrderOnly?: true;
  /** True of a way that leaves under 0.1 mm to spare, or brings a warning that the job has not: it comes after all others. */
  readonly last?: true;
  /** Of a bend left open: how far to swing the leaf, what is left to close, and over what. */
  readonly leftOpen?: { readonly leafTo: Deg; readonly toClose: Deg; readonly filler: Mm | null };
  /** Of a bar to be made: how thin and thick it may be, how far it must stand out in front of its holder. */
  readonly bar?: {
    readonly thinnest: Mm | null;
    readonly thickest: Mm;
    readonly overhang: Mm;
    readonly stock: readonly Mm[];
  };
}

/** Nothing that was tried helps, or not everything was tried; or the recipe for doing without the brake. */
export interface NoWayOut {
  readonly kind: "none" | "untried" | "byHand";
  readonly sentence: string;
}

export type Remedy = WayOut | NoWayOut;

/** Whether it is a change that can be made, and no word of why there is none. */
export function isWayOut(remedy: Remedy): remedy is WayOut {
  return remedy.kind !== "none" && remedy.kind !== "untried" && remedy.kind !== "byHand";
}
