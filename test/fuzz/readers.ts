/**
 * The readers under attack, one function each from any text to "nothing wrong": job file, shop file, drawing, link and
 * stored shelf. Each also checks what it must keep: what was read and is written again reads the same.
 */
import { deflateRawSync } from "node:zlib";
import { check } from "../../src/answer/check.ts";
import { drawnPattern } from "../../src/jobFile/drawnPattern.ts";
import { type Problem, problemSentence } from "../../src/jobFile/problem.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { readShop, SHARP_BAR } from "../../src/jobFile/readShop.ts";
import { writeJob, writeWhole } from "../../src/jobFile/writeJob.ts";
import { profilesFromDxf } from "../../web/dxf/profileFromDxf.ts";
import type { Drawer } from "../../web/store/drawer.ts";
import { fileText, type JobFile } from "../../web/store/jobFile.ts";
import { METALS_KEY, readShelf } from "../../web/store/keep.ts";
import { jobOfLink, linkOf } from "../../web/store/link.ts";
import { type Opened, openedText } from "../../web/store/opened.ts";
import { photoHead } from "../../web/trace/photoHead.ts";
import { hold, holdSentence, watched, watchedLater } from "./watch.ts";

function holdProblems(problems: readonly Problem[]): void {
  hold(problems.length > 0, "refused, and no word why");
  for (const problem of problems) holdSentence(problemSentence(problem));
}

/** A check takes a hundred times as long as reading: every so-manieth job taken, and short ones only, is checked whole. */
const CHECKED_ONE_IN = 400;
const MOST_BENDS_CHECKED = 3;
let taken = 0;

/** A job file: refused in sentences, or read, written and read again as the same job, and now and then checked. */
export function tryJob(text: string): void {
  const read = watched(() => readJob(text));
  if (!read.ok) {
    holdProblems(read.problems);
    return;
  }
  const again = readJob(writeJob(read.file));
  hold(again.ok && JSON.stringify(again.job) === JSON.stringify(read.job), "written and read, another job");
  if (read.job.part.bends.length > MOST_BENDS_CHECKED || taken++ % CHECKED_ONE_IN > 0) return;
  const answer = watched(() => check(read.job));
  hold(["clear", "tight", "hits"].includes(answer.verdict), "checked, and no verdict");
  for (const warning of answer.warnings) holdSentence(warning);
}

/** A job file of either kind: refused in sentences, or read, written and read again as the same part. */
export function tryWhole(text: string): void {
  const read = watched(() => readAnyJob(text));
  if (!read.ok) {
    holdProblems(read.problems);
    return;
  }
  if (read.kind === "section") return;
  const again = readAnyJob(writeWhole(read.file));
  const same = again.ok && JSON.stringify(again.job) === JSON.stringify(read.job);
  hold(same, "written and read, another job");
}

/** A shop file. */
export function tryShop(text: string): void {
  const read = watched(() => readShop(text));
  if (!read.ok) holdProblems(read.problems);
}

/** A drawing, in a job in mm or, for a text of odd length, in inches: refused in a sentence, or profiles of plain numbers. */
export function tryDrawing(text: string): void {
  const read = watched(() => profilesFromDxf(text, text.length % 2 === 0 ? "mm" : "in"));
  if (!read.ok) {
    holdSentence(read.sentence);
    return;
  }
  for (const remark of read.remarks) holdSentence(remark);
  hold(read.profiles.length > 0, "read, and nothing in it");
  const figures = read.profiles.flat(2);
  hold(
    figures.every((figure) => Number.isFinite(figure)),
    "a corner that is nowhere",
  );
}

/** A flat pattern as a drawing, asked for in one of four ways by the length of its text; what is read is held as a part too. */
export function tryPattern(text: string): void {
  const asked = [
    {},
    { bends: "0" },
    { angles: { byNumber: new Map(), all: UP } },
    { cut: "0", drawnIn: "in" },
  ] as const;
  const drawn = watched(() =>
    drawnPattern(text, text.length % 2 === 0 ? "mm" : "in", asked[text.length % 4]),
  );
  if (!drawn.ok) {
    for (const sentence of drawn.sentences) holdSentence(sentence);
    return;
  }
  for (const remark of drawn.remarks) holdSentence(remark);
  const read = watched(() => readAnyJob(JSON.stringify(patternJob(drawn.pattern))));
  if (!read.ok) holdProblems(read.problems);
}

