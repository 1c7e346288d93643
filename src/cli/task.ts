/**
 * The work of a command that may take long: the answer to a job with everything that `check` prints, a shop's parts on
 * its brakes, a job with its flats misread. Plain data in and out, so that it can be done in a thread (answerJob.ts).
 */

import { check } from "../answer/check.ts";
import { judgeDoubts } from "../answer/doubt.ts";
import { checkWhole } from "../answer/wholeCheck.ts";
import type { Answer, DoubtsAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { Shop } from "../jobFile/shopFile.ts";
import type { ShopFit } from "../jobFile/shopFit.ts";
import type { WholeAnswer, WholeDoubts } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import type { WholeWay } from "../jobFile/wholeWay.ts";
import type { Watch } from "../order/judge.ts";
import type { Mm } from "../units/quantity.ts";
import { fitShop } from "../ways/shopFit.ts";
import { type WaysOutOptions, waysOut } from "../ways/waysOut.ts";
import { wholeDoubts } from "../ways/wholeDoubts.ts";
import { wholeWays } from "../ways/wholeWays.ts";

/** A job, and the file that it was read from where ways out are wanted: they are changes to the file. */
export interface JobTask {
  readonly kind: "answer";
  readonly job: Job;
  readonly file?: JobFile;
  /** Other brakes to try. */
  readonly brakes?: WaysOutOptions["brakes"];
  /** Whether pairs of changes are tried too. */
  readonly pairs?: boolean;
  /** The answer, where it is known and only the ways out are wanted. */
  readonly answer?: Answer;
}

export interface ShopTask {
  readonly kind: "fit";
  readonly shop: Shop;
}

export interface DoubtTask {
  readonly kind: "doubt";
  readonly job: Job;
  readonly order: Parameters<typeof judgeDoubts>[1];
  readonly doubtsMm: Parameters<typeof judgeDoubts>[2];
}

/** A whole part's job. */
export interface WholeTask {
  readonly kind: "whole";
  readonly job: WholeJob;
}

/** A whole part's checked job with its file, for what would let it fold. */
export interface WholeWaysTask {
  readonly kind: "wholeWays";
  readonly job: WholeJob;
  readonly file: WholeFile;
  readonly answer: WholeAnswer;
}

/** The same with its sizes misread by so much. */
export interface WholeDoubtTask extends Omit<WholeWaysTask, "kind" | "job"> {
  readonly kind: "wholeDoubt";
  readonly byMm: Mm;
}

export type Task = JobTask | ShopTask | DoubtTask | WholeTask | WholeWaysTask | WholeDoubtTask;
export type Done<T extends Task> = T extends JobTask
  ? Answer
  : T extends ShopTask
    ? ShopFit
    : T extends WholeTask
      ? WholeAnswer
      : T extends WholeWaysTask
        ? readonly WholeWay[]
        : T extends WholeDoubtTask
          ? WholeDoubts
          : DoubtsAnswer;

/** Does the work; `watch` is told how far a search is, `judged` the answer to a job before ways out are looked for. */
export function done<T extends Task>(task: T, watch?: Watch, judged?: (answer: Answer) => void): Done<T> {
  return resultOf(task, watch, judged) as Done<T>;
}

function resultOf(task: Task, watch?: Watch, judged?: (answer: Answer) => void): Done<Task> {
  if (task.kind === "fit") return fitShop(task.shop);
  if (task.kind === "whole") return checkWhole(task.job, watch);
  if (task.kind === "wholeWays") return wholeWays(task.file, task.job, task.answer, watch);
  if (task.kind === "wholeDoubt") return wholeDoubts(task.file, task.answer, task.byMm, watch);
  if (task.kind === "doubt") return judgeDoubts(task.job, task.order, task.doubtsMm);
  const { job, file, brakes = [], pairs = false } = task;
  const answer = task.answer ?? check(job, watch);
  if (file !== undefined) judged?.(answer);
  return file === undefined ? answer : { ...answer, remedies: waysOut(file, job, answer, { brakes, pairs }) };
}
