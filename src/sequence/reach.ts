/**
 * Which sets of bends can be reached, through which bends and ends, and in how many orders: one pass over all sets.
 * What a set can do next does not depend on the order in which it was made, so each set is looked at once.
 */
import type { Part } from "../part/part.ts";
import { formedToward, nextOfAsMany, reversedSet } from "./bendSets.ts";
import { OrderCount } from "./orderCount.ts";
import { QuickLook } from "./quickLook.ts";
import type { SeatTable } from "./seatTable.ts";

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

export interface Reach {
  /** Per set: bends that can be made next with the start (the end) clamped, as masks. */
  readonly withStart: Int32Array;
  readonly withEnd: Int32Array;
  readonly reached: Uint8Array;
  readonly statesChecked: number;
  readonly viableOrders: bigint;
}

/** Looks at every set that can be reached from the flat blank. `seats[2·bend]` has the start clamped, the next the end. */
export function reachFrom(part: Part, seats: readonly SeatTable[], watch?: Watch): Reach {
  const n = part.bends.length;
  const sets = 1 << n;
  const withStart = new Int32Array(sets);
  const withEnd = new Int32Array(sets);
  const reached = new Uint8Array(sets);
  const orders = new OrderCount(sets);
  reached[0] = 1;
  let statesChecked = 0;
  let setsDone = 0;
  const looks = seats.map((seat) => new QuickLook(seat));
  // All sets of equally many bends together, and of these one bend after the other: what is kept for a bend is then at hand.
  for (let made = 0; made < n; made++) {
    const { forward, backward } = reachedOf(made, n, reached);
    for (let bend = 0; bend < n; bend++) {
      watch?.progress((setsDone + (forward.sets.length * bend) / n) / sets);
      if (watch?.stopped()) throw new SearchStopped();
      // Of the longer side the sets come in the order in which those that begin alike, nearest to the bend, are together.
      const looked = 2 * bend < n ? backward : forward;
      const bit = 1 << bend;
      const [start, end] = [looks[2 * bend]!, looks[2 * bend + 1]!];
      for (let i = 0; i < looked.sets.length; i++) {
        const set = looked.sets[i]!;
        if ((set & bit) !== 0) continue;
        const lower = set & (bit - 1);
        const upper = set >>> (bend + 1);
        const towardStart = formedToward("start", bend, set, looked.backs[i]!, n);
        statesChecked += 2;
        if (start.canMake(upper, upper, lower, towardStart)) withStart[set] = withStart[set]! | bit;
        if (end.canMake(lower, towardStart, upper, upper)) withEnd[set] = withEnd[set]! | bit;
      }
    }
    for (const set of forward.sets) {
      for (let ways = withStart[set]! | withEnd[set]!; ways !== 0; ways &= ways - 1) {
        const bit = ways & -ways;
        reached[set | bit] = 1;
        orders.add(set | bit, set, (withStart[set]! & bit ? 1 : 0) + (withEnd[set]! & bit ? 1 : 0));
      }
    }
    setsDone += forward.sets.length;
  }
  return { withStart, withEnd, reached, statesChecked, viableOrders: orders.of(sets - 1) };
}

/** Sets in some order, and each run backwards. */
interface InTurn {
  readonly sets: Int32Array;
  readonly backs: Int32Array;
}

/** The sets of so many bends that are reached, lower ones first, and by what they are run backwards. */
function reachedOf(made: number, n: number, reached: Uint8Array) {
  const [sets, backs]: [number[], number[]] = [[], []];
  const [setsBack, backsBack]: [number[], number[]] = [[], []];
  const last = ((1 << made) - 1) << (n - made);
  for (let set = (1 << made) - 1; ; set = nextOfAsMany(set)) {
    const back = reversedSet(set, n);
    if (reached[set]) {
      sets.push(set);
      backs.push(back);
    }
    if (reached[back]) {
      setsBack.push(back);
      backsBack.push(set);
    }
    if (set === last) break;
  }
  return { forward: inTurn(sets, backs), backward: inTurn(setsBack, backsBack) };
}

function inTurn(sets: readonly number[], backs: readonly number[]): InTurn {
  return { sets: Int32Array.from(sets), backs: Int32Array.from(backs) };
}
