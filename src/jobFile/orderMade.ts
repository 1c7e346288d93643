/**
 * The order that an answer shows, as the engine takes it: bends from 0, a bend that is only begun with its angle, a hem with how far it
 * is folded.
 */
import type { Answer } from "./answer.ts";
import type { OrderStep } from "./job.ts";

/** Steps of the answer's order. @example orderMade(check(job)) // [{ bend: 1, clamped: "start" }, …] */
export function orderMade({ order }: Pick<Answer, "order">): OrderStep[] {
  return order.flatMap(({ bend, clamped, stroke, angle, overbend }): OrderStep[] => {
    if (stroke === "flatten") return [];
    const step = { bend: bend - 1, clamped };
    if (stroke === "fold") return [{ ...step, foldDeg: overbend }];
    return [{ ...step, ...(stroke === "begin" && { toDeg: angle }) }];
  });
}
