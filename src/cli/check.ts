/**
 * `noseroom check JOB`: can it be folded, in which order, where does it hit.
 */
import { join } from "node:path";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { JobFile } from "../jobFile/schema.ts";
import { answerJob } from "./answerJob.ts";
import { answerJson } from "./answerJson.ts";
import { inkFor } from "./ink.ts";
import { type Chosen, openJobsOrWhole } from "./openJob.ts";
import { orderListData, orderListLines } from "./orderList.ts";
import { laterLines, verdictLines } from "./report.ts";
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
 * Runs the command and gives its exit status; of a shop file's jobs, 1 where any does not fold. A job's pictures are written
 * before anything of it is printed, its verdict before ways out are looked for.
 * @throws Refusal for input that cannot be worked with
 */
export async function runCheck(path: string, options: CheckOptions): Promise<number> {
  const read = await openJobsOrWhole(path, options);
  if ("whole" in read) return (await import("./wholeCheck.ts")).checkWholeJob(read, options);
  const { jobs, ofShop } = read;
  const data: string[] = [];
  let status: 0 | 1 = 0;
  for (const [i, { job, file }] of jobs.entries()) {
    const print = (lines: readonly string[]) => process.stdout.write(`${lines.join("\n")}\n`);
    if (i > 0 && !options.json) print(["", ""]);
    const { verdict } = await (options.orders
      ? listed(job, options, print, data)
      : reported({ job, file, i, ofShop }, options, print, data));
    if (statusOf(verdict) === 1) status = 1;
  }
  if (options.json) process.stdout.write(`${ofShop ? `[\n${data.join(",\n")}\n]` : data.join("")}\n`);
  return status;
}

type Print = (lines: readonly string[]) => void;

/** The orders that work; as data where that is asked for. */
async function listed(job: Job, { json }: CheckOptions, print: Print, data: string[]): Promise<Answer> {
  const answer = await answerJob(job);
  if (json) data.push(JSON.stringify(orderListData(job, answer), null, 2));
  else print(orderListLines(job, answer, columnsOf(process.stdout)));
  return answer;
}

interface Opened {
  readonly job: Job;
  readonly file: JobFile;
  readonly i: number;
  readonly ofShop: boolean;
}

/** The report for the person at the brake, each of several jobs under its name; as data where that is asked for. */
async function reported(
  { job, file, i, ofShop }: Opened,
  options: CheckOptions,
  print: Print,
  data: string[],
): Promise<Answer> {
  const ink = inkFor(process.stdout, process.env);
  const columns = columnsOf(process.stdout);
  const folder = options.svg !== undefined && ofShop ? join(options.svg, `job-${i + 1}`) : options.svg;
  let pictures: readonly string[] = [];
  const answer = await answerJob(job, file, {}, async (judged) => {
    if (folder !== undefined) {
      // Only who draws loads the pens, which cost more than a check of few bends.
      const { writeStepPictures } = await import("./stepPictures.ts");
      pictures = await writeStepPictures(folder, job, judged, options);
    }
    if (options.json) return;
    const head = ofShop ? [ink.strong(job.part.name.toUpperCase()), ""] : [];
    print([...head, ...verdictLines(job, judged, ink, columns)]);
  });
  if (options.json) data.push(answerJson(answer));
  else {
    const drawn = pictures.length > 0 ? ["", "Pictures", ...pictures.map((path) => `  ${path}`)] : [];
    print([...laterLines(job, answer, ink, columns), ...drawn]);
  }
  return answer;
}
