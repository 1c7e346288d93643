/**
 * The order search. Up to as many bends as are ranked: the best of all orders and how many there are, or where none is, the one that
 * gets furthest: most bends made, then the best rank, then the blocked stroke in which the leaf swings furthest. Beyond: an order
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
const SAME_SWING_RAD = 1e-9;

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
  const furthest = new Set([...ways.keys()].filter((set) => countOf(set) === most));
  return { kind: "none", order: blockedAfter(judge, bestWays(judge, ways, furthest)), orders: 0n, judged };
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

/** Of the ways, and the strokes that they leave, the one in which the leaf swings furthest; ties go to the lower set and stroke. */
function blockedAfter<S extends Held>(judge: Judge<S>, ways: readonly Way<S>[]): S[] {
  let [best, most]: [S[], number] = [[], Number.NEGATIVE_INFINITY];
  const isLeft = (goal: BendSet, makes: BendSet) => (goal & makes) === 0;
  for (const { goal, strokes } of [...ways].sort((a, b) => a.goal - b.goal)) {
    judge.strokes.forEach((makes, stroke) => {
      const swung = isLeft(goal, makes) ? judge.swingRad(goal, stroke) : most;
      if (swung <= most + SAME_SWING_RAD) return;
      most = swung;
      best = [...strokes, judge.blocked(stroke)];
    });
  }
  return best;
}
