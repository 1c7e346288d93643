/**
 * The stage behind a step of an answer: the part as it stands then, and which bends are made, for pictures and measuring.
 * Answers count bends from 1, stages from 0.
 */
import { type Stage, stagesOf } from "../motion/stages.ts";
import type { Answer } from "./answer.ts";
import type { Job } from "./job.ts";
import { orderMade } from "./orderMade.ts";

/**
 * The stage of step `index` (from 0) of the order.
 * @throws RangeError when the order has no such step
 */
export function stageAt({ part, brake }: Job, answer: Pick<Answer, "order">, index: number): Stage {
  const stage = stagesOf(part, brake, orderMade(answer))[index];
  if (stage === undefined) throw new RangeError(`the order has no step ${index + 1}`);
  return stage;
}
