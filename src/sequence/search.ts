/**
 * The order search: the best order of bends and clamped ends, how many orders there are, and where none is, how far
 * one gets. Exact over all n!·2^n orders, in about 2^n·n steps; checks are shared by all sets that agree on one side.
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import type { Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import { furthestOrder, furthestSoon } from "./furthest.ts";
import type { Move } from "./moves.ts";
import type { Partner } from "./partner.ts";
import { bestWays } from "./rank.ts";
import { reachFrom, type Watch } from "./reach.ts";
import { seatTables } from "./seatTables.ts";

export interface Found {
  /** All bends where there is a viable order; else those of the furthest one, the last of them blocked. */
  readonly order: readonly Move[];
  readonly viable: boolean;
  readonly viableOrders: bigint;
  /** Bends looked at in some state: set of bends done, bend, clamped end. */
  readonly statesChecked: number;
}

/** Fewer bends are searched before a second thread has started. */
const LONG_SEARCH = 13;

/**
 * Searches all orders of the part on the brake. Throws SearchStopped when the watcher says so. A partner takes half of a
 * long search in a second thread.
 */
export function searchOrders(
  part: Part,
  brake: Brake,
  marginMm: Mm,
  watch?: Watch,
  partner?: Partner,
): Found {
  const machine = new Machine(brake, part.thicknessMm);
  const seats = seatTables(part, brake, machine);
  const soon = furthestSoon(part, machine, seats, marginMm, watch);
  if (soon) return { ...soon, viable: false, viableOrders: 0n };
  const start = partner && part.bends.length >= LONG_SEARCH ? partner : undefined;
  const reach = reachFrom(part, seats, watch, start && ((memory) => start({ part, brake, memory })));
  const whole = (1 << part.bends.length) - 1;
  const viable = reach.reached[whole] === 1;
  const order = viable
    ? bestWays(part, seats, reach, [whole], marginMm)[0]!.moves()
    : furthestOrder(part, machine, seats, reach, marginMm);
  return { order, viable, viableOrders: reach.viableOrders, statesChecked: reach.statesChecked };
}
