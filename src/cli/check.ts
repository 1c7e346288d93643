/**
 * `noseroom check JOB`: can it be folded, in which order, where does it hit.
 */
import type { Answer } from "../jobFile/answer.ts";
import { answerJob } from "./answerJob.ts";
import { answerJson } from "./answerJson.ts";
import { inkFor } from "./ink.ts";
import { openAnyJob } from "./openJob.ts";
import { reportLines } from "./report.ts";
import { writeStepPictures } from "./stepPictures.ts";
import { checkWholeJob } from "./wholeCheck.ts";
import { columnsOf } from "./wrap.ts";

export interface CheckOptions {
  readonly json?: boolean;
  /** Folder for one picture a step. */
  readonly svg?: string;
}

/** Exit status of a verdict. */
export function statusOf(verdict: Answer["verdict"]): 0 | 1 {
  return verdict === "hits" ? 1 : 0;
}

/**
 * Runs the command and gives its exit status. Pictures are written first: where that fails, nothing is printed.
 * @throws Refusal for input that cannot be worked with
 */
export async function runCheck(path: string, options: CheckOptions): Promise<number> {
  const read = await openAnyJob(path);
  if (read.kind === "whole") return checkWholeJob(read.job, options);
  const { job, file } = read;
  const answer = await answerJob(job, file);
  const pictures = options.svg === undefined ? [] : await writeStepPictures(options.svg, job, answer);
  if (options.json) {
    process.stdout.write(`${answerJson(answer)}\n`);
  } else {
    const lines = reportLines(job, answer, inkFor(process.stdout, process.env), columnsOf(process.stdout));
    if (pictures.length > 0) lines.push("", "Pictures", ...pictures.map((file) => `  ${file}`));
    process.stdout.write(`${lines.join("\n")}\n`);
  }
  return statusOf(answer.verdict);
}
