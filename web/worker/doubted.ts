/**
 * What doubtful readings of a sample do to its answer, in words; readings that can't be judged say why.
 */

import type { Answer } from "../../src/job/answer.ts";
import { judgeDoubts } from "../../src/job/doubt.ts";
import { doubtSentences } from "../../src/job/doubtWords.ts";
import type { Job } from "../../src/job/job.ts";
import type { Doubted } from "./messages.ts";

/** The finding for the order of the answer; `doubtsMm` has one figure for each flat. */
export function doubted(job: Job, answer: Answer, doubtsMm: readonly number[]): Doubted {
  const unsure = job.part.flatsMm.findIndex((flatMm, i) => (doubtsMm[i] ?? 0) >= flatMm);
  if (unsure >= 0) {
    const sentence = `Flat ${unsure + 1} is shorter between its bends than the doubt about it: measure it closer.`;
    return { verdict: "tight", sentences: [sentence] };
  }
  const order = answer.order.map(({ bend, clamped }) => ({ bend: bend - 1, clamped }));
  const found = judgeDoubts(job, order, doubtsMm);
  return { verdict: found.verdict, sentences: doubtSentences(found, job.units) };
}
