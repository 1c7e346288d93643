/**
 * From a job's path to the job, or to the sentences that say what is wrong with it.
 */
import type { Job } from "../job/job.ts";
import { problemSentence } from "../job/problem.ts";
import { type JobRead, readJob } from "../job/readJob.ts";
import { jobName, jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";

/** So many slips in one file are shown; the rest are counted. */
const MOST_SHOWN = 12;

/**
 * Reads and resolves a job, and keeps the file as it was written beside it.
 * @throws Refusal naming each problem with its key's path
 */
export async function openJobFile(path: string): Promise<Extract<JobRead, { ok: true }>> {
  const reading = readJob(await jobText(path));
  if (reading.ok) return reading;
  const sentences = reading.problems
    .slice(0, MOST_SHOWN)
    .map((problem) => `${jobName(path)}: ${problemSentence(problem)}`);
  const more = reading.problems.length - sentences.length;
  throw new Refusal(...sentences, ...(more > 0 ? [`… and ${more} more like these.`] : []));
}

/**
 * Reads and resolves a job.
 * @throws Refusal naming each problem with its key's path
 */
export async function openJob(path: string): Promise<Job> {
  return (await openJobFile(path)).job;
}
