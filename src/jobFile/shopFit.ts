/**
 * What `fit` answers, as plain data: lengths in mm, bends from 1, parts and brakes by their place from 0. ways/shopFit.ts
 * works it out.
 */
import type { Deg, Mm } from "../units/quantity.ts";
import type { OrderedBend } from "./change.ts";
import type { JobFile } from "./schema.ts";

/** One part on one brake. */
export interface FitCell {
  /** `unfit`: longer or stronger than the brake is rated for, or a radius that its nose can't form, whatever the order. */
  readonly verdict: "clear" | "tight" | "hits" | "unfit";
  /** Null where nothing is near, or nothing was measured. */
  readonly clearance: Mm | null;
  /** The bend that comes nearest, or the one that hits; null where there is none. */
  readonly worstBend: number | null;
  /** Leaf angle at which the worst bend stops; null where it does not. */
  readonly stopsAt: Deg | null;
  /** The order that was found; empty where it is unfit. */
  readonly order: readonly OrderedBend[];
  /** Why it is unfit, as a sentence. */
  readonly because: string | null;
}

export interface ShopBar {
  readonly thinnest: Mm;
  readonly thickest: Mm;
  readonly stock: readonly Mm[];
  readonly overhang: Mm;
  readonly length: Mm;
  /** Parts that it makes. */
  readonly makes: readonly number[];
  /** The planned brake, as a job file has it. */
  readonly brake: JobFile["brake"];
}

export interface ShopFit {
  readonly parts: readonly string[];
  readonly brakes: readonly string[];
  /** A row a part, a cell a brake. */
  readonly cells: readonly (readonly FitCell[])[];
  /** Parts that no brake of the shop makes. */
  readonly unmade: readonly number[];
  /** One clamp bar for as many of them as one bar can make; null where it makes none. */
  readonly bar: ShopBar | null;
}

/** Whether the part folds there. */
export function isMade({ verdict }: FitCell): boolean {
  return verdict === "clear" || verdict === "tight";
}
