/**
 * Jobs and brakes from outside laid on the shelves, under names that are free.
 */
import { linked, withBrakes } from "./brakeShelf.ts";
import { type JobFile, setAt } from "./jobFile.ts";
import type { LooseBrake } from "./opened.ts";
import { freeName, newId, type Shelf, type ShelfJob, withJob } from "./shelf.ts";

/** The shelf with a job added, opened, and linked to its brake where that lies on the shelf. */
export function withAdded(
  shelf: Shelf,
  file: JobFile,
  brake: Pick<ShelfJob, "brakeId" | "brakeFrom"> = {},
): Shelf {
  const name = freeName(
    shelf.jobs.map((job) => job.file.part.name),
    file.part.name,
  );
  const id = newId();
  const added = withJob(shelf, setAt(file, ["part", "name"], name), id, brake);
  return { ...added, jobs: added.jobs.map((job) => (job.id === id ? linked(added, job) : job)) };
}

/** The shelf with all jobs and brakes of a file; the first of its jobs lies open. */
export function withOpened(shelf: Shelf, jobs: readonly JobFile[], brakes: readonly LooseBrake[]): Shelf {
  const full = jobs.reduce((so, file) => withAdded(so, file), withBrakes(shelf, brakes));
  const first = full.jobs[shelf.jobs.length];
  return first ? { ...full, openId: first.id } : full;
}

/** @example arrivalWords([job], []) // "1 job lies on your shelf now." */
export function arrivalWords(jobs: readonly unknown[], brakes: readonly unknown[]): string {
  const count = (n: number, what: string) => (n === 0 ? [] : [`${n} ${what}${n === 1 ? "" : "s"}`]);
  const words = [...count(jobs.length, "job"), ...count(brakes.length, "brake")];
  const one = jobs.length + brakes.length === 1;
  return `${words.join(" and ")} ${one ? "lies" : "lie"} on your ${words.length > 1 ? "shelves" : "shelf"} now.`;
}
