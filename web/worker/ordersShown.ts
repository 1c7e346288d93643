/**
 * Orders of one part side by side: the best one and those near it that fold, grouped by the bends' sequence, each with what it
 * does otherwise. Up to three bends all orders are tried; above that the best one with two steps changed over, ends turned, or
 * both. Each is checked as it stands.
 */
import { check } from "../../src/answer/check.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job, OrderStep } from "../../src/jobFile/job.ts";
import { orderMade } from "../../src/jobFile/orderMade.ts";
import { handlingWords, leastRoom, roomWords, sequenceWords } from "../../src/words/orderCompared.ts";
import type { OrderShown, OrdersShown } from "./messages.ts";

/** All orders of so many bends are few enough to try. */
const ALL_TRIED = 3;
const MOST_TRIED = 160;
const MOST_SHOWN = 24;

/** Every order of `bends` bends with either end in the throat. */
function everyOrder(bends: readonly number[]): OrderStep[][] {
  if (bends.length === 0) return [[]];
  return bends.flatMap((bend) =>
    everyOrder(bends.filter((other) => other !== bend)).flatMap((rest) =>
      (["start", "end"] as const).map((clamped): OrderStep[] => [{ bend, clamped }, ...rest]),
    ),
  );
}

const turned = (order: readonly OrderStep[], at: number): OrderStep[] =>
  order.map((step, i) =>
    i === at ? { ...step, clamped: step.clamped === "start" ? "end" : "start" } : step,
  );

const changedOver = (order: readonly OrderStep[], one: number, other: number): OrderStep[] =>
  order.map((step, i) => order[i === one ? other : i === other ? one : i] ?? step);

/** The orders near one. */
function nearOrders(order: readonly OrderStep[]): OrderStep[][] {
  const places = order.map((_, i) => i);
  const swaps = places.flatMap((i) => places.slice(i + 1).map((k) => changedOver(order, i, k)));
  const turns = places.map((i) => turned(order, i));
  return [...turns, ...swaps, ...swaps.flatMap((swap) => places.map((i) => turned(swap, i)))].slice(
    0,
    MOST_TRIED,
  );
}

/** The orders of a job to compare; its own order, where it has one, is left out of account. */
export function ordersShown({ order: _own, ...job }: Job): OrdersShown {
  const best = check(job);
  const made = orderMade(best);
  const { units } = job;
  const count = job.part.bends.length;
  const others = count <= ALL_TRIED ? everyOrder(job.part.bends.map((_, i) => i)) : nearOrders(made);
  const same = (a: readonly OrderStep[], b: readonly OrderStep[]) => JSON.stringify(a) === JSON.stringify(b);
  const found = others
    .filter((order) => !same(order, made))
    .map((order) => ({ order, answer: check({ ...job, order }) }))
    .filter(({ answer }) => answer.verdict !== "hits")
    .sort(
      (a, b) =>
        rank(a.answer) - rank(b.answer) || (leastRoom(b.answer) ?? 1e9) - (leastRoom(a.answer) ?? 1e9),
    );
  const shown = [{ order: made, answer: best }, ...found].slice(0, MOST_SHOWN).map(
    ({ order, answer }): OrderShown => ({
      sequence: sequenceWords(order),
      words: handlingWords(answer, best, count),
      room: roomWords(answer, units),
      answer,
    }),
  );
  return { job, orders: shown, tried: others.length, all: count <= ALL_TRIED, folding: found.length };
}

/** As the search ranks: clear before tight, then fewest turns of the part. */
const rank = (answer: Answer) => (answer.verdict === "clear" ? 0 : 1000) + turnsOf(answer);

/** How often the part is turned end for end or over between two bends. */
function turnsOf({ order }: Answer): number {
  return order.slice(1).reduce((sum, step, i) => {
    const before = order[i]!;
    return sum + Number(step.clamped !== before.clamped) + Number(step.markedFaceUp !== before.markedFaceUp);
  }, 0);
}
