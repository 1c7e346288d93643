/**
 * The shape of a job file: which keys there are, and whether each holds a number, a word, a list or a group.
 * Written lengths stay as written here ("3/8"); what they may measure is judged where they are read.
 * The message of each rule is what is allowed, in words to follow "it should be".
 */
import * as z from "zod";
import { thicknessHint } from "../units/gauge.ts";
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
function written(allowed: string) {
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

const yesOrNo = z.preprocess(
  (said) => (typeof said === "string" ? (YES_OR_NO.get(said.trim().toLowerCase()) ?? said) : said),
  z.boolean({ error: () => "true or false" }),
);

function plainText(what: string) {
  const allowed = `${what}: plain text of up to ${LIMITS.nameLength} signs on one line`;
  return z
    .string({ error: () => allowed })
    .max(LIMITS.nameLength, { error: () => allowed })
    .refine((text) => !/\p{Cc}/u.test(text), { error: () => allowed });
}

const A_DATE = 'a date as year-month-day, such as "2026-07-02"';

/** A day of the calendar (ISO 8601, extended format). */
const date = z.string({ error: () => A_DATE }).refine(isDate, { error: () => A_DATE });

function isDate(text: string): boolean {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  // The thirtieth of February would be counted on into March.
  return day !== undefined && !Number.isNaN(day.valueOf()) && day.toISOString().startsWith(text);
}

export const length = written(A_LENGTH);
export const angle = written(AN_ANGLE);
const megapascals = written("a strength in MPa");

const corner = list(length, 2, 3, "a corner, [x, y] or [x, y, radius]");
export const profile = list(
  corner,
  3,
  LIMITS.corners,
  `a closed profile of 3 to ${LIMITS.corners} corners, [[x, y], [x, y, radius], …]`,
);
const profileList = (from: number) =>
  list(profile, from, LIMITS.pieces, `a list of ${from} to ${LIMITS.pieces} profiles`);

/** A fixed piece of the brake: its profile, or that with a name, and where along the brake it stands. */
const framePiece = z.union(
  [
    profile,
    group("a frame piece", {
      name: plainText("a name"),
      profile,
      along: list(length, 2, 2, "a stretch of the brake, [from, to]").optional(),
    }),
  ],
  { error: () => "a closed profile, [[x, y], …], or {name, profile, along}" },
);

/** Sheet folded over the nose. */
const shim = { shim: length.optional() };

const holder = {
  holderBack: length.optional(),
  holderHeight: length.optional(),
  holderDepth: length.optional(),
};

const finger = group("a finger", {
  width: length,
  count: z.int({ error: () => "how many there are, a whole number" }).min(1, {
    error: () => "how many there are, 1 or more",
  }),
});

/** What stands along the brake, beside the profile that all of it shares. */
const along = {
  length: length.optional(),
  fingers: list(
    finger,
    1,
    LIMITS.fingers,
    `a list of up to ${LIMITS.fingers} widths, [{ "width": 50, "count": 2 }, …]`,
  ).optional(),
  fingerGap: length.optional(),
};

/** "Finger" for "finger". */
function inSmallLetters(clamp: unknown): unknown {
  if (typeof clamp !== "object" || clamp === null || !("type" in clamp)) return clamp;
  const { type } = clamp;
  return typeof type === "string" ? { ...clamp, type: type.trim().toLowerCase() } : clamp;
}

const clampKinds = z.discriminatedUnion(
  "type",
  [
    group("a finger", {
      type: z.literal("finger"),
      noseAngle: angle,
      noseRadius: length,
      height: length,
      footDepth: length,
      topRadius: length.optional(),
      ...holder,
      ...along,
      ...shim,
    }),
    group("a clamp bar", {
      type: z.literal("bar"),
      thickness: length,
      depth: length,
      noseRadius: length,
      noseAngle: angle.optional(),
      topRadius: length.optional(),
      ...holder,
      ...along,
      ...shim,
    }),
    group("a clamp", {
      type: z.literal("profile"),
      noseRadius: length,
      profiles: profileList(1),
      ...along,
      ...shim,
    }),
  ],
  {
    error: (issue) => (issue.code === "invalid_union" ? '"finger", "bar" or "profile"' : "a clamp in braces"),
  },
);

const clamp = z.preprocess(inSmallLetters, clampKinds);

const material = z.union(
  [
    z.string(),
    group("a metal", {
      name: plainText("a name"),
      yield: megapascals,
      modulus: megapascals,
      ultimate: megapascals.optional(),
    }),
  ],
  { error: () => 'the name of a metal, such as "mild steel", or {name, yield, modulus} in MPa' },
);

export const bend = group("a bend", {
  angle: angle.optional(),
  included: angle.optional(),
  turn: oneOf(["up", "down"]),
  insideRadius: length.optional(),
  overbend: angle.optional(),
  deduction: length.optional(),
});

const A_FLAT = 'a length such as 12, "3/8" or "5 mm", {size, from, to}, or "rest"';
const edge = oneOf(["outside", "inside", "tangent"]);
const flat = z.union(
  [written(A_FLAT), group("a flat", { size: length, from: edge.optional(), to: edge.optional() })],
  { error: () => A_FLAT },
);

const A_SPAN = 'from and to, as [0, "1/2"]; to may be "end"';
const span = list(written(A_SPAN), 2, 2, A_SPAN);

const cutOut = group("a cut-out", { across: span, along: span });

const doubts = z.union([length, z.array(length, { error: () => "a list of lengths, one for each flat" })], {
  error: () => "a length for all flats, or a list of lengths, one for each flat",
});

export const jobFileSchema = group("a job", {
  noseroom: z.literal(1, { error: () => "1, the version of the job file" }),
  units,
  part: group("a part", {
    name: plainText("a name"),
    material,
    thickness: written(thicknessHint),
    insideRadius: length,
    kFactor: written("a number from 0 to 1").optional(),
    length: length.optional(),
    dimensions: oneOf(["outside", "inside", "flat"]),
    closedBends: oneOf(["corner", "tangent"]).optional(),
    flats: z.array(flat, { error: () => "a list of lengths, one more than there are bends" }),
    bends: list(bend, 1, LIMITS.bends, `a list of 1 to ${LIMITS.bends} bends`),
    overall: group("an overall size", {
      size: length,
      along: z.int({ error: () => "the number of the flat that it is measured along" }),
    }).optional(),
    allowance: oneOf(["kFactor", "din6935"]).optional(),
    grain: written('"across", "along" or an angle in degrees, measured from the bend lines').optional(),
    doubts: doubts.optional(),
    cutOuts: list(cutOut, 0, LIMITS.cutOuts, `a list of up to ${LIMITS.cutOuts} cut-outs`).optional(),
  }),
  brake: group("a brake", {
    name: plainText("a name"),
    measured: date.optional(),
    clamp,
    bed: group("a bed", { profile }),
    leaf: group("a leaf", {
      profile,
      swing: angle,
      pivot: list(length, 2, 2, "a point, [x, y]").optional(),
    }),
    frame: list(framePiece, 0, LIMITS.pieces, `a list of 0 to ${LIMITS.pieces} profiles`).optional(),
    lift: length,
    openEnds: yesOrNo,
    length: length.optional(),
    leastGrip: length.optional(),
    leastFlange: length.optional(),
    setback: written('"auto", "one" or a length').optional(),
    rated: group("a rating", { thickness: written(thicknessHint), length, yield: megapascals }).optional(),
  }),
  order: z
    .array(
      group("a step", {
        bend: z.int({ error: () => "the number of a bend, counted from 1" }),
        clamped: oneOf(["start", "end"]),
        to: angle.optional(),
      }),
      { error: () => "a list of steps, one for each bend" },
    )
    .optional(),
  finishByHand: list(
    group("a bend to close by hand", {
      bend: z.int({ error: () => "the number of a bend, counted from 1" }),
      to: angle,
      filler: length.optional(),
    }),
    0,
    LIMITS.bends,
    "a list of bends that the leaf leaves open, {bend, to, filler}",
  ).optional(),
  margin: length.optional(),
});

/** A job file as written: the keys of the contract, numbers still as the person wrote them. */
export type JobFile = z.output<typeof jobFileSchema>;
export type FlatFile = JobFile["part"]["flats"][number];
export type ClampFile = JobFile["brake"]["clamp"];
export type FramePieceFile = NonNullable<JobFile["brake"]["frame"]>[number];
export type ProfileFile = JobFile["brake"]["bed"]["profile"];
