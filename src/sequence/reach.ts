/**
 * Which sets of bends can be reached, through which bends and ends, and in how many orders: one pass over all sets.
 * What a set can do next does not depend on the order in which it was made, so each set is looked at once.
 * The count is exact: it is carried in two parts, low 2^48 and the rest, good up to 2^101 (20!·2^20 is under 2^82).
 */
import type { Part } from "../part/part.ts";
import { formedToward, reversedSet } from "./bendSets.ts";
import { QuickLook } from "./quickLook.ts";
import type { SeatTable } from "./seatTable.ts";

const LOW = 2 ** 48;
const WATCH_EVERY = 1 << 11;

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
  const low = new Float64Array(sets);
  const high = new Float64Array(sets);
  const looks = seats.map((seat) => new QuickLook(seat));
  reached[0] = 1;
  low[0] = 1;
  let statesChecked = 0;
  for (let set = 0; set < sets - 1; set++) {
    if (set % WATCH_EVERY === 0 && watch) {
      watch.progress(set / sets);
      if (watch.stopped()) throw new SearchStopped();
    }
    if (!reached[set]) continue;
    const back = reversedSet(set, n);
    let [startMask, endMask] = [0, 0];
    for (let rest = ~set & (sets - 1); rest !== 0; rest &= rest - 1) {
      const bit = rest & -rest;
      const bend = 31 - Math.clz32(bit);
      const lower = set & (bit - 1);
      const upper = set >>> (bend + 1);
      const towardStart = formedToward("start", bend, set, back, n);
      statesChecked += 2;
      const start = looks[2 * bend]!.canMake(upper, upper, lower, towardStart) ? 1 : 0;
      const end = looks[2 * bend + 1]!.canMake(lower, towardStart, upper, upper) ? 1 : 0;
      if (start) startMask |= bit;
      if (end) endMask |= bit;
      const ways = start + end;
      if (ways === 0) continue;
      const next = set | bit;
      reached[next] = 1;
      low[next] = low[next]! + ways * low[set]!;
      high[next] = high[next]! + ways * high[set]!;
      if (low[next]! >= LOW) {
        const carry = Math.floor(low[next]! / LOW);
        high[next] = high[next]! + carry;
        low[next] = low[next]! - carry * LOW;
      }
    }
    withStart[set] = startMask;
    withEnd[set] = endMask;
  }
  const viableOrders = BigInt(high[sets - 1]!) * BigInt(LOW) + BigInt(low[sets - 1]!);
  return { withStart, withEnd, reached, statesChecked, viableOrders };
}
