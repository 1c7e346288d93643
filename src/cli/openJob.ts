/**
 * From a path to the job, or to the sentences that say what is wrong with it; from a shop file's to its jobs, or to one
 * of its parts on one of its brakes.
 */
import type { Job } from "../jobFile/job.ts";
import { readAnyJob } from "../jobFile/readAnyJob.ts";
import { type JobRead, jobOf } from "../jobFile/readJob.ts";
import { isShop, jobFileOf, readShop } from "../jobFile/readShop.ts";
import type { Shop } from "../jobFile/shopFile.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import { jobName, jobText } from "./jobText.ts";
import { Refusal } from "./refusal.ts";
import { slipsRefused } from "./slips.ts";

type OpenedJob = Extract<JobRead, { ok: true }>;

/** A whole part's job, with its file as it was written. */
export interface OpenedWhole {
  readonly whole: WholeJob;
  readonly file: WholeFile;
}

/** The jobs of a file: of a shop file all that it has. */
interface Jobs {
  readonly jobs: readonly OpenedJob[];
  readonly ofShop: boolean;
}

/** Which part on which brake of a shop file, by name or by number from 1. */
export interface Chosen {
  readonly part?: string;
  readonly brake?: string;
}

/**
 * Reads and resolves a section's job, and keeps the file as it was written beside it.
 * @throws Refusal naming each problem with its key's path, or where a shop file leaves a choice
 */
export async function openJobFile(path: string, instead: string): Promise<OpenedJob> {
  const read = await openJobsOrWhole(path, {});
  if ("whole" in read) throw wholeRefused(path, instead);
  return onlyJob(path, read);
}

/** A whole part where a command takes a section alone; `instead` says what to do. */
export function wholeRefused(path: string, instead: string): Refusal {
  return new Refusal(`${jobName(path)} has a part that is more than a section. ${instead}`);
}

function onlyJob(path: string, { jobs }: Jobs): OpenedJob {
  const [only, ...more] = jobs;
  if (only !== undefined && more.length === 0) return only;
  throw new Refusal(
    `${jobName(path)} has ${jobs.length} jobs; this takes one. Choose with --part and --brake.`,
  );
}

/**
 * The same, or the job of a whole part with its file.
 * @throws Refusal as openJobFile does
 */
export async function openJobOrWhole(path: string, chosen: Chosen = {}): Promise<OpenedJob | OpenedWhole> {
  const read = await openJobsOrWhole(path, chosen);
  return "whole" in read ? read : onlyJob(path, read);
}

/**
 * Reads and resolves a job.
 * @throws Refusal naming each problem with its key's path, or where a shop file leaves a choice
 */
export async function openJob(path: string, instead: string): Promise<Job> {
  return (await openJobFile(path, instead)).job;
}

/**
 * Reads a job, every job of a shop file, or the part and brake that are chosen from it; or the job of a whole part.
 * @throws Refusal naming each problem with its key's path, or where a shop file has no jobs and nothing is chosen
 */
export async function openJobsOrWhole(path: string, chosen: Chosen = {}): Promise<Jobs | OpenedWhole> {
  const text = await jobText(path);
  const choice = chosen.part !== undefined || chosen.brake !== undefined;
  if (!isShop(text)) {
    if (choice) {
      throw new Refusal(`--part and --brake choose from a shop file; ${jobName(path)} is a job file.`);
    }
    const reading = readAnyJob(text);
    if (!reading.ok) throw slipsRefused(path, reading.problems);
    return reading.kind === "whole"
      ? { whole: reading.job, file: reading.file }
      : { jobs: [reading], ofShop: false };
  }
  const read = readShop(text);
  if (!read.ok) throw slipsRefused(path, read.problems);
  if (choice) return { jobs: [chosenJob(path, read.shop, chosen)], ofShop: false };
  if (read.jobs.length > 0) return { jobs: read.jobs, ofShop: true };
  throw new Refusal(
    `${jobName(path)} is a shop file. Choose with --part and --brake, or try noseroom fit with it.`,
  );
}

function chosenJob(path: string, shop: Shop, chosen: Chosen): OpenedJob {
  const part = oneOf(shop.parts, chosen.part, "--part");
  const brake = oneOf(shop.brakes, chosen.brake, "--brake");
  const read = jobOf(jobFileOf(shop, part, brake));
  if (read.ok) return read;
  throw slipsRefused(path, read.problems);
}

/** The one that is asked for, or the only one there is. */
function oneOf<Named extends { readonly name: string }>(
  all: readonly Named[],
  asked: string | undefined,
  option: string,
): Named {
  const wanted = asked?.trim().toLowerCase();
  const found =
    wanted === undefined
      ? all.length === 1
        ? all[0]
        : undefined
      : (all.find(({ name }) => name.toLowerCase() === wanted) ?? all[Number(wanted) - 1]);
  if (found !== undefined) return found;
  const names = all.map(({ name }, i) => `${i + 1} ${name}`).join(", ");
  const said = asked === undefined ? `${option} is missing` : `${option} is "${asked}"`;
  throw new Refusal(`${said}; it may be a name or number of: ${names}.`);
}
