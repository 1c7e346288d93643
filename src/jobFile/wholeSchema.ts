/**
 * The shape of a job file whose part is more than a section: a box, a drawn pattern, or a section with ends and spans.
 * Brake, margin and units are those of any job; the order names several bends a stroke and a point that lies clamped.
 */
import * as z from "zod";
import type { Problem } from "./problem.ts";
import { bend, jobFileSchema, profile } from "./schema.ts";
import { angle, group, LIMITS, length, list, oneOf } from "./shapes.ts";

const upOrDown = oneOf(["up", "down"]);

const bent = { insideRadius: length.optional(), overbend: angle.optional() };

const wallLip = group("a lip", {
  size: length,
  angle: angle.optional(),
  turn: oneOf(["in", "out"]).optional(),
  ...bent,
});

const lipsOf = <Lip extends z.ZodType>(lip: Lip) =>
  list(lip, 0, LIMITS.lips, `a list of up to ${LIMITS.lips} lips, the one next to the wall first`).optional();

const wall = z.union(
  [
    length,
    group("a wall", {
      height: length,
      angle: angle.optional(),
      turn: upOrDown.optional(),
      ...bent,
      lips: lipsOf(wallLip),
    }),
  ],
  { error: () => "a height, or {height, angle, turn, insideRadius, overbend, lips}" },
);

const CORNERS = '"open", "meet", or {tab: width, on: "inside" or "outside"}';

const corners = z.union(
  [
    oneOf(["open", "meet"]),
    group("corners with tabs", { tab: length, on: oneOf(["inside", "outside"]).optional(), ...bent }),
  ],
  { error: () => CORNERS },
);

const box = group("a box", {
  width: length,
  depth: length,
  walls: group("walls", {
    left: wall.optional(),
    right: wall.optional(),
    front: wall.optional(),
    back: wall.optional(),
  }),
  corners: corners.optional(),
  gap: length.optional(),
});

const endLip = group("a lip", { size: length, angle, turn: upOrDown, ...bent });

const flatNumber = z.int({ error: () => "the number of a flat, counted from 1" });

const end = group("an end", {
  flat: flatNumber,
  at: oneOf(["start", "finish"]),
  size: length,
  angle,
  turn: upOrDown,
  ...bent,
  from: length.optional(),
  to: length.optional(),
  lips: lipsOf(endLip),
});

const flatSpan = group("a span", { flat: flatNumber, from: length, to: length });

const point = list(length, 2, 2, "a point, [x, y]");

const lineBend = group("a bend", {
  line: list(point, 2, 2, "the ends of a line, [[x, y], [x, y]]"),
  angle,
  turn: upOrDown,
  ...bent,
});

const pattern = group("a pattern", {
  outline: profile,
  holes: list(profile, 0, LIMITS.holes, `a list of up to ${LIMITS.holes} holes`).optional(),
  bends: list(lineBend, 1, LIMITS.bends, `a list of 1 to ${LIMITS.bends} bends`),
});

const placedFinger = group("a finger", { width: length, from: length });

const wholeStep = group("a step", {
  bends: list(
    z.int({ error: () => "the number of a bend, counted from 1" }),
    1,
    LIMITS.bends,
    "a list of bends, by their numbers",
  ),
  clampedAt: point,
  fingers: list(
    placedFinger,
    1,
    LIMITS.fingers,
    'a list of fingers, [{ "width": 50, "from": 0 }, …]',
  ).optional(),
  placed: length.optional(),
});

const { noseroom, units, brake, margin, finishByHand, part: section } = jobFileSchema.shape;
const { dimensions, flats, bends, ...sheet } = section.shape;

export const wholeFileSchema = group("a job", {
  noseroom,
  units,
  part: group("a part", {
    ...sheet,
    dimensions: dimensions.optional(),
    flats: flats.optional(),
    bends: list(bend, 0, LIMITS.bends, `a list of up to ${LIMITS.bends} bends`).optional(),
    ends: list(end, 0, LIMITS.bends, `a list of up to ${LIMITS.bends} ends`).optional(),
    spans: list(flatSpan, 0, LIMITS.bends + 1, "a list of spans, one a flat at most").optional(),
    box: box.optional(),
    pattern: pattern.optional(),
  }),
  brake,
  order: z.array(wholeStep, { error: () => "a list of steps, each bend in one of them" }).optional(),
  finishByHand,
  margin,
});

export type WholeFile = z.output<typeof wholeFileSchema>;
export type WholePartFile = WholeFile["part"];

/** Keys that make a part a whole part. */
const WHOLE_KEYS = ["box", "pattern", "ends", "spans"];

/** The key that makes a part as written more than a section; undefined where it is none. */
export function wholeKeyOf(part: unknown): string | undefined {
  if (typeof part !== "object" || part === null) return undefined;
  return WHOLE_KEYS.find((key) => Object.hasOwn(part, key));
}

/** Whether a file's part is more than a section. */
export function isWholeFile(value: unknown): boolean {
  return (
    typeof value === "object" && value !== null && "part" in value && wholeKeyOf(value.part) !== undefined
  );
}

/** Said of a whole part where only a section can stand. */
export function notASection(path: string, key: string): Problem {
  return {
    path: `${path}.${key}`,
    found: "a part that is more than a section",
    allowed:
      "a section here, flats and bends alone; noseroom check takes the whole part in a job file of its own",
  };
}
