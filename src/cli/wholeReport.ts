/**
 * A checked whole part as text for the person at the brake. The words are in words/wholeReport.ts.
 */
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import type { WholeWay } from "../jobFile/wholeWay.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { wholeJobSentences, wholeSections, wholeTable } from "../words/wholeReport.ts";
import { NO_WHOLE_WAY } from "../words/wholeWayWords.ts";
import { wholeVerdict } from "../words/wholeWords.ts";
import type { Ink } from "./ink.ts";
import { table } from "./table.ts";
import { wrap } from "./wrap.ts";

/** The report as far as a check tells it, one string a line; sentences no wider than `columns`. */
export function wholeReportLines(
  job: WholeJob,
  answer: WholeAnswer,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const verdict = wholeVerdict(job, answer);
  return [
    ...wrap(verdict, columns, "").map((line) =>
      answer.verdict === "hits" ? ink.signal(line) : ink.strong(line),
    ),
    "",
    ...wholeJobSentences(job, answer).flatMap((sentence) => wrap(sentence, columns, "")),
    "",
    ...table(wholeTable(job, answer), ["right", "right", "left", "left", "left", "left", "left"]),
    ...wholeSections(job, answer).flatMap(([title, sentences]) => [
      "",
      ink.strong(title),
      ...sentences.flatMap((sentence) => wrap(sentence, columns, "  ")),
    ]),
  ];
}

/** What would let it fold, under the report. */
export function wholeWayLines(
  ways: readonly WholeWay[],
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const sentences = ways.length === 0 ? [NO_WHOLE_WAY] : ways.map(({ sentence }) => sentence);
  return [
    "",
    ink.strong("Ways out, each checked again"),
    ...sentences.flatMap((sentence) => wrap(sentence, columns, "  ")),
  ];
}

/** The last lines of every report. */
export function cautionLines(ink: Ink, columns = Number.POSITIVE_INFINITY): string[] {
  return ["", ...wrap(CAUTIONS, columns, "").map(ink.faint)];
}
