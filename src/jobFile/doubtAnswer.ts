/**
 * What doubtful readings do to an order, as plain data: flats and bends from 0, lengths in mm. answer/doubt.ts works it out.
 */
import type { Mm } from "../units/quantity.ts";

export interface DoubtAnswer {
  /** `hits`: it hits as read. `tight`: some mix hits, or could not be ruled out, or the margin is short as read. */
  readonly verdict: "clear" | "tight" | "hits";
  /** The mix that stops soonest: by how much each flat is longer (+) or shorter than read. Null where none hits. */
  readonly worst: { readonly offMm: readonly Mm[]; readonly bend: number } | null;
  /** Flats, from 0, whose reading alone turns folding into hitting or hitting into folding. */
  readonly deciding: readonly number[];
  /** Whether nothing was left open; false only with `tight` and no worst mix. */
  readonly proved: boolean;
  readonly mixesTried: number;
}