const UP = { angle: 90, turn: "up" } as const;

function patternJob(pattern: unknown) {
  const part = { name: "drawn", material: "mild steel", thickness: 1, insideRadius: 1, pattern };
  return { noseroom: 1, units: "mm", part, brake: SHARP_BAR };
}

/** What was taken in must be taken in again whole: nothing is lost on the way to the store and back. */
function holdOpened(opened: Opened): void {
  if (!opened.ok) {
    holdSentence(opened.sentence);
    return;
  }
  for (const sentence of opened.leftOut) holdSentence(sentence);
  for (const file of opened.jobs) {
    const again = openedText(fileText(file));
    if (!again.ok) throw new Error(`kept, and then refused: ${again.sentence}`);
    hold(again.leftOut.length === 0, `kept, and then left out: ${again.leftOut}`);
    hold(sameFile(again.jobs[0]!, file), "kept, and then changed");
  }
}

/** Whether two files say the same, in whatever order their keys stand. */
function sameFile(one: JobFile, other: JobFile): boolean {
  return fileText(one) === fileText(other) || JSON.stringify(sorted(one)) === JSON.stringify(sorted(other));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return entries.map(([key, item]) => [key, sorted(item)]);
}

/** A job or shop file opened on the page. */
export function tryOpened(text: string): void {
  holdOpened(watched(() => openedText(text)));
}

/** The text folded up in a link as the page does it. */
const linked = (text: string) => `#job=1.${deflateRawSync(Buffer.from(text)).toString("base64url")}`;

/** The text as a link: as what stands behind the #, as what is folded up, or a good link with some of its letters lost. */
function fragmentOf(text: string): string {
  switch (text.length % 4) {
    case 0:
      return text;
    case 1:
      return `#job=1.${text}`;
    case 2: {
      const good = linked(text);
      const at = text.charCodeAt(text.length >> 1) % good.length;
      return good.slice(0, at) + good.slice(at + 1 + (text.charCodeAt(0) % 3));
    }
    default:
      return linked(text);
  }
}

/** A link, whole or damaged; a good one is made again from what it held. */
export async function tryLink(text: string): Promise<void> {
  const fragment = fragmentOf(text);
  const opened = await watchedLater(() => jobOfLink(fragment));
  if (opened === null) {
    hold(!fragment.startsWith("#job="), "a link passed over");
    return;
  }
  holdOpened(opened);
  const file = opened.ok ? opened.jobs[0] : undefined;
  if (file === undefined) return;
  const back = await jobOfLink(await linkOf(file));
  const same = back?.ok === true && back.jobs[0] !== undefined && fileText(back.jobs[0]) === fileText(file);
  hold(same, "linked, and then changed");
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
    ["noseroom.brake.c", text],
    ["noseroom.open", text.slice(0, 20)],
    [METALS_KEY, text],
  ] as const;
  const drawer = drawerOf(entries);
  const { shelf, damage } = watched(() => readShelf(drawer));
  hold(shelf?.jobs.some((job) => job.id === "a") === true, "the good job is lost");
  for (const { sentence } of damage) holdSentence(sentence);
  const read = shelf?.jobs.find((job) => job.id === "b");
  const set = damage.find((one) => one.text === text);
  hold(read !== undefined || set !== undefined, "the text is lost");
  if (read) holdOpened({ ok: true, jobs: [read.file], brakes: [], leftOut: [] });
}

/** As small as a job gets. */
const GOOD = {
  noseroom: 1,
  units: "mm",
  part: { name: "strip", material: "mild steel", thickness: 1, insideRadius: 1, flats: [9, 9], bends: [{}] },
  brake: {},
};

/** A photo, a byte a sign: no head, or a kind and a size in whole points, found in its first bytes. */
export function tryPhoto(text: string): void {
  const head = watched(() => photoHead(Buffer.from(text, "latin1")));
  if (head === null) return;
  const sizes = [head.width, head.height];
  hold(
    sizes.every((size) => Number.isInteger(size) && size > 0 && size < 2 ** 32),
    `no size: ${sizes}`,
  );
}

export const READERS = {
  job: tryJob,
  whole: tryWhole,
  shop: tryShop,
  drawing: tryDrawing,
  pattern: tryPattern,
  opened: tryOpened,
  link: tryLink,
  stored: tryStored,
  photo: tryPhoto,
} as const;

export type ReaderName = keyof typeof READERS;
