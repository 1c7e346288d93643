/**
 * How a part comes out on a brake: whether it folds in any order at all, its best order and what that leaves to spare.
 * Up to as many bends as are ranked the order is the best of all; beyond, one that is clear where there is one, else one that folds.
 */
import { OverRange } from "../contact/overRange.ts";
import type { Verdict } from "../contact/step.ts";
import type { OrderedBend, Trial } from "../jobFile/change.ts";
import { searchSection } from "../section/searchSection.ts";
import type { Mm } from "../units/quantity.ts";
import { findOrder } from "./findOrder.ts";
import type { Machines } from "./machines.ts";

/** Whether there is an order with every clearance at least `leastMm`; 0 asks for no contact only. */
export function folds(trial: Trial, leastMm: Mm, machines?: Machines): boolean {
  return findOrder(trial, { leastMm, ...(machines && { machines }) }).kind === "order";
}

/** How a trial comes out in its best order, over all that is doubted of it. */
export interface Outcome {
  readonly verdict: Verdict;
  /** Least clearance over all bends; null where nothing is left to measure. */
  readonly clearanceMm: Mm | null;
  readonly order: readonly OrderedBend[];
}

/** The best order of a trial and how it comes out, or the given order's outcome. */
export function outcomeOf(trial: Trial, marginMm: Mm, given?: readonly OrderedBend[]): Outcome {
  const { part, brake } = trial;
  const order = given ?? goodOrder(trial, marginMm);
  const steps = order.map(({ bend, clamped, to }) => ({
    bend: bend - 1,
    clamped,
    ...(to !== undefined && { toDeg: to }),
  }));
  let [clearanceMm, tight, hits] = [Number.POSITIVE_INFINITY, false, false];
  for (const { verdict, leastMm } of new OverRange(part, brake, marginMm).judge(steps)) {
    clearanceMm = Math.min(clearanceMm, leastMm ?? Number.POSITIVE_INFINITY);
    tight ||= verdict === "tight";
    hits ||= verdict === "hits";
  }
  return {
    verdict: hits ? "hits" : tight ? "tight" : "clear",
    clearanceMm: clearanceMm === Number.POSITIVE_INFINITY ? null : clearanceMm,
    order,
  };
}

/** The best of all orders up to as many bends as are ranked, or the furthest; beyond, one that folds, clear where it can be. */
function goodOrder({ part, brake }: Trial, marginMm: Mm): readonly OrderedBend[] {
  return searchSection(part, brake, marginMm).order.map(({ bend, clamped }) => ({ bend: bend + 1, clamped }));
}
