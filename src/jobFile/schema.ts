/**
 * The shape of a job file: which keys there are, and whether each holds a number, a word, a list or a group.
 * Written lengths stay as written here ("3/8"); what they may measure is judged where they are read.
 * The message of each rule is what is allowed, in words to follow "it should be".
 */
import * as z from "zod";
import { HEM_KINDS } from "../part/part.ts";
import { thicknessHint } from "../units/gauge.ts";
import {
  angle,
  date,
  group,
  LIMITS,
  length,
  list,
  megapascals,
  oneOf,
  plainText,
  units,
  written,
  yesOrNo,
} from "./shapes.ts";

const corner = list(length, 2, 3, "a corner, [x, y] or [x, y, radius]");
export const profile = list(
  corner,
  3,
  LIMITS.corners,
  `a closed profile of 3 to ${LIMITS.corners} corners, [[x, y], [x, y, radius], …]`,
);
const profileList = (from: number) =>
  list(profile, from, LIMITS.pieces, `a list of ${from} to ${LIMITS.pieces} profiles`);

/** A fixed piece of the brake: its profile, or that with a name and where along the brake it stands. */
const stretch = list(length, 2, 2, "a stretch of the brake, [from, to]");
const framePiece = z.union(
  [profile, group("a frame piece", { name: plainText("a name"), profile, along: stretch.optional() })],
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

/** A hem is the first or the last bend, {hem, turn, gap?}, and the flat beyond it is what is folded back. */
const sectionBend = group("a bend", {
  ...bend.shape,
  hem: oneOf(HEM_KINDS).optional(),
  gap: length.optional(),
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
    bends: list(sectionBend, 1, LIMITS.bends, `a list of 1 to ${LIMITS.bends} bends`),
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
    // How far off, either way: leaf angles in degrees, nose setback and nose radius as lengths. {} and no key at all are the same.
    doubts: group("doubts of a brake", {
      overbend: angle.optional(),
      setback: length.optional(),
      noseRadius: length.optional(),
    }).optional(),
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
