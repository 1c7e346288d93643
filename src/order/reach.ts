/**
 * Which sets of bends are reached from the flat blank, through which strokes, and in how many orders: one pass over all sets.
 * What a set can do next does not depend on the order in which it was made, so each is looked at once.
 */
import { type BendSet, type Held, type Judge, SearchStopped, type Watch } from "./judge.ts";

/** Per set that is reached, lower ones first: the strokes that can be made next, as they are held. */
export type Ways<S extends Held> = ReadonlyMap<BendSet, readonly S[]>;

export interface Reach<S extends Held> {
  readonly ways: Ways<S>;
  /** In how many orders each set is reached; one is counted by its strokes, however they are held. */
  readonly orders: ReadonlyMap<BendSet, bigint>;
  /** How many strokes were judged. */
  readonly judged: number;
}

/** The watcher is asked after so many sets. */
const SETS_A_LOOK = 64;

/** Looks at every set that is reached. Throws SearchStopped when the watcher says so. */
export function reachFrom<S extends Held>(judge: Judge<S>, watch?: Watch): Reach<S> {
  const { strokes } = judge;
  const sets = 2 ** judge.bends;
  const ways = new Map<BendSet, readonly S[]>();
  const orders = new Map<BendSet, bigint>([[0, 1n]]);
  let judged = 0;
  for (let set = 0; set < sets; set++) {
    if (watch && set % SETS_A_LOOK === 0) {
      watch.progress(set / sets);
      if (watch.stopped()) throw new SearchStopped();
    }
    const before = orders.get(set);
    if (before === undefined) continue;
    const next: S[] = [];
    for (let stroke = 0; stroke < strokes.length; stroke++) {
      const makes = strokes[stroke]!;
      if ((set & makes) !== 0) continue;
      judged++;
      const held = judge.held(set, stroke);
      if (held.length === 0) continue;
      next.push(...held);
      orders.set(set | makes, (orders.get(set | makes) ?? 0n) + before);
    }
    ways.set(set, next);
  }
  return { ways, orders, judged };
}
