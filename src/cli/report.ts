/**
 * A checked job as text for the person at the brake: verdict in one sentence, order as a table, what blocks it,
 * how to get the part in and out, what to mind, cautions. The words are in words/reportWords.ts.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { FOLDS_AS_READ } from "../words/doubtWords.ts";
import { ordersSentence } from "../words/ordersWords.ts";
import { jobSentence, orderTable, reportSections } from "../words/reportWords.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import type { Ink } from "./ink.ts";
import { table } from "./table.ts";
import { wrap } from "./wrap.ts";

/** The whole report, one string a line; sentences no wider than `columns`. */
export function reportLines(
  job: Job,
  answer: Answer,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const verdict = verdictSentence(job, answer);
  const sure = answer.doubts?.worst === null && answer.doubts.proved;
  return [
    answer.verdict === "hits" ? ink.signal(verdict) : ink.strong(verdict),
    "",
    jobSentence(job, answer),
    ordersSentence(job, answer),
    ...(sure ? [FOLDS_AS_READ] : []),
    "",
    ...table(orderTable(job, answer), ["right", "right", "left", "left", "left", "left", "left"]),
    ...reportSections(job, answer).flatMap(([title, sentences]) => [
      "",
      ink.strong(title),
      ...sentences.flatMap((sentence) => wrap(sentence, columns, "  ")),
    ]),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}
