/**
 * Ways out that cost nothing but a thought, where the user's own order fails: the other end in the throat at some
 * bends, or another order. What a bend meets depends on which bends are made before it, not on how they were held, so
 * each bend's end can be chosen by itself.
 */
import { Machine } from "../contact/machine.ts";
import type { OrderedBend, Trial } from "../jobFile/change.ts";
import type { Way } from "../jobFile/way.ts";
import type { End } from "../part/part.ts";
import { SectionJudge } from "../section/sectionJudge.ts";
import type { Mm } from "../units/quantity.ts";
import { costOf } from "./cost.ts";
import { type Outcome, outcomeOf } from "./folds.ts";

/** `marginMm` 0 in `leastMm` asks for no contact only. */
export interface Goal {
  readonly marginMm: Mm;
  /** Least clearance that counts as a way out. */
  readonly leastMm: Mm;
}

/** Ways that keep part and brake, for a user's own order that falls short of the goal. */
export function otherHandling(trial: Trial, own: readonly OrderedBend[], goal: Goal): Way[] {
  const ways: Way[] = [];
  const sides = otherSides(trial, own, goal);
  if (sides) {
    const outcome = outcomeOf(trial, goal.marginMm, sides);
    if (reaches(outcome, goal)) ways.push(wayOf("side", outcome));
  }
  const free = outcomeOf(trial, goal.marginMm);
  if (free.order.length === own.length && reaches(free, goal)) ways.push(wayOf("order", free));
  return ways;
}

/** Whether an outcome is good enough, so that it may be offered. */
export function reaches(
  outcome: Outcome,
  { leastMm }: Goal,
): outcome is Outcome & { verdict: "clear" | "tight" } {
  return outcome.verdict !== "hits" && (outcome.clearanceMm ?? Number.POSITIVE_INFINITY) >= leastMm;
}

function wayOf(kind: "side" | "order", outcome: Outcome & { verdict: "clear" | "tight" }): Way {
  const { verdict, clearanceMm, order } = outcome;
  return { kind, changes: [{ kind: "order", order }], verdict, clearanceMm, order, cost: costOf(kind) };
}

/** The same bends one after the other, the other end clamped where only that helps; undefined where it does not. */
function otherSides(
  { part, brake }: Trial,
  own: readonly OrderedBend[],
  { leastMm }: Goal,
): OrderedBend[] | undefined {
  const judge = new SectionJudge(part, new Machine(brake, part.thicknessMm), leastMm);
  const order: OrderedBend[] = [];
  let done = 0;
  for (const { bend, clamped } of own) {
    const passing = [clamped, otherEnd(clamped)].find((end) => judge.folds(done, bend - 1, end));
    if (passing === undefined) return undefined;
    order.push({ bend, clamped: passing });
    done |= 1 << (bend - 1);
  }
  return order;
}

function otherEnd(end: End): End {
  return end === "start" ? "end" : "start";
}
