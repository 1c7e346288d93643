/**
 * A checked job as text for the person at the brake: verdict in one sentence, order as a table, what blocks it,
 * how to get the part in and out, what to mind, cautions. The words are in words/reportWords.ts.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { FOLDS_AS_READ } from "../words/doubtWords.ts";
import { ordersSentence } from "../words/ordersWords.ts";
import {
  blockSection,
  jobSentence,
  laterSections,
  orderTable,
  type reportSections,
} from "../words/reportWords.ts";
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
  return [...verdictLines(job, answer, ink, columns), ...laterLines(job, answer, ink, columns)];
}

/** What can be said before ways out are looked for: verdict, order, what blocks it. */
export function verdictLines(job: Job, answer: Answer, ink: Ink, columns: number): string[] {
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
    ...sectionLines(blockSection(job, answer), ink, columns),
  ];
}

/** What follows when they have been found. */
export function laterLines(job: Job, answer: Answer, ink: Ink, columns: number): string[] {
  return [
    ...sectionLines(laterSections(job, answer), ink, columns),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}

function sectionLines(sections: ReturnType<typeof reportSections>, ink: Ink, columns: number): string[] {
  return sections.flatMap(([title, sentences]) => [
    "",
    ink.strong(title),
    ...sentences.flatMap((sentence) => wrap(sentence, columns, "  ")),
  ]);
}
