/**
 * The order search. Up to as many bends as are ranked: the best of all orders and how many there are, or where none is, the one that
 * gets furthest: most bends made, then the blocked stroke that wants the least change, then the best rank. Beyond: an order
 * that can be made, with all that is wished if there is such a one; or the proof that there is none, and the order that makes most
 * bends; or neither, where that would take too long.
 */
import { bestThrough, type Finding, type FindOptions, findOrder, OrderFinder } from "./findOrder.ts";
import { type BendSet, countOf, type Held, type Judge, type Watch } from "./judge.ts";
import { bestWays, type Way } from "./rank.ts";
import { countOrders, reachFrom } from "./reach.ts";

export interface Found<S extends Held> {
  /** `unknown`: it would take too long to tell. */
  readonly kind: "order" | "none" | "unknown";
  /** All strokes of an order that can be made; else those of the one that gets furthest, the last of them blocked. */
  readonly order: readonly S[];
  /** How many orders can be made; null where they are not counted. */
  readonly orders: bigint | null;
  /** Strokes judged after some set of bends. */
  readonly judged: number;
}

/** So many strokes may be judged for a part of many bends each time that it is looked for: some tenths of a second. */
const MOST_JUDGED = 400_000;
/** How deep an order goes that can't be finished is first tried so long, in multiples of n². */
const DEEP = 16;
const SAME_CHANGE = 1e-9;
/** Of more sets than these that get equally far only those of the best rank are weighed by the change that they want. */
const MOST_WEIGHED = 40;

/** Orders of up to `ranked` bends are ranked and counted. Throws SearchStopped when the watcher says so. */
export function searchOrders<S extends Held>(judge: Judge<S>, ranked: number, watch?: Watch): Found<S> {
  if (judge.bends > ranked) return searchMany(judge, watch);
  const { ways, judged } = reachFrom(judge, watch);
  const whole = 2 ** judge.bends - 1;
  if (ways.has(whole)) {
    const [best] = bestWays(judge, ways, new Set([whole]));
    return { kind: "order", order: best!.strokes, orders: countOrders(ways, whole), judged };
  }
  const most = Math.max(...[...ways.keys()].map(countOf));
  const furthest = [...ways.keys()].filter((set) => countOf(set) === most);
  const goals = new Set(furthest.length > MOST_WEIGHED ? furthest : leastWanted(judge, furthest));
  return { kind: "none", order: blockedAfter(judge, bestWays(judge, ways, goals)), orders: 0n, judged };
}

/** Of sets that get equally far those that are left with the stroke that wants the least change. */
function leastWanted<S extends Held>(judge: Judge<S>, sets: readonly BendSet[]): BendSet[] {
  const wants = sets.map((set) =>
    Math.min(...judge.strokes.map((makes, i) => ((set & makes) === 0 ? judge.wanted(set, i) : Infinity))),
  );
  const least = Math.min(...wants);
  return sets.filter((_, i) => wants[i] === least || wants[i]! <= least + SAME_CHANGE);
}

function searchMany<S extends Held>(judge: Judge<S>, watch?: Watch): Found<S> {
  let [judged, asked] = [0, 0];
  const find = (options: FindOptions): Finding => {
    const before = asked++ / (asked + 1);
    const progress = (fraction: number) => watch?.progress(before + fraction / (asked * (asked + 1)));
    const stage = watch && { watch: { progress, stopped: () => watch.stopped() } };
    const finding = findOrder(judge, { mostJudged: MOST_JUDGED, ...options, ...stage });
    judged += finding.judged;
    return finding;
  };
  const any = find({});
  if (any.kind === "order") {
    let [sets, wishes] = [any.sets, judge.wishes];
    for (; wishes > 0; wishes--) {
      const wished = find({ wishes });
      if (wished.kind !== "order") continue;
      sets = wished.sets;
      break;
    }
    return { kind: "order", order: bestThrough(judge, sets, wishes), orders: null, judged };
  }
  const diver = new OrderFinder(judge, {});
  let sets = diver.dive(DEEP * judge.bends ** 2);
  judged += diver.judged;
  for (;;) {
    const mostJudged = 2 * MOST_JUDGED - judged;
    const further = find({ bends: countOf(sets.at(-1)!) + 1, mostJudged });
    if (further.kind !== "order") break;
    sets = further.sets;
  }
  const order = blockedAfter(judge, [{ goal: sets.at(-1)!, strokes: bestThrough(judge, sets) }]);
  return { kind: any.kind, order, orders: null, judged };
}

/** Of the ways, and the strokes that they leave, the one that wants the least change; ties go to the lower set and stroke. */
function blockedAfter<S extends Held>(judge: Judge<S>, ways: readonly Way<S>[]): S[] {
  let [best, least]: [S[], number] = [[], Number.POSITIVE_INFINITY];
  for (const { goal, strokes } of [...ways].sort((a, b) => a.goal - b.goal)) {
    judge.strokes.forEach((makes, stroke) => {
      if ((goal & makes) !== 0) return;
      const wanted = judge.wanted(goal, stroke);
      if (best.length > 0 && wanted >= least - SAME_CHANGE) return;
      least = wanted;
      best = [...strokes, judge.blocked(stroke)];
    });
  }
  return best;
}
