/**
 * `noseroom check` of a whole part.
 */
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { answerWhole } from "./answerJob.ts";
import { answerJson } from "./answerJson.ts";
import { inkFor } from "./ink.ts";
import { wholeReportLines } from "./wholeReport.ts";
import { writeStrokePictures } from "./wholeSheet.ts";
import { columnsOf } from "./wrap.ts";
import type { WriteOptions } from "./writeOut.ts";

interface WholeCheckOptions extends WriteOptions {
  readonly json?: boolean;
  /** Folder for the pictures. */
  readonly svg?: string;
}

/** Prints the answer and gives the exit status. */
export async function checkWholeJob(job: WholeJob, options: WholeCheckOptions): Promise<number> {
  const answer = await answerWhole(job);
  const pictures =
    options.svg === undefined ? [] : await writeStrokePictures(options.svg, job, answer, options);
  const ink = inkFor(process.stdout, process.env);
  const drawn = pictures.length > 0 ? ["", "Pictures", ...pictures.map((file) => `  ${file}`)] : [];
  const text = options.json
    ? answerJson(answer)
    : [...wholeReportLines(job, answer, ink, columnsOf(process.stdout)), ...drawn].join("\n");
  process.stdout.write(`${text}\n`);
  return answer.verdict === "hits" ? 1 : 0;
}
