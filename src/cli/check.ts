/**
 * `noseroom check JOB`: can it be folded, in which order, where does it hit.
 */
import { join } from "node:path";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { answerJob } from "./answerJob.ts";
import { answerJson } from "./answerJson.ts";
import { inkFor } from "./ink.ts";
import { type Chosen, openJobsOrWhole } from "./openJob.ts";
import { orderListData, orderListLines } from "./orderList.ts";
import { reportLines } from "./report.ts";
import { writeStepPictures } from "./stepPictures.ts";
import { checkWholeJob } from "./wholeCheck.ts";
import { columnsOf } from "./wrap.ts";
import type { WriteOptions } from "./writeOut.ts";

export interface CheckOptions extends WriteOptions, Chosen {
  readonly json?: boolean;
  /** List the orders that work in the place of the report. */
  readonly orders?: boolean;
  /** Folder for one picture a step. */
  readonly svg?: string;
}

/** Exit status of a verdict. */
export function statusOf(verdict: Answer["verdict"]): 0 | 1 {
  return verdict === "hits" ? 1 : 0;
}

/**
 * Runs the command and gives its exit status; of a shop file's jobs, 1 where any does not fold. Pictures are written
 * first: where that fails, nothing is printed.
 * @throws Refusal for input that cannot be worked with
 */
export async function runCheck(path: string, options: CheckOptions): Promise<number> {
  const read = await openJobsOrWhole(path, options);
  if ("whole" in read) return checkWholeJob(read, options);
  const { jobs, ofShop } = read;
  const pieces: string[] = [];
  let status: 0 | 1 = 0;
  for (const [i, { job, file }] of jobs.entries()) {
    const answer = await answerJob(job, options.orders ? undefined : file);
    if (options.orders) {
      pieces.push(
        options.json
          ? JSON.stringify(orderListData(job, answer), null, 2)
          : orderListLines(job, answer, columnsOf(process.stdout)).join("\n"),
      );
      if (statusOf(answer.verdict) === 1) status = 1;
      continue;
    }
    const folder = options.svg !== undefined && ofShop ? join(options.svg, `job-${i + 1}`) : options.svg;
    const pictures = folder === undefined ? [] : await writeStepPictures(folder, job, answer, options);
    pieces.push(options.json ? answerJson(answer) : reportText(job, answer, pictures, ofShop));
    if (statusOf(answer.verdict) === 1) status = 1;
  }
  const all = options.json && ofShop ? `[\n${pieces.join(",\n")}\n]` : pieces.join("\n\n\n");
  process.stdout.write(`${all}\n`);
  return status;
}

/** The answer for the person at the brake; of several jobs each under its name. */
function reportText(job: Job, answer: Answer, pictures: readonly string[], named: boolean): string {
  const ink = inkFor(process.stdout, process.env);
  const head = named ? [ink.strong(job.part.name.toUpperCase()), ""] : [];
  const drawn = pictures.length > 0 ? ["", "Pictures", ...pictures.map((file) => `  ${file}`)] : [];
  return [...head, ...reportLines(job, answer, ink, columnsOf(process.stdout)), ...drawn].join("\n");
}
