/**
 * A block of a printed page: so high, and put where the page has room. Page millimetres.
 */
import type { Mm } from "../units/quantity.ts";
import type { Mark } from "./model.ts";
import type { Placed } from "./page.ts";

export interface Block {
  readonly heightMm: Mm;
  /** Stands once on each page over the blocks that share it; these follow each other without a gap, as a table's rows do. */
  readonly head?: Block;
  /** Its marks, and drawings placed beside them, with its top edge at `topMm` and the left margin at `leftMm`. */
  readonly put: (
    leftMm: Mm,
    topMm: Mm,
  ) => { readonly marks: readonly Mark[]; readonly placed?: readonly Placed[] };
}
