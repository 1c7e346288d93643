/**
 * The order search. Up to as many bends as are ranked: the best of all orders and how many there are, or where none is, the one that
 * gets furthest. Beyond: an order that can be made, all that is wished granted if there is such a one; or the proof that there is
 * none, with the order that makes most bends; or neither, where that would take too long.
 */
import { bestThrough, type Finding, findOrder } from "./findOrder.ts";
import { furthestBlocked, mostBends } from "./furthest.ts";
import type { Held, Judge, Watch } from "./judge.ts";
import { mostReached } from "./mostReached.ts";
import { bestWays } from "./rank.ts";
import { reachFrom } from "./reach.ts";

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

/** Orders of up to `ranked` bends are ranked and counted. Throws SearchStopped when the watcher says so. */
export function searchOrders<S extends Held>(judge: Judge<S>, ranked: number, watch?: Watch): Found<S> {
  if (judge.bends > ranked) return searchMany(judge, watch);
  const { ways, orders, judged } = reachFrom(judge, watch);
  const whole = 2 ** judge.bends - 1;
  const count = orders.get(whole) ?? 0n;
  const goals = count > 0n ? new Set([whole]) : mostBends(ways.keys());
  const best = bestWays(judge, ways, goals);
  if (count > 0n) return { kind: "order", order: best[0]!.strokes, orders: count, judged };
  return { kind: "none", order: furthestBlocked(judge, best), orders: 0n, judged };
}

function searchMany<S extends Held>(judge: Judge<S>, watch?: Watch): Found<S> {
  let judged = 0;
  const find = (wishes: number): Finding => {
    const finding = findOrder(judge, { wishes, mostJudged: MOST_JUDGED, ...(watch && { watch }) });
    judged += finding.judged;
    return finding;
  };
  const any = find(0);
  if (any.kind === "order") {
    for (let wishes = judge.wishes; wishes >= 0; wishes--) {
      const wished = wishes === 0 ? any : find(wishes);
      if (wished.kind !== "order") continue;
      return { kind: "order", order: bestThrough(judge, wished.sets, wishes), orders: null, judged };
    }
  }
  const most = mostReached(judge, MOST_JUDGED, watch);
  const strokes = bestThrough(judge, most.sets);
  const order = furthestBlocked(judge, [{ goal: most.sets.at(-1)!, strokes }]);
  return {
    kind: any.kind === "none" ? "none" : "unknown",
    order,
    orders: null,
    judged: judged + most.judged,
  };
}
