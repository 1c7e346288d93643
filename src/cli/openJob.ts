/**
 * From a job's path to the job, or to the sentences that say what is wrong with it.
 */
import type { Job } from "../jobFile/job.ts";
import { type JobRead, readJob } from "../jobFile/readJob.ts";
import { jobName, jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";
import { slipsRefused } from "./slips.ts";

/**
 * Reads and resolves a job, and keeps the file as it was written beside it.
 * @throws Refusal naming each problem with its key's path
 */
export async function openJobFile(path: string): Promise<Extract<JobRead, { ok: true }>> {
  const reading = readJob(await jobText(path));
  if (reading.ok) return reading;
  if (reading.problems.some((problem) => problem.path === "noseroomShop")) {
    throw new Refusal(`${jobName(path)} is a shop file; this takes a job file. Try noseroom fit with it.`);
  }
  throw slipsRefused(path, reading.problems);
}

/**
 * Reads and resolves a job.
 * @throws Refusal naming each problem with its key's path
 */
export async function openJob(path: string): Promise<Job> {
  return (await openJobFile(path)).job;
}
