/**
 * From a job's path to the job, or to the sentences that say what is wrong with it; from a shop file's to all its jobs.
 */
import type { Job } from "../jobFile/job.ts";
import { type AnyJobRead, readAnyJob } from "../jobFile/readAnyJob.ts";
import type { JobRead } from "../jobFile/readJob.ts";
import { isShop, readShop } from "../jobFile/readShop.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
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

/** A section's job; a whole part's is refused. */
function jobFrom(path: string, text: string): Extract<JobRead, { ok: true }> {
  const read = anyJobFrom(path, text);
  if (read.kind === "section") return read;
  throw new Refusal(
    `${jobName(path)} has a part that is more than a section: a box, a pattern, ends or spans. So far noseroom check takes such parts; this command takes sections.`,
  );
}

function anyJobFrom(path: string, text: string): Extract<AnyJobRead, { ok: true }> {
  const reading = readAnyJob(text);
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

/** The jobs of a file: of a shop file all that it has. */
interface Jobs {
  readonly jobs: readonly Extract<JobRead, { ok: true }>[];
  readonly ofShop: boolean;
}

/**
 * Reads a job, or every job of a shop file.
 * @throws Refusal naming each problem with its key's path, or where a shop file has no jobs
 */
export async function openJobs(path: string): Promise<Jobs> {
  const text = await jobText(path);
  return isShop(text) ? shopJobs(path, text) : { jobs: [jobFrom(path, text)], ofShop: false };
}

/**
 * The same, or the job of a whole part.
 * @throws Refusal as openJobs does
 */
export async function openJobsOrWhole(path: string): Promise<Jobs | { readonly whole: WholeJob }> {
  const text = await jobText(path);
  if (isShop(text)) return shopJobs(path, text);
  const read = anyJobFrom(path, text);
  return read.kind === "whole" ? { whole: read.job } : { jobs: [read], ofShop: false };
}

function shopJobs(path: string, text: string): Jobs {
  const read = readShop(text);
  if (!read.ok) throw slipsRefused(path, read.problems);
  if (read.jobs.length > 0) return { jobs: read.jobs, ofShop: true };
  throw new Refusal(`${jobName(path)} has brakes and parts but no jobs. Try noseroom fit with it.`);
}
