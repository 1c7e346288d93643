/**
 * The list of working orders in words: sequences of bends, with what may lie in the throat at each.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { OrderGroup } from "../section/workingOrders.ts";
import { allOrders } from "./ordersWords.ts";
import { throatWords } from "./stepWords.ts";

/** Headings and rows; within a row only the ends named as either may be chosen. */
export function orderListTable(groups: readonly OrderGroup[], bendCount: number): string[][] {
  const rows = groups.map(({ steps, orders, changes, clear }, i) => [
    `${i + 1}.`,
    steps.map(({ bend }) => bend + 1).join(", "),
    steps
      .map(({ bend, ends, best }) =>
        ends.length > 1 ? "either end" : throatWords({ bend: bend + 1, clamped: best }, bendCount),
      )
      .join("; "),
    String(orders),
    String(changes),
    clear ? "clear" : "tight",
  ]);
  return [["", "bends", "in the throat", "orders", "changes", ""], ...rows];
}

/** How many there are in all, and how they are put together. */
export function orderListSentence(
  groups: readonly OrderGroup[],
  { viableOrders }: Pick<Answer, "viableOrders">,
  bendCount: number,
): string {
  if (groups.length === 0) return `None of the ${allOrders(bendCount)} orders works.`;
  const sequences = groups.length === 1 ? "one sequence" : `${groups.length} sequences`;
  return `${viableOrders ?? 0} of the ${allOrders(bendCount)} orders work, in ${sequences} of bends, the best first. Where it says either end, take the one you like; changes count how often you turn the part round or over.`;
}

/** Past so many bends nobody reads the list. */
export function tooManyOrders(most: number): string {
  return `Orders are listed for parts of up to ${most} bends; the check above shows the best.`;
}
