/**
 * The shelf of brakes beside the shelf of jobs. A brake that the person has kept changes only when they keep it again:
 * whatever puts another brake in a job's place leaves the one before on the shelf, so that no measuring is lost.
 * Every job carries its whole brake in its file; the shelf says which kept brake that is, or was before it was changed.
 */

import { brakeInUnit } from "../../src/jobFile/inUnit.ts";
import type { LengthUnit } from "../../src/units/length.ts";
import { usualBrake, usualClamp } from "./firstJob.ts";
import type { BrakeFile, ClampFile, JobFile } from "./jobFile.ts";
import { sameFigures } from "./sameFigures.ts";
import { freeName, newId, openJob, type Shelf, type ShelfBrake, type ShelfJob } from "./shelf.ts";

/** A brake as it lies in a job. */
interface Mounted {
  readonly units: LengthUnit;
  readonly brake: BrakeFile;
}

const KINDS: Readonly<Record<ClampFile["type"], string>> = {
  finger: "finger",
  bar: "clamp bar",
  profile: "own profile",
};
const KIND_AT_END = new RegExp(`, (${Object.values(KINDS).join("|")})( \\d+)?$`);

/** The figures that the page starts with are nobody's brake. */
export function isGuess({ units, brake }: Mounted): boolean {
  const usual = { ...usualBrake(units), clamp: usualClamp(brake.clamp.type, units) };
  return sameFigures({ units, brake: { ...brake, name: usual.name } }, { units, brake: usual });
}

/** The shelf's brake that a job lies on; undefined where its brake is not on the shelf. */
export function brakeOf(shelf: Shelf, { brakeId }: ShelfJob): ShelfBrake | undefined {
  return brakeId === undefined ? undefined : shelf.brakes?.find(({ id }) => id === brakeId);
}

/** How the open job's brake stands to the shelf. */
export function brakeStands(shelf: Shelf): "not kept" | "kept" | "changed" {
  const { file } = openJob(shelf);
  const entry = brakeOf(shelf, openJob(shelf));
  if (!entry?.kept) return "not kept";
  return sameFigures(entry, file) ? "kept" : "changed";
}

const namesOf = (brakes: readonly ShelfBrake[]) => brakes.map(({ brake }) => brake.name);
const without = <T extends object, K extends keyof T>(bag: T, key: K): Omit<T, K> => {
  const { [key]: _gone, ...rest } = bag;
  return rest;
};

function putJob(shelf: Shelf, job: ShelfJob): Shelf {
  return { ...shelf, jobs: shelf.jobs.map((one) => (one.id === job.id ? job : one)) };
}

function putBrake(shelf: Shelf, entry: ShelfBrake): Shelf {
  const brakes = shelf.brakes ?? [];
  const there = brakes.some(({ id }) => id === entry.id);
  return {
    ...shelf,
    brakes: there ? brakes.map((b) => (b.id === entry.id ? entry : b)) : [...brakes, entry],
  };
}

/** The job on a brake of the shelf. */
function putOn(job: ShelfJob, { id, brake, units }: ShelfBrake): ShelfJob {
  const { brakeFrom: _from, ...rest } = job;
  return { ...rest, brakeId: id, file: { ...job.file, brake: brakeInUnit(brake, units, job.file.units) } };
}

/** Lays a job's brake on the shelf under a name of its own and links the job to it. */
function laidDown(shelf: Shelf, job: ShelfJob, more: Partial<ShelfBrake>): Shelf {
  const { units, brake } = job.file;
  const name = freeName(namesOf(shelf.brakes ?? []), brake.name || "Brake without a name");
  const entry: ShelfBrake = { id: newId(), units, brake: { ...brake, name }, kept: false, ...more };
  return putJob(putBrake(shelf, entry), putOn(job, entry));
}

/**
 * Makes sure that a job's brake lies on the shelf before another takes its place. A guess is not worth a place; a brake
 * that the person kept stays as kept, and what was changed since lies beside it.
 */
export function withBrakeSafe(shelf: Shelf, job: ShelfJob = openJob(shelf)): Shelf {
  const entry = brakeOf(shelf, job);
  if (entry && sameFigures(entry, job.file)) return shelf;
  if (!entry) {
    if (isGuess(job.file)) return shelf;
    const from = job.brakeFrom === undefined ? {} : { from: job.brakeFrom };
    return laidDown(shelf, job, { came: "typed in, not kept yet", ...from });
  }
  const alone = shelf.jobs.every((other) => other.id === job.id || other.brakeId !== entry.id);
  if (!entry.kept && alone) {
    return putBrake(shelf, { ...entry, units: job.file.units, brake: job.file.brake });
  }
  return laidDown(shelf, job, { came: `${entry.brake.name}, changed`, from: entry.id });
}

/** The first brake of all those that were made from each other. */
function rootOf(shelf: Shelf, id: string | undefined): string | undefined {
  const seen = new Set<string>();
  let at = id;
  while (at !== undefined && !seen.has(at)) {
    seen.add(at);
    const before: string | undefined = shelf.brakes?.find((b) => b.id === at)?.from;
    if (before === undefined) return at;
    at = before;
  }
  return at;
}

export interface Arrival {
  /** How the brake came to be, for the list: "traced from a photo". */
  readonly came: string;
  /** Its name; made free. Without one it keeps the name that it brings. */
  readonly name?: string;
}

