/**
 * The shelf: every job of this browser, and which one lies open. Plain data, changed only by making a new one,
 * so that undo can put any earlier shelf back whole.
 */
import type { LengthUnit } from "../../src/units/length.ts";
import { type BrakeFile, type JobFile, type OwnMetalFile, setAt } from "./jobFile.ts";
import type { Sample } from "./sample.ts";
import type { Wishes } from "./wishes.ts";

export interface ShelfJob {
  readonly id: string;
  readonly file: JobFile;
  /** How the part was read off a sample, where it is the copy of one. Not part of the job file. */
  readonly sample?: Sample;
  /** The brake of the shelf that it lies on; its file has the figures, changed since or not. */
  readonly brakeId?: string;
  /** Of a brake that is not on the shelf: the one that it was made from. */
  readonly brakeFrom?: string;
}

export interface ShelfBrake {
  readonly id: string;
  readonly units: LengthUnit;
  readonly brake: BrakeFile;
  /** Whether the person has kept it: it then changes only when they keep it again. */
  readonly kept: boolean;
  /** How it came here, where the person did not keep it as it stands: "traced from a photo". */
  readonly came?: string;
  /** The brake that it was made from. */
  readonly from?: string;
}

export interface Shelf {
  readonly jobs: readonly ShelfJob[];
  readonly openId: string;
  readonly brakes?: readonly ShelfBrake[];
  /** Metals of the person's own, for any job. */
  readonly metals?: readonly OwnMetalFile[];
  /** What is wanted otherwise than taken for a brake to be made. */
  readonly wishes?: Wishes;
}

/** The job that lies open. A shelf always has one. */
export function openJob(shelf: Shelf): ShelfJob {
  return shelf.jobs.find((job) => job.id === shelf.openId) ?? shelf.jobs[0]!;
}

/** A short name of its own for a job: time and chance, so that two tabs never make the same. */
export function newId(): string {
  const chance = crypto.getRandomValues(new Uint32Array(1))[0]!;
  return `${Date.now().toString(36)}-${chance.toString(36)}`;
}

/** The shelf with a new job on it, opened; `brake` says which brake of the shelf it lies on. */
export function withJob(
  shelf: Shelf,
  file: JobFile,
  id: string = newId(),
  brake: Pick<ShelfJob, "brakeId" | "brakeFrom"> = {},
): Shelf {
  return { ...shelf, jobs: [...shelf.jobs, { id, file, ...brake }], openId: id };
}

/** The shelf with the open job's file replaced. */
export function withFile(shelf: Shelf, file: JobFile): Shelf {
  return { ...shelf, jobs: shelf.jobs.map((job) => (job.id === shelf.openId ? { ...job, file } : job)) };
}

/** The shelf with the open job's file and sample replaced; without a sample the part is no copy any more. */
export function withSample(shelf: Shelf, file: JobFile, sample: Sample | undefined): Shelf {
  const put = ({ sample: _old, ...job }: ShelfJob): ShelfJob =>
    sample === undefined ? { ...job, file } : { ...job, file, sample };
  return { ...shelf, jobs: shelf.jobs.map((job) => (job.id === shelf.openId ? put(job) : job)) };
}

/** The shelf without a job; the last one can't be taken. The one before it is opened if it lay open. */
export function withoutJob(shelf: Shelf, id: string): Shelf {
  if (shelf.jobs.length < 2) return shelf;
  const at = shelf.jobs.findIndex((job) => job.id === id);
  const jobs = shelf.jobs.filter((job) => job.id !== id);
  const openId = shelf.openId === id ? jobs[Math.max(0, at - 1)]!.id : shelf.openId;
  return { ...shelf, jobs, openId };
}

/** A name that no job on the shelf has yet. @example freeName(["Trough"], "Trough") // "Trough 2" */
export function freeName(taken: readonly string[], wanted: string): string {
  if (!taken.includes(wanted)) return wanted;
  const stem = wanted.replace(/ \d+$/, "");
  for (let n = 2; ; n++) if (!taken.includes(`${stem} ${n}`)) return `${stem} ${n}`;
}

/** The shelf with another tab's version of a job on it, in the place of the one that was there. */
export function withOthers(shelf: Shelf, job: ShelfJob): Shelf {
  const there = shelf.jobs.some(({ id }) => id === job.id);
  const jobs = there ? shelf.jobs.map((one) => (one.id === job.id ? job : one)) : [...shelf.jobs, job];
  return { ...shelf, jobs };
}

/** The shelf without a job that another tab has taken away; one that lies open stays. */
export function withoutOthers(shelf: Shelf, id: string): Shelf {
  return shelf.openId === id ? shelf : { ...shelf, jobs: shelf.jobs.filter((job) => job.id !== id) };
}

/** The shelf with this tab's version of a job under a new id and name, and the other tab's, where it can be read, beside it. */
export function withBoth(
  shelf: Shelf,
  id: string,
  mine: { readonly id: string; readonly name: string },
  theirs: ShelfJob | null,
): Shelf {
  const jobs = shelf.jobs.flatMap((job): ShelfJob[] => {
    if (job.id !== id) return [job];
    const renamed = { ...job, id: mine.id, file: setAt(job.file, ["part", "name"], mine.name) };
    return theirs ? [theirs, renamed] : [renamed];
  });
  // Where the job was not yet on the shelf the other tab's lies there all the same: it is not this tab's to take away.
  if (theirs && !jobs.includes(theirs)) jobs.push(theirs);
  return { ...shelf, jobs, openId: shelf.openId === id ? mine.id : shelf.openId };
}
