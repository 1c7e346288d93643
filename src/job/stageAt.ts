/**
 * The stage behind a step of an answer: the part as it stands then, and which bends are made, for pictures and measuring.
 * Answers count bends from 1, stages from 0.
 */
import { type Stage, stagesOf } from "../motion/stages.ts";
import type { Answer } from "./answer.ts";
import type { Job, OrderStep } from "./job.ts";

/** An answer's order as the engine walks it. */
export function orderOf({ order }: Pick<Answer, "order">): OrderStep[] {
  return order.map(({ bend, clamped, angle, stroke }) => ({
    bend: bend - 1,
    clamped,
    ...(stroke === "begin" && { toDeg: angle }),
  }));
}

/**
 * The stage of step `index` (from 0) of the order.
 * @throws RangeError when the order has no such step
 */
export function stageAt({ part, brake }: Job, answer: Pick<Answer, "order">, index: number): Stage {
  const stage = stagesOf(part, brake, orderOf(answer).slice(0, index + 1))[index];
  if (stage === undefined) throw new RangeError(`the order has no step ${index + 1}`);
  return stage;
}
