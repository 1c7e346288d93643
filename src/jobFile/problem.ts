/**
 * What is wrong with a job file, so that the page can put it beside the field and the command line can print it.
 * One problem, one sentence: the key's path, what was found there, what is allowed.
 */
export interface Problem {
  /** Path of the key as in the file, "part.flats[2]"; empty for the file as a whole. Lists count from 0, as in JSON. */
  readonly path: string;
  /** What stands there, as it was written: `-3`, `"3/"`, `nothing`. */
  readonly found: string;
  /** What may stand there, to be read after "it should be". */
  readonly allowed: string;
}

/** How lists of a job count for a person, who starts at 1. */
const COUNTED: readonly (readonly [RegExp, string])[] = [
  [/^part\.flats\[(\d+)\]/u, "flat"],
  [/^part\.bends\[(\d+)\]/u, "bend"],
  [/^part\.doubts\[(\d+)\]/u, "flat"],
  [/^part\.cutOuts\[(\d+)\]/u, "cut-out"],
  [/^order\[(\d+)\]/u, "step"],
  [/\.(?:profile|profiles\[\d+\]|frame\[\d+\])\[(\d+)\]/u, "corner"],
  [/^brake\.frame\[(\d+)\]/u, "frame piece"],
];

/**
 * The problem in one sentence.
 * @example problemSentence({ path: "order[1].bend", found: "0", allowed: "1 or 2" }) // "order[1].bend (step 2): found 0; it should be 1 or 2."
 */
export function problemSentence(problem: Problem): string {
  const where = problem.path === "" ? "The job file" : `${problem.path}${inWords(problem.path)}`;
  return `${where}: found ${problem.found}; it should be ${problem.allowed}.`;
}

function inWords(path: string): string {
  for (const [pattern, noun] of COUNTED) {
    const index = pattern.exec(path)?.[1];
    if (index !== undefined) return ` (${noun} ${Number(index) + 1})`;
  }
  return "";
}

/** Path of keys and list places as text. @example pathText(["part", "flats", 2]) // "part.flats[2]" */
export function pathText(path: readonly PropertyKey[]): string {
  let text = "";
  for (const step of path) {
    if (typeof step === "number") text += `[${step}]`;
    else if (/^[\w$]{1,60}$/u.test(String(step))) text += text === "" ? String(step) : `.${String(step)}`;
    else text += `[${shortText(String(step))}]`;
  }
  return text;
}

/** A value as it stands in a file, in few words. */
export function foundText(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (value === null) return "null";
  if (typeof value === "object") return "a group in braces";
  if (typeof value === "string") return shortText(value);
  if (typeof value === "number" && !Number.isFinite(value)) return "a number past all bounds";
  return String(value);
}

/** Text in quotes, control signs made visible, cut where it runs on. */
function shortText(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 37)}…` : text);
}
