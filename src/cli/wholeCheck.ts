/**
 * `noseroom check` of a whole part: the verdict at once, then what would let it fold.
 */
import { answerWhole, waysForWhole } from "./answerJob.ts";
import { answerJson } from "./answerJson.ts";
import { inkFor } from "./ink.ts";
import type { OpenedWhole } from "./openJob.ts";
import { Refusal } from "./refusal.ts";
import { cautionLines, wholeReportLines, wholeWayLines } from "./wholeReport.ts";
import { writeStrokePictures } from "./wholeSheet.ts";
import { columnsOf } from "./wrap.ts";
import type { WriteOptions } from "./writeOut.ts";

interface WholeCheckOptions extends WriteOptions {
  readonly json?: boolean;
  readonly orders?: boolean;
  /** Folder for the pictures. */
  readonly svg?: string;
}

/** Prints the answer and gives the exit status. */
export async function checkWholeJob(
  { whole: job, file }: OpenedWhole,
  options: WholeCheckOptions,
): Promise<number> {
  if (options.orders)
    throw new Refusal("--orders lists those of a section; leave it away to see the best order of this part.");
  const answer = await answerWhole(job);
  const pictures =
    options.svg === undefined ? [] : await writeStrokePictures(options.svg, job, answer, options);
  const status = answer.verdict === "hits" ? 1 : 0;
  if (options.json) {
    const remedies = await waysForWhole(job, file, answer);
    process.stdout.write(`${answerJson({ ...answer, remedies })}\n`);
    return status;
  }
  const ink = inkFor(process.stdout, process.env);
  const columns = columnsOf(process.stdout);
  const print = (lines: readonly string[]) => process.stdout.write(`${lines.join("\n")}\n`);
  print(wholeReportLines(job, answer, ink, columns));
  // Ways take long to try; whoever has read enough may stop here.
  if (status === 1) print(wholeWayLines(await waysForWhole(job, file, answer), ink, columns));
  if (pictures.length > 0) print(["", "Pictures", ...pictures.map((path) => `  ${path}`)]);
  print(cautionLines(ink, columns));
  return status;
}
