/**
 * A step of the order with all that the shop sheet tells of it, found once for every way of setting the page.
 */
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { type StepCells, stepCells } from "./stepCells.ts";
import { rowSentences, rowTitle, stepOf } from "./stepSentences.ts";

export interface StepTold {
  readonly index: number;
  readonly step: StepAnswer;
  readonly title: string;
  readonly sentences: readonly string[];
  readonly cells: StepCells;
}

/** What is told of step `index` (from 0). @throws RangeError when the order has no such step */
export function tellStep(job: Job, answer: Answer, index: number): StepTold {
  return {
    index,
    step: stepOf(answer, index),
    title: rowTitle(job, answer, index),
    sentences: rowSentences(job, answer, index),
    cells: stepCells(job, answer, index),
  };
}
