/**
 * The answer to a job with everything that `check` prints: verdict, order, blank, warnings and ways out.
 */
import type { Answer } from "../job/answer.ts";
import { check } from "../job/check.ts";
import type { Job } from "../job/job.ts";
import type { JobFile } from "../job/schema.ts";
import { waysOut } from "../job/waysOut.ts";

/** A job, and the file that it was read from where ways out are wanted: they are changes to the file. */
export interface Question {
  readonly job: Job;
  readonly file?: JobFile;
}

/** Checks a job; with its file also looks for ways out where it does not fold, or folds only just. */
export function fullAnswer({ job, file }: Question, watch?: Parameters<typeof check>[1]): Answer {
  const answer = check(job, watch);
  return file === undefined ? answer : { ...answer, remedies: waysOut(file, job, answer) };
}
