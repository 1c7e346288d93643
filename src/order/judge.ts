/**
 * What the order search asks, and of whom. The search knows sets of bends, costs and clearances; the judge knows the part, the
 * brake and the metal. All that depends on the bends made before depends on their set alone, never on their order.
 */

/** Bends made, bend b (from 0) in bit b. */
export type BendSet = number;

/** A stroke of the leaf as it is held. The judge hands out objects of its own that carry what it needs besides. */
export interface Held {
  /** Which of the judge's strokes. */
  readonly stroke: number;
  /** The bends that it makes, none of them made before. */
  readonly makes: BendSet;
  /** Way round, face, fingers, as one number of the judge's: equal numbers cost the same before and after any other. */
  readonly hold: number;
  /** What it costs by itself: a whole number (`Weights` makes one of several). */
  readonly cost: number;
}

export interface Judge<S extends Held = Held> {
  readonly bends: number;
  /** The bends that each stroke makes. A stroke is one swing with the part one way round. */
  readonly strokes: readonly BendSet[];
  /** The ways in which a stroke can be held after the bends in `set`; none where it can't be made. Asked once a set. */
  held(set: BendSet, stroke: number): readonly S[];
  /** What it costs to go from one hold to the next: a whole number; depends on their `hold` alone. */
  between(before: S, after: S): number;
  /** Costs are of one rank where they round to the same multiple of this. */
  readonly costGrain: number;
  /**
   * How many things are wished of every stroke of an order, the dearest first: an order that has the first one all through
   * goes before any that has not, whatever it costs.
   */
  readonly wishes: number;
  grants(wish: number, set: BendSet, by: S): boolean;
  /** Least distance during a stroke; exact where it is less than `enoughMm`, else that or more. Infinity: nothing is measured. */
  clearanceMm(set: BendSet, by: S, enoughMm: number): number;
  /** How large a change a stroke wants that can't be made, in a measure of the judge's own. */
  wanted(set: BendSet, stroke: number): number;
  /** How such a stroke would be held. */
  blocked(stroke: number): S;
}

/** Told now and then how far a long search is; may end it. */
export interface Watch {
  /** 0 to 1. */
  progress(fraction: number): void;
  stopped(): boolean;
}

/** Thrown when the watcher ends a search. */
export class SearchStopped extends Error {
  constructor() {
    super("the search was stopped");
    this.name = "SearchStopped";
  }
}

/** How many bends a set has. */
export function countOf(set: BendSet): number {
  let n = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) n++;
  return n;
}
