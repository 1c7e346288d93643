/**
 * Takes in a file from anywhere: one job, a list of jobs, or a shop file with brakes, parts and jobs. What does not fit
 * is left out and said in a sentence; nothing read here is ever treated as markup.
 */
import { type LengthUnit, unitMeant } from "../../src/units/length.ts";
import { adopt, adoptBrake } from "./adopt.ts";
import { adoptPart } from "./adoptPart.ts";
import { firstJob, usualBrake } from "./firstJob.ts";
import { type BrakeFile, type JobFile, written } from "./jobFile.ts";
import { type Bag, isBag, Sieve } from "./sieve.ts";

export interface LooseBrake {
  readonly units: LengthUnit;
  readonly brake: BrakeFile;
}

export type Opened =
  | {
      readonly ok: true;
      readonly jobs: readonly JobFile[];
      /** Brakes that come without a job. */
      readonly brakes: readonly LooseBrake[];
      readonly leftOut: readonly string[];
    }
  | { readonly ok: false; readonly sentence: string };

const LONGEST_JOB = 200_000;
const LONGEST_SHOP = 4_000_000;
const MOST = 200;

/** Reads the text of a file; a cut-off or oversized text is refused with a sentence. */
export function openedText(text: string): Opened {
  if (text.length > LONGEST_SHOP) return tooLong(text, LONGEST_SHOP);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refused("The file is cut off or is not JSON, so it could not be read.");
  }
  if (isBag(value) && value.noseroomShop !== undefined) return openedShop(value);
  if (Array.isArray(value) && value.length > 0) return openedJobs(value, []);
  return text.length > LONGEST_JOB ? tooLong(text, LONGEST_JOB) : openedJobs([value], []);
}

const refused = (sentence: string): Opened => ({ ok: false, sentence });

function tooLong(text: string, most: number): Opened {
  const what = most === LONGEST_JOB ? "a job file" : "a shop file";
  return refused(
    `The file is ${Math.round(text.length / 1000)} kB long; ${what} has at most ${most / 1000} kB.`,
  );
}

function openedJobs(values: readonly unknown[], brakes: readonly LooseBrake[]): Opened {
  const jobs: JobFile[] = [];
  const leftOut: string[] = [];
  for (const value of values.slice(0, MOST)) {
    const adopted = adopt(value);
    if (adopted.ok) {
      jobs.push(adopted.file);
      leftOut.push(
        ...adopted.leftOut.map((words) =>
          values.length === 1 ? words : `${adopted.file.part.name}: ${words}`,
        ),
      );
    } else if (values.length === 1) return adopted;
    else leftOut.push(`A job was left out. ${adopted.sentence}`);
  }
  if (jobs.length === 0 && brakes.length === 0)
    return refused("There is no job in the file that could be read.");
  return { ok: true, jobs, brakes, leftOut: leftOut.slice(0, 12) };
}

/** A shop file: its parts become jobs on its first brake, where no job has them already. */
function openedShop(bag: Bag): Opened {
  if (bag.noseroomShop !== 1) return refused('This page reads shop files with "noseroomShop": 1.');
  const units = unitMeant(bag.units) ?? "mm";
  const sieve = new Sieve();
  const listed = (key: string) => (Array.isArray(bag[key]) ? (bag[key] as unknown[]).slice(0, MOST) : []);
  const brakes = listed("brakes").map(
    (brake): LooseBrake => ({ units, brake: adoptBrake(sieve, brake, usualBrake(units)) }),
  );
  const usual = firstJob(units);
  const parts = listed("parts").map((value): JobFile => {
    const part = adoptPart(sieve, value, usual.part);
    return { ...usual, part, brake: brakes[0]?.brake ?? usual.brake };
  });
  const jobs = listed("jobs");
  if (brakes.length + parts.length + jobs.length === 0)
    return refused("The shop file has no brakes, no parts and no jobs.");
  const opened =
    jobs.length > 0 ? openedJobs(jobs, brakes) : { ok: true as const, jobs: [], brakes, leftOut: [] };
  if (!opened.ok) return opened;
  return { ...opened, jobs: [...opened.jobs, ...parts], leftOut: [...sieve.leftOut, ...opened.leftOut] };
}

/** Jobs and brakes of the page as one file, which `openedText` opens again and the command takes too. */
export function shopText(units: LengthUnit, jobs: readonly JobFile[], brakes: readonly BrakeFile[]): string {
  const file = {
    noseroomShop: 1,
    units,
    ...(brakes.length > 0 ? { brakes } : {}),
    ...(jobs.length > 0 ? { jobs: jobs.map(written) } : {}),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}
