/**
 * What the shapes of job files are put together from: groups that take their own keys only, lists, words, written figures.
 * Written lengths stay as written here ("3/8"); the message of each rule is what is allowed, in words to follow "it should be".
 */
import * as z from "zod";
import { unitMeant } from "../units/length.ts";

// Without code made at run time, so that a page with a strict content policy reads jobs without a complaint.
z.config({ jitless: true });

/** Bounds that keep a job quick to answer; a real one stays far below. */
export const LIMITS = {
  bends: 20,
  corners: 5000,
  allCorners: 10_000,
  pieces: 50,
  cutOuts: 50,
  fingers: 60,
  holes: 200,
  lips: 3,
  nameLength: 200,
} as const;

const YES_OR_NO: ReadonlyMap<string, boolean> = new Map([
  ["true", true],
  ["yes", true],
  ["false", false],
  ["no", false],
]);

const A_LENGTH = 'a length such as 12, "3/8" or "5 mm"';
const AN_ANGLE = "an angle in degrees";

/** A number, or text to be read as one. */
export function written(allowed: string) {
  const isWritten = (value: unknown): value is number | string =>
    typeof value === "number" ? Number.isFinite(value) : typeof value === "string" && value.length <= 80;
  return z.custom<number | string>(isWritten, { error: () => allowed });
}

/** A group that takes these keys and no others. */
export function group<Shape extends z.ZodRawShape>(what: string, shape: Shape) {
  const keys = Object.keys(shape).join(", ");
  return z.strictObject(shape, {
    // Which of these keys a stray one is meant for is said in strayKeys.ts.
    error: (issue) => (issue.code === "unrecognized_keys" ? keys : `${what} in braces, with ${keys}`),
  });
}

export function list<Item extends z.ZodType>(item: Item, from: number, to: number, allowed: string) {
  const error = () => allowed;
  return z.array(item, { error }).min(from, { error }).max(to, { error });
}

/** One of some words, in letters of any size. */
export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words) {
  const meant = (said: unknown): unknown =>
    words.find(
      (word) =>
        typeof said === "string" && said.length <= 40 && word.toLowerCase() === said.trim().toLowerCase(),
    ) ?? said;
  return z.preprocess(meant, z.enum(words, { error: () => words.map((word) => `"${word}"`).join(" or ") }));
}

/** The unit that a file counts in, by its short name or written out. */
export const units = z.preprocess(
  (said) => unitMeant(said) ?? said,
  z.enum(["mm", "in"], { error: () => '"mm" or "in"' }),
);

export const yesOrNo = z.preprocess(
  (said) => (typeof said === "string" ? (YES_OR_NO.get(said.trim().toLowerCase()) ?? said) : said),
  z.boolean({ error: () => "true or false" }),
);

export function plainText(what: string) {
  const allowed = `${what}: plain text of up to ${LIMITS.nameLength} signs on one line`;
  return z
    .string({ error: () => allowed })
    .max(LIMITS.nameLength, { error: () => allowed })
    .refine((text) => !/\p{Cc}/u.test(text), { error: () => allowed });
}

const A_DATE = 'a date as year-month-day, such as "2026-07-02"';

/** A day of the calendar (ISO 8601, extended format). */
export const date = z.string({ error: () => A_DATE }).refine(isDate, { error: () => A_DATE });

function isDate(text: string): boolean {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  // The thirtieth of February would be counted on into March.
  return day !== undefined && !Number.isNaN(day.valueOf()) && day.toISOString().startsWith(text);
}

export const length = written(A_LENGTH);
export const angle = written(AN_ANGLE);
export const megapascals = written("a strength in MPa");
