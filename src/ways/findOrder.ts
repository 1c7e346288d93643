/**
 * Whether a part folds on a brake in any order at all, and in which: asked again and again while a limit is closed in on.
 * The same yes or no as the whole search, exact unless the states that may be judged run out.
 */
import type { OrderedBend, Trial } from "../jobFile/change.ts";
import { bestThrough, findOrder as findSets } from "../order/findOrder.ts";
import { SectionJudge } from "../section/sectionJudge.ts";
import type { Mm } from "../units/quantity.ts";
import { Machines } from "./machines.ts";

/** `unknown`: the states that may be judged ran out before there was an answer. */
export type Finding =
  | {
      readonly kind: "order";
      /** The bends in the order found, from 1. */
      readonly bends: readonly number[];
      /** The same with the ends that suit them best. */
      order(): readonly OrderedBend[];
      readonly states: number;
    }
  | { readonly kind: "none" | "unknown"; readonly states: number };

export interface OrderSearch {
  /** Every clearance at least this; 0 asks for no contact only. */
  readonly leastMm: Mm;
  /** Bends (from 1) in an order that is tried first, with either end. */
  readonly hint?: readonly number[];
  readonly mostStates?: number;
  readonly machines?: Machines;
}

/** @example findOrder({ part: trough, brake: bar }, { leastMm: 0 }).kind // "order" */
export function findOrder({ part, brake }: Trial, search: OrderSearch): Finding {
  const { leastMm, hint, mostStates, machines = new Machines() } = search;
  const judge = new SectionJudge(part, machines.of(brake, part.thicknessMm), leastMm);
  const { wishes } = judge;
  const found = findSets(judge, {
    wishes,
    ...(hint && { hint: hint.map((bend) => 1 << (bend - 1)) }),
    ...(mostStates !== undefined && { mostJudged: mostStates }),
  });
  const states = found.judged;
  if (found.kind !== "order") return { kind: found.kind, states };
  const { sets } = found;
  return {
    kind: "order",
    bends: sets.slice(1).map((set, i) => 32 - Math.clz32(set ^ sets[i]!)),
    order: () => bestThrough(judge, sets, wishes).map(({ bend, clamped }) => ({ bend: bend + 1, clamped })),
    states,
  };
}
