/**
 * `noseroom sheet JOB --pdf FILE`: the shop sheet of a job as a PDF file, ready to print.
 */

import type { Page } from "../drawing/page.ts";
import { writePdf } from "../drawing/pdfPen.ts";
import { shopSheet } from "../pictures/shopSheet.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { answerJob } from "./answerJob.ts";
import { pagesWords, paperOption } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { type Chosen, openJobsOrWhole } from "./openJob.ts";
import { sheetOfWhole } from "./wholeSheet.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface SheetOptions extends WriteOptions, Chosen {
  readonly pdf: string;
  readonly paper?: string;
}

/**
 * Writes the sheet, or one after the other those of a shop file's jobs, and gives the exit status of the answers: 0 where
 * every part folds, 1 where one does not.
 * @throws Refusal for input that cannot be worked with, or a file that cannot be written
 */
export async function runSheet(path: string, options: SheetOptions): Promise<number> {
  const opened = await openJobsOrWhole(path, options);
  if ("whole" in opened) return sheetOfWhole(opened.whole, options);
  const { jobs } = opened;
  const ink = inkFor(process.stdout, process.env);
  const pages: Page[] = [];
  const said: string[] = [];
  let status = 0;
  for (const { job, file } of jobs) {
    const size = paperOption(options.paper, job.units);
    const answer = await answerJob(job, file);
    const sheet = shopSheet(job, answer, size);
    pages.push(...sheet);
    said.push(
      ink.strong(verdictSentence(job, answer)),
      `Shop sheet of ${job.part.name}, ${pagesWords(sheet, size)}: ${options.pdf}`,
    );
    if (answer.verdict === "hits") status = 1;
  }
  const title = jobs.length === 1 ? `Shop sheet: ${jobs[0]?.job.part.name}` : "Shop sheets";
  await writeOut(options.pdf, await writePdf(pages, title), options);
  const lines = [...said, "", ...wrap(CAUTIONS, columnsOf(process.stdout), "").map(ink.faint)];
  process.stdout.write(`${lines.join("\n")}\n`);
  return status;
}
