/**
 * The readers under attack, one function each from any text to "nothing wrong": job file, shop file, drawing, link and
 * stored shelf. Each also checks what it must keep: what was read and is written again reads the same.
 */
import { deflateRawSync } from "node:zlib";
import { type Problem, problemSentence } from "../../src/job/problem.ts";
import { readJob } from "../../src/job/readJob.ts";
import { readShop } from "../../src/job/readShop.ts";
import { writeJob } from "../../src/job/writeJob.ts";
import { profilesFromDxf } from "../../web/dxf/profileFromDxf.ts";
import { type Adopted, adoptText } from "../../web/store/adopt.ts";
import { fileText } from "../../web/store/jobFile.ts";
import { type Drawer, readShelf } from "../../web/store/keep.ts";
import { jobOfLink, linkOf } from "../../web/store/link.ts";
import { hold, holdSentence, watched, watchedLater } from "./watch.ts";

function holdProblems(problems: readonly Problem[]): void {
  hold(problems.length > 0, "refused, and no word why");
  for (const problem of problems) holdSentence(problemSentence(problem));
}

/** A job file: refused in sentences, or read, written and read again as the same job. */
export function tryJob(text: string): void {
  const read = watched(() => readJob(text));
  if (!read.ok) {
    holdProblems(read.problems);
    return;
  }
  const again = readJob(writeJob(read.file));
  hold(again.ok && JSON.stringify(again.job) === JSON.stringify(read.job), "written and read, another job");
}

/** A shop file. */
export function tryShop(text: string): void {
  const read = watched(() => readShop(text));
  if (!read.ok) holdProblems(read.problems);
}

/** A drawing: refused in a sentence, or profiles of plain numbers. */
export function tryDrawing(text: string): void {
  for (const units of ["mm", "in"] as const) {
    const read = watched(() => profilesFromDxf(text, units));
    if (!read.ok) {
      holdSentence(read.sentence);
      continue;
    }
    for (const remark of read.remarks) holdSentence(remark);
    hold(read.profiles.length > 0, "read, and nothing in it");
    const figures = read.profiles.flat(2);
    hold(
      figures.every((figure) => Number.isFinite(figure)),
      "a corner that is nowhere",
    );
  }
}

/** What was taken in must be taken in again whole: nothing is lost on the way to the store and back. */
function holdAdopted(adopted: Adopted): void {
  if (!adopted.ok) {
    holdSentence(adopted.sentence);
    return;
  }
  for (const sentence of adopted.leftOut) holdSentence(sentence);
  const again = adoptText(fileText(adopted.file));
  if (!again.ok) throw new Error(`kept, and then refused: ${again.sentence}`);
  hold(again.leftOut.length === 0, `kept, and then left out: ${again.leftOut}`);
  hold(fileText(again.file) === fileText(adopted.file), "kept, and then changed");
}

/** A job file opened on the page. */
export function tryOpened(text: string): void {
  holdAdopted(watched(() => adoptText(text)));
}

/** A link: the text as the part behind the #, as what is folded up in a link, and a good link with the text in it. */
export async function tryLink(text: string): Promise<void> {
  const folded = deflateRawSync(Buffer.from(text)).toString("base64url");
  for (const fragment of [text, `#job=1.${text}`, `#job=1.${folded}`]) {
    const adopted = await watchedLater(() => jobOfLink(fragment));
    if (adopted === null) {
      hold(!fragment.startsWith("#job="), "a link passed over");
      continue;
    }
    holdAdopted(adopted);
    if (!adopted.ok) continue;
    const back = await jobOfLink(await linkOf(adopted.file));
    hold(back?.ok === true && fileText(back.file) === fileText(adopted.file), "linked, and then changed");
  }
}

/** A drawer like the browser's store, filled. */
export function drawerOf(entries: readonly (readonly [string, string])[]): Drawer {
  const kept = new Map(entries);
  return {
    get length() {
      return kept.size;
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

/** A stored shelf with one entry of this text beside a good one, which must not be lost. */
export function tryStored(text: string): void {
  const good = JSON.stringify({ version: 1, place: 0, file: GOOD });
  const entries = [
    ["noseroom.job.a", good],
    ["noseroom.job.b", text],
    ["noseroom.open", text.slice(0, 20)],
  ] as const;
  const drawer = drawerOf(entries);
  const { shelf, damage } = watched(() => readShelf(drawer));
  hold(shelf?.jobs.some((job) => job.id === "a") === true, "the good job is lost");
  for (const { sentence } of damage) holdSentence(sentence);
  const read = shelf?.jobs.find((job) => job.id === "b");
  const set = damage.find((one) => one.text === text);
  hold(read !== undefined || set !== undefined, "the text is lost");
  if (read) holdAdopted({ ok: true, file: read.file, leftOut: [] });
}

/** As small as a job gets. */
const GOOD = {
  noseroom: 1,
  units: "mm",
  part: { name: "strip", material: "mild steel", thickness: 1, insideRadius: 1, flats: [9, 9], bends: [{}] },
  brake: {},
};

export const READERS = {
  job: tryJob,
  shop: tryShop,
  drawing: tryDrawing,
  opened: tryOpened,
  link: tryLink,
  stored: tryStored,
} as const;

export type ReaderName = keyof typeof READERS;
