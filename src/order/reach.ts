/**
 * Which sets of bends are reached from the flat blank, through which strokes, and in how many orders: one pass over all sets.
 * What a set can do next does not depend on the order in which it was made, so each is looked at once.
 */
import { type BendSet, type Held, type Judge, SearchStopped, type Watch } from "./judge.ts";

/** Per set that is reached, lower ones first: the strokes that can be made next, as they are held. */
export type Ways<S extends Held> = ReadonlyMap<BendSet, readonly S[]>;

/** The watcher is asked after so many sets. */
const SETS_A_LOOK = 64;

/** Looks at every set that is reached; how many strokes were judged. Throws SearchStopped when the watcher says so. */
export function reachFrom<S extends Held>(
  judge: Judge<S>,
  watch?: Watch,
): { readonly ways: Ways<S>; readonly judged: number } {
  const { strokes, bends } = judge;
  const sets = 2 ** bends;
  const reached = new Uint8Array(sets);
  reached[0] = 1;
  const ways = new Map<BendSet, readonly S[]>();
  let judged = 0;
  for (let set = 0; set < sets; set++) {
    if (watch && set % SETS_A_LOOK === 0) {
      watch.progress(set / sets);
      if (watch.stopped()) throw new SearchStopped();
    }
    if (!reached[set]) continue;
    const next: S[] = [];
    for (let stroke = 0; stroke < strokes.length; stroke++) {
      const makes = strokes[stroke]!;
      if ((set & makes) !== 0) continue;
      judged++;
      for (const by of judge.held(set, stroke)) next.push(by);
      if (next.at(-1)?.stroke === stroke) reached[set | makes] = 1;
    }
    ways.set(set, next);
  }
  return { ways, judged };
}

/** In how many orders of strokes a set is reached, however they are held. */
export function countOrders<S extends Held>(ways: Ways<S>, whole: BendSet): bigint {
  const orders = new Map<BendSet, bigint>([[0, 1n]]);
  for (const [set, next] of ways) {
    const before = orders.get(set)!;
    next.forEach(({ stroke, makes }, i) => {
      if (next[i - 1]?.stroke === stroke) return;
      orders.set(set | makes, (orders.get(set | makes) ?? 0n) + before);
    });
  }
  return orders.get(whole) ?? 0n;
}
