/**
 * How the shelf lies in the browser's store: each job under its own key, so that two tabs and one damaged entry don't
 * spoil the rest. The format has a version; what can't be read is handed back as text, never thrown away.
 */
import { adopt } from "./adopt.ts";
import { withDoubt, withDoubts } from "./doubts.ts";
import type { Drawer } from "./drawer.ts";
import type { JobFile } from "./jobFile.ts";
import { readBrakes } from "./keptBrakes.ts";
import { adoptMetals } from "./metals.ts";
import { adoptSample, type Sample } from "./sample.ts";
import type { Shelf, ShelfJob } from "./shelf.ts";
import { isBag } from "./sieve.ts";
import { adoptWishes } from "./wishes.ts";

export interface Damage {
  readonly sentence: string;
  /** The text as it was found, offered for download. */
  readonly text: string;
  readonly fileName: string;
}

const JOB = "noseroom.job.";
export const OPEN_KEY = "noseroom.open";
export const METALS_KEY = "noseroom.metals";
export const WISHES_KEY = "noseroom.wishes";
const DAMAGED = "noseroom.damaged.";
const VERSION = 1;

/** Reads the shelf; entries that can't be read are moved aside and reported. Null when there is none yet. */
export function readShelf(drawer: Drawer): {
  readonly shelf: Shelf | null;
  readonly damage: readonly Damage[];
} {
  const jobs: (ShelfJob & { readonly place: number })[] = [];
  const damage: Damage[] = [];
  for (const key of keysWith(drawer, DAMAGED))
    damage.push(asDamage(key.slice(DAMAGED.length), drawer.getItem(key) ?? ""));
  for (const key of keysWith(drawer, JOB)) {
    const id = key.slice(JOB.length);
    const text = drawer.getItem(key) ?? "";
    const read = readEntry(text);
    if (read === null) {
      setAside(drawer, id, text);
      damage.push(asDamage(id, text));
      continue;
    }
    jobs.push({ ...shelfJob(id, read), place: read.place });
    if (read.leftOut.length > 0) {
      const sentence = `The saved job “${read.file.part.name}” is kept, but: ${read.leftOut.join(" ")}`;
      damage.push({ sentence, text, fileName: `saved-job-${id}.json` });
    }
  }
  if (jobs.length === 0) return { shelf: null, damage };
  jobs.sort((a, b) => a.place - b.place);
  const open = drawer.getItem(OPEN_KEY);
  const openId = jobs.some((job) => job.id === open) ? (open as string) : jobs[0]!.id;
  const metals = adoptMetals(drawer.getItem(METALS_KEY));
  const wishes = adoptWishes(drawer.getItem(WISHES_KEY));
  const brakes = readBrakes(drawer);
  const shelf: Shelf = {
    jobs: jobs.map(({ place: _place, ...job }) => job),
    openId,
    ...(brakes.length > 0 ? { brakes } : {}),
    ...(metals.length > 0 ? { metals } : {}),
    ...(wishes ? { wishes } : {}),
  };
  return { shelf, damage };
}

/** Moves an entry out of the jobs' way; a store without room for that keeps it where it is. */
function setAside(drawer: Drawer, id: string, text: string): void {
  try {
    drawer.setItem(DAMAGED + id, text);
    drawer.removeItem(JOB + id);
  } catch {
    // It is found again on the next visit.
  }
}

/** Forgets an entry that could not be read, once its text has been saved or is not wanted. */
export function forgetDamage(drawer: Drawer | null, damage: Damage): void {
  const id = damage.fileName.replace(/^saved-job-|\.(txt|json)$/g, "");
  try {
    drawer?.removeItem(DAMAGED + id);
    if (damage.fileName.endsWith(".txt")) drawer?.removeItem(JOB + id);
  } catch {
    // A shut store keeps it; the next visit tells of it again.
  }
}

function asDamage(id: string, text: string): Damage {
  return {
    sentence:
      "One saved job could not be read; the other jobs are as you left them. Its text is kept for you.",
    text,
    fileName: `saved-job-${id}.txt`,
  };
}

function shelfJob(id: string, { file, sample, link }: Omit<Entry, "leftOut" | "place">): ShelfJob {
  return { id, file, ...(sample === undefined ? {} : { sample }), ...link };
}

function keysWith(drawer: Drawer, start: string): string[] {
  const keys: string[] = [];
  for (let i = 0; i < drawer.length; i++) {
    const key = drawer.key(i);
    if (key?.startsWith(start)) keys.push(key);
  }
  return keys.sort();
}

/** Doubts stood beside the job before the job file had a key for them. */
function withKeptDoubts(file: JobFile, { flats }: Sample): JobFile {
  if (file.part.doubts !== undefined) return file;
  return flats.reduce(
    (so, { doubt }, flat) => (doubt === undefined ? so : withDoubt(so, flat, doubt)),
    withDoubts(file, true),
  );
}

interface Entry {
  readonly file: JobFile;
  readonly sample: Sample | undefined;
  readonly link: Pick<ShelfJob, "brakeId" | "brakeFrom">;
  readonly leftOut: readonly string[];
  readonly place: number;
}

function readEntry(text: string): Entry | null {
  try {
    const entry: unknown = JSON.parse(text);
    if (!isBag(entry) || entry.version !== VERSION) return null;
    const adopted = adopt(entry.file);
    if (!adopted.ok) return null;
    const place = typeof entry.place === "number" ? entry.place : 0;
    const sample = adoptSample(entry.sample);
    const file = sample === undefined ? adopted.file : withKeptDoubts(adopted.file, sample);
    const { brakeId, brakeFrom } = entry;
    const link = {
      ...(typeof brakeId === "string" ? { brakeId } : {}),
      ...(typeof brakeFrom === "string" ? { brakeFrom } : {}),
    };
    return { file, sample, link, leftOut: adopted.leftOut, place };
  } catch {
    return null;
  }
}

/** The id of a job whose stored text another tab has just changed, or null for other keys. */
export function jobIdOfKey(key: string | null): string | null {
  return key?.startsWith(JOB) ? key.slice(JOB.length) : null;
}

/** The key of a job. */
export function jobKey(id: string): string {
  return JOB + id;
}

/** A job as it is stored. */
export function entryText({ file, sample, brakeId, brakeFrom }: ShelfJob, place: number): string {
  return JSON.stringify({ version: VERSION, place, file, sample, brakeId, brakeFrom });
}

/** One job from its stored text; null when it can't be read. */
export function jobOfEntry(id: string, text: string): ShelfJob | null {
  const read = readEntry(text);
  return read === null ? null : shelfJob(id, read);
}

/** Whether two jobs are the same but for their place on the shelf. */
export function sameJob(one: ShelfJob, other: ShelfJob): boolean {
  return entryText(one, 0) === entryText(other, 0);
}
