/**
 * `noseroom doubt JOB --by 1/64`: whether the job still folds when its flats were read wrong by so much.
 */

import type { Job } from "../jobFile/job.ts";
import { orderMade } from "../jobFile/orderMade.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { doubtSentences } from "../words/doubtWords.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { answerDoubts, answerJob } from "./answerJob.ts";
import { inkFor } from "./ink.ts";
import { openJobOrWhole } from "./openJob.ts";
import { doubtOption } from "./optionLengths.ts";
import { doubtPlan, planText } from "./planJson.ts";
import { doubtOfWhole } from "./wholeDoubt.ts";
import { columnsOf, wrap } from "./wrap.ts";

export interface DoubtOptions {
  readonly by?: string;
  readonly json?: boolean;
}

/**
 * Prints the finding and gives the exit status: 0 where every mix of the doubts folds, 1 where some mix does not.
 * @throws Refusal for input that cannot be worked with
 */
export async function runDoubt(path: string, options: DoubtOptions): Promise<number> {
  const opened = await openJobOrWhole(path);
  if ("whole" in opened) return doubtOfWhole(opened, options);
  const { doubtsMm: ofJob, ...job } = opened.job;
  const doubtsMm = options.by === undefined && ofJob ? ofJob : alike(job, options.by);
  // As read: the doubts are judged here, with those that were asked for.
  const answer = await answerJob(job);
  const doubt = await answerDoubts({ job, order: orderMade(answer), doubtsMm });
  const status = doubt.worst === null && doubt.proved ? 0 : 1;
  if (options.json) {
    process.stdout.write(planText(doubtPlan(doubt, doubtsMm, answer)));
    return status;
  }
  const ink = inkFor(process.stdout, process.env);
  const [first = "", ...rest] = doubtSentences(doubt, job.units);
  const lines = [
    ink.strong(first),
    ...rest,
    `As read: ${verdictSentence(job, answer)} ${offSentence(doubtsMm, job.units)}`,
    "",
    ...wrap(CAUTIONS, columnsOf(process.stdout), "").map(ink.faint),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return status;
}

/** One doubt for all flats, as asked for or as callipers usually read. */
function alike({ part: { flatsMm }, units }: Job, by: string | undefined): readonly Mm[] {
  const doubtMm = doubtOption(by, { mm: Math.min(...flatsMm), what: "the shortest flat" }, units);
  return flatsMm.map(() => doubtMm);
}

function offSentence(doubtsMm: readonly Mm[], units: Job["units"]): string {
  const sizes = doubtsMm.map((doubt) => formatLength(doubt, units));
  return new Set(sizes).size === 1
    ? `Each flat may be off by ${sizes[0]} ${units}.`
    : `The flats may be off by ${sizes.join(", ")} ${units}.`;
}
