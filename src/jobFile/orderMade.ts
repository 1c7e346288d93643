/**
 * The order that an answer shows, as the engine takes it: bends from 0, a bend that is only begun with its angle.
 */
import type { Answer } from "./answer.ts";
import type { OrderStep } from "./job.ts";

/** Steps of the answer's order. @example orderMade(check(job)) // [{ bend: 1, clamped: "start" }, …] */
export function orderMade({ order }: Pick<Answer, "order">): OrderStep[] {
  return order.map(({ bend, clamped, stroke, angle }) => ({
    bend: bend - 1,
    clamped,
    ...(stroke === "begin" && { toDeg: angle }),
  }));
}
