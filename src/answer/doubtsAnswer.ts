/**
 * The doubts of a job's readings in its answer: judged on the order found, worded as a warning, and what they leave of
 * the verdict. Only where the job has the key.
 */
import type { DoubtsAnswer, Verdict } from "../jobFile/answer.ts";
import type { Job, OrderStep } from "../jobFile/job.ts";
import { doubtSentences } from "../words/doubtWords.ts";
import { judgeDoubts } from "./doubt.ts";

export interface DoubtsFound {
  readonly answer: DoubtsAnswer;
  /** What to say where some mix of the doubts stops the part, or could not be ruled out; else undefined. */
  readonly warning: string | undefined;
}

/** The doubts judged on an order; undefined where the job gives none. */
export function doubtsFound(job: Job, order: readonly OrderStep[]): DoubtsFound | undefined {
  if (job.doubtsMm === undefined) return undefined;
  const answer = judgeDoubts(job, order, job.doubtsMm);
  const open = answer.verdict === "tight" && (answer.worst !== null || !answer.proved);
  return { answer, warning: open ? doubtSentences(answer, job.units).join(" ") : undefined };
}

/** What folds as read is tight where the doubts are. */
export function withDoubts(asRead: Verdict, found: DoubtsFound | undefined): Verdict {
  return asRead === "clear" && found !== undefined ? found.answer.verdict : asRead;
}
