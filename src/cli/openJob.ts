/**
 * From a job's path to the job, or to the sentences that say what is wrong with it.
 */
import type { Job } from "../jobFile/job.ts";
import { type AnyJobRead, readAnyJob } from "../jobFile/readAnyJob.ts";
import type { JobRead } from "../jobFile/readJob.ts";
import { jobName, jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";
import { slipsRefused } from "./slips.ts";

/**
 * Reads and resolves a job of either kind, and keeps the file as it was written beside it.
 * @throws Refusal naming each problem with its key's path
 */
export async function openAnyJob(path: string): Promise<Extract<AnyJobRead, { ok: true }>> {
  const reading = readAnyJob(await jobText(path));
  if (reading.ok) return reading;
  if (reading.problems.some((problem) => problem.path === "noseroomShop")) {
    throw new Refusal(`${jobName(path)} is a shop file; this takes a job file. Try noseroom fit with it.`);
  }
  throw slipsRefused(path, reading.problems);
}

/**
 * The same of a section alone.
 * @throws Refusal naming each problem with its key's path, or that the part is more than a section
 */
export async function openJobFile(path: string): Promise<Extract<JobRead, { ok: true }>> {
  const reading = await openAnyJob(path);
  if (reading.kind === "section") return reading;
  throw new Refusal(
    `${jobName(path)} has a part that is more than a section (box, ends or pattern). This command takes sections; noseroom check takes both.`,
  );
}

/**
 * Reads and resolves a job.
 * @throws Refusal naming each problem with its key's path
 */
export async function openJob(path: string): Promise<Job> {
  return (await openJobFile(path)).job;
}
