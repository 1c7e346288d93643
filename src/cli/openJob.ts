/**
 * From a job's path to the job, or to the sentences that say what is wrong with it; from a shop file's to all its jobs.
 */
import type { Job } from "../jobFile/job.ts";
import { type JobRead, readJob } from "../jobFile/readJob.ts";
import { isShop, readShop } from "../jobFile/readShop.ts";
import { jobName, jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";
import { slipsRefused } from "./slips.ts";

/**
 * Reads and resolves a job, and keeps the file as it was written beside it.
 * @throws Refusal naming each problem with its key's path
 */
export async function openJobFile(path: string): Promise<Extract<JobRead, { ok: true }>> {
  return jobFrom(path, await jobText(path));
}

function jobFrom(path: string, text: string): Extract<JobRead, { ok: true }> {
  const reading = readJob(text);
  if (reading.ok) return reading;
  if (reading.problems.some((problem) => problem.path === "noseroomShop")) {
    throw new Refusal(
      `${jobName(path)} is a shop file; this takes a job file. Try noseroom check, sheet or fit with it.`,
    );
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

/**
 * Reads a job, or every job of a shop file.
 * @throws Refusal naming each problem with its key's path, or where a shop file has no jobs
 */
export async function openJobs(
  path: string,
): Promise<{ readonly jobs: readonly Extract<JobRead, { ok: true }>[]; readonly ofShop: boolean }> {
  const text = await jobText(path);
  if (!isShop(text)) return { jobs: [jobFrom(path, text)], ofShop: false };
  const read = readShop(text);
  if (!read.ok) throw slipsRefused(path, read.problems);
  if (read.jobs.length > 0) return { jobs: read.jobs, ofShop: true };
  throw new Refusal(`${jobName(path)} has brakes and parts but no jobs. Try noseroom fit with it.`);
}
