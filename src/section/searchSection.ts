/**
 * The best order of a section's bends, or the one that gets furthest (order/search.ts).
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import type { Watch } from "../order/judge.ts";
import { type Found, searchOrders } from "../order/search.ts";
import type { Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import { type Move, SectionJudge } from "./sectionJudge.ts";

/** Orders of up to so many bends are all ranked and counted. */
export const MOST_RANKED = 12;

/** Searches all orders of the part on the brake. Throws SearchStopped when the watcher says so. */
export function searchSection(part: Part, brake: Brake, marginMm: Mm, watch?: Watch): Found<Move> {
  const judge = new SectionJudge(part, new Machine(brake, part.thicknessMm), marginMm);
  return searchOrders(judge, MOST_RANKED, watch);
}
