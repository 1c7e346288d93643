/**
 * `noseroom sheet JOB --pdf FILE`: the shop sheet of a job as a PDF file, ready to print.
 */

import { writePdf } from "../drawing/pdfPen.ts";
import { shopSheet } from "../pictures/shopSheet.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { answerJob } from "./answerJob.ts";
import { pagesWords, paperOption } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { openJobFile } from "./openJob.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface SheetOptions extends WriteOptions {
  readonly pdf: string;
  readonly paper?: string;
}

/**
 * Writes the sheet and gives the exit status of the answer: 0 where the part folds, 1 where it does not.
 * @throws Refusal for input that cannot be worked with, or a file that cannot be written
 */
export async function runSheet(path: string, options: SheetOptions): Promise<number> {
  const { job, file } = await openJobFile(path);
  const size = paperOption(options.paper, job.units);
  const answer = await answerJob(job, file);
  const pages = shopSheet(job, answer, size);
  await writeOut(options.pdf, await writePdf(pages, `Shop sheet: ${job.part.name}`), options);
  const ink = inkFor(process.stdout, process.env);
  const lines = [
    ink.strong(verdictSentence(job, answer)),
    `Shop sheet of ${job.part.name}, ${pagesWords(pages, size)}: ${options.pdf}`,
    "",
    ...wrap(CAUTIONS, columnsOf(process.stdout), "").map(ink.faint),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return answer.verdict === "hits" ? 1 : 0;
}
