/**
 * `noseroom doubt JOB --by 1/64`: whether the job still folds when its flats were read wrong by so much.
 */
import { CAUTIONS } from "../drawing/cautions.ts";
import { lengthWords } from "../drawing/lengthWords.ts";
import { verdictSentence } from "../drawing/verdictWords.ts";
import { judgeDoubts } from "../job/doubt.ts";
import { doubtSentences } from "../job/doubtWords.ts";
import { usualDoubtMm } from "../part/sample.ts";
import { formatLength, parseLength } from "../units/length.ts";
import { answerJob } from "./answerJob.ts";
import { inkFor } from "./ink.ts";
import { openJob } from "./openJob.ts";
import { Refusal } from "./refusal.ts";
import { columnsOf, wrap } from "./wrap.ts";

/**
 * Prints the finding and gives the exit status: 0 where every mix of the doubts folds, 1 where some mix does not.
 * @throws Refusal for input that cannot be worked with
 */
export async function runDoubt(path: string, options: { readonly by?: string }): Promise<number> {
  const job = await openJob(path);
  const doubtMm = options.by === undefined ? usualDoubtMm(job.units) : parseLength(options.by, job.units);
  const shortest = Math.min(...job.part.flatsMm);
  if (doubtMm === undefined || doubtMm < 0 || doubtMm >= shortest) {
    const limit = lengthWords(shortest, job.units);
    throw new Refusal(
      `--by is "${options.by ?? ""}"; it may be a length from 0 to under ${limit}, the shortest flat.`,
    );
  }
  const answer = await answerJob(job);
  const order = answer.order.map(({ bend, clamped }) => ({ bend: bend - 1, clamped }));
  const doubt = judgeDoubts(
    job,
    order,
    job.part.flatsMm.map(() => doubtMm),
  );
  const ink = inkFor(process.stdout, process.env);
  const [first = "", ...rest] = doubtSentences(doubt, job.units);
  const lines = [
    ink.strong(first),
    ...rest,
    `As read: ${verdictSentence(job, answer)} Each flat may be off by ${formatLength(doubtMm, job.units)} ${job.units}.`,
    "",
    ...wrap(CAUTIONS, columnsOf(process.stdout), "").map(ink.faint),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return doubt.worst === null && doubt.proved ? 0 : 1;
}