/** The job with a file that may bring another brake: the one before stays on the shelf, the new one gets a place. */
function arrived(shelf: Shelf, job: ShelfJob, file: JobFile, { came, name }: Arrival): Shelf {
  if (sameFigures(job.file, file)) return putJob(shelf, { ...job, file });
  const safe = withBrakeSafe(shelf, job);
  const was = safe.jobs.find(({ id }) => id === job.id) ?? job;
  const known = safe.brakes?.find((entry) => sameFigures(entry, file));
  if (known) return putJob(safe, putOn({ ...was, file }, known));
  // The day on which the brake before was measured is not this one's.
  const unmarked = without(file.brake, "measured") as BrakeFile;
  const now: ShelfJob = { ...without(was, "brakeId"), file: { ...file, brake: unmarked } };
  const from = was.brakeId ?? was.brakeFrom;
  if (isGuess(now.file)) return putJob(safe, from === undefined ? now : { ...now, brakeFrom: from });
  const named = name === undefined ? now : { ...now, file: { ...now.file, brake: { ...unmarked, name } } };
  return laidDown(safe, named, { came, ...(from === undefined ? {} : { from }) });
}

/** The open job with a file that may bring another brake. */
export function withArrival(shelf: Shelf, file: JobFile, arrival: Arrival): Shelf {
  return arrived(shelf, openJob(shelf), file, arrival);
}

/** Several jobs at once, as onto a brake that is made for all of them. */
export function withArrivals(shelf: Shelf, files: ReadonlyMap<string, JobFile>, arrival: Arrival): Shelf {
  return [...files].reduce((so, [id, file]) => {
    const job = so.jobs.find((one) => one.id === id);
    return job ? arrived(so, job, file, arrival) : so;
  }, shelf);
}

/** The open job's clamp changed to another kind: as it last was on this brake, or the usual one of that kind. */
export function withClampKind(shelf: Shelf, type: ClampFile["type"]): Shelf {
  const safe = withBrakeSafe(shelf);
  const job = openJob(safe);
  const root = rootOf(safe, job.brakeId ?? job.brakeFrom);
  const sister = safe.brakes?.findLast(
    ({ id, brake }) => root !== undefined && brake.clamp.type === type && rootOf(safe, id) === root,
  );
  if (sister) return putJob(safe, putOn(job, sister));
  const { brake, units } = job.file;
  const name = `${brake.name.replace(KIND_AT_END, "")}, ${KINDS[type]}`;
  const file = { ...job.file, brake: { ...brake, clamp: usualClamp(type, units) } };
  return arrived(safe, job, file, { name, came: `${brake.name} with another clamp: measure it` });
}

/** The open job on another brake of the shelf. */
export function withPicked(shelf: Shelf, id: string): Shelf {
  const safe = withBrakeSafe(shelf);
  const entry = safe.brakes?.find((one) => one.id === id);
  return entry ? putJob(safe, putOn(openJob(safe), entry)) : shelf;
}

/** The open job's brake kept as it stands; jobs that lie on it unchanged get the new figures too. */
export function withKept(shelf: Shelf): Shelf {
  const job = openJob(shelf);
  const entry = brakeOf(shelf, job);
  if (!entry) return laidDown(shelf, job, { kept: true });
  const others = namesOf((shelf.brakes ?? []).filter(({ id }) => id !== entry.id));
  const brake = { ...job.file.brake, name: freeName(others, job.file.brake.name) };
  const now: ShelfBrake = { ...without(entry, "came"), units: job.file.units, brake, kept: true };
  const jobs = shelf.jobs.map((one) => {
    const follows = one.id === job.id || (one.brakeId === entry.id && sameFigures(entry, one.file));
    return follows ? putOn(one, now) : one;
  });
  return putBrake({ ...shelf, jobs }, now);
}

/** The open job's changed brake kept beside the one that it was. */
export function withKeptBeside(shelf: Shelf): Shelf {
  const job = openJob(shelf);
  return laidDown(shelf, job, { kept: true, ...(job.brakeId === undefined ? {} : { from: job.brakeId }) });
}

/** A copy of a brake of the shelf, with the open job on it. */
export function withBrakeCopied(shelf: Shelf, id: string): Shelf {
  const safe = withBrakeSafe(shelf);
  const entry = safe.brakes?.find((one) => one.id === id);
  if (!entry) return shelf;
  return laidDown(safe, putOn(openJob(safe), entry), { kept: true, from: entry.id });
}

/** A brake taken off the shelf; jobs on it keep it in their files. */
export function withoutBrake(shelf: Shelf, id: string): Shelf {
  const brakes = shelf.brakes?.filter((one) => one.id !== id) ?? [];
  const jobs = shelf.jobs.map((job) => (job.brakeId === id ? (without(job, "brakeId") as ShelfJob) : job));
  return { ...shelf, jobs, brakes };
}

/** Brakes from outside laid beside those that are there; one that is there already is not laid twice. */
export function withBrakes(shelf: Shelf, arriving: readonly Mounted[]): Shelf {
  return arriving.reduce((so, { units, brake }) => {
    const brakes = so.brakes ?? [];
    if (brakes.some((entry) => sameFigures(entry, { units, brake }))) return so;
    const name = freeName(namesOf(brakes), brake.name || "Brake without a name");
    return putBrake(so, { id: newId(), units, brake: { ...brake, name }, kept: true });
  }, shelf);
}

/** A job linked to the brake of the shelf that it brings, where that lies there. */
export function linked(shelf: Shelf, job: ShelfJob): ShelfJob {
  const entry = job.brakeId === undefined && shelf.brakes?.find((one) => sameFigures(one, job.file));
  return entry ? { ...job, brakeId: entry.id } : job;
}
