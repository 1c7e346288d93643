/**
 * The best order of a section's bends, or the one that gets furthest (order/search.ts).
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import { OverRange } from "../contact/overRange.ts";
import { isReckoned } from "../motion/variants.ts";
import type { Watch } from "../order/judge.ts";
import { type Found, searchOrders } from "../order/search.ts";
import type { Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import { type Move, SectionJudge } from "./sectionJudge.ts";

/** Orders of up to so many bends are all ranked and counted. */
export const MOST_RANKED = 12;

/**
 * Searches all orders of the part on the brake. Where something is doubted, first those that work with the most springback, in which the
 * leaf goes furthest; where the best of them does not work over all of the doubts, those that do. Throws SearchStopped when the watcher
 * says so.
 */
export function searchSection(part: Part, brake: Brake, marginMm: Mm, watch?: Watch): Found<Move> {
  const machine = new Machine(brake, part.thicknessMm);
  const found = searchOrders(new SectionJudge(part, machine, marginMm), MOST_RANKED, watch);
  if (found.kind !== "order" || !isReckoned(part)) return found;
  const judged = new OverRange(part, brake, marginMm, machine).judge(found.order);
  if (judged.every(({ verdict }) => verdict !== "hits")) return found;
  return searchOrders(new SectionJudge(part, machine, marginMm, "all"), MOST_RANKED, watch);
}
