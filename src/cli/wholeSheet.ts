/**
 * `noseroom sheet` of a whole part, and the pictures of `noseroom check --svg`.
 */
import { join } from "node:path";
import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { wholeSheet } from "../pictures/wholeSheet.ts";
import { drawWholeStroke } from "../pictures/wholeStroke.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { wholeVerdict } from "../words/wholeWords.ts";
import { answerWhole } from "./answerJob.ts";
import { pagesWords, paperOption } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { pageScale } from "./stepPictures.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { makeFolder, type WriteOptions, writeAllOut, writeOut } from "./writeOut.ts";

/** Writes the sheet and gives the exit status of the answer. */
export async function sheetOfWhole(
  job: WholeJob,
  options: WriteOptions & { readonly pdf: string; readonly paper?: string },
): Promise<number> {
  const size = paperOption(options.paper, job.units);
  const answer = await answerWhole(job);
  const pages = wholeSheet(job, answer, size);
  await writeOut(options.pdf, await writePdf(pages, `Shop sheet: ${job.part.name}`), options);
  const ink = inkFor(process.stdout, process.env);
  const lines = [
    ink.strong(wholeVerdict(job, answer)),
    `Shop sheet of ${job.part.name}, ${pagesWords(pages, size)}: ${options.pdf}`,
    "",
    ...wrap(CAUTIONS, columnsOf(process.stdout), "").map(ink.faint),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return answer.verdict === "hits" ? 1 : 0;
}

/** Writes three pictures a stroke into a folder and gives their paths. */
export async function writeStrokePictures(
  folder: string,
  job: WholeJob,
  answer: WholeAnswer,
  options: WriteOptions,
): Promise<string[]> {
  await makeFolder(folder);
  const files = answer.order.flatMap((_, index) => {
    const pictures = drawWholeStroke(job, answer, index);
    return (["view", "section", "fingers"] as const).map((what): [string, string] => {
      const title = `${job.part.name}, stroke ${index + 1}, ${what}`;
      const enlargement = pageScale(pictures[what]);
      const name = `stroke-${String(index + 1).padStart(2, "0")}-${what}.svg`;
      return [join(folder, name), writeSvg(pictures[what], { title, enlargement })];
    });
  });
  await writeAllOut(files, options);
  return files.map(([file]) => file);
}
