/**
 * From the text of a whole part's job file to a job that the engine can work on, or to what is wrong with it. Never throws.
 */
import type { Brake } from "../brake/brake.ts";
import type { Problem } from "./problem.ts";
import { readAlong } from "./readAlong.ts";
import { readBrake } from "./readBrake.ts";
import { lengthAt, type Reading } from "./reading.ts";
import { DEFAULT_MARGIN_MM } from "./readJob.ts";
import { readWholeOrder } from "./readWholeOrder.ts";
import { readWholePart } from "./readWholePart.ts";
import { shapedBy } from "./shape.ts";
import type { UnreadKey, WholeJob } from "./wholeJob.ts";
import { type WholeFile, wholeFileSchema } from "./wholeSchema.ts";

export type WholeRead =
  | { readonly ok: true; readonly job: WholeJob; readonly file: WholeFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads a whole part's job from its parsed text. */
export function readWhole(value: unknown): WholeRead {
  const shape = shapedBy(wholeFileSchema, value);
  return shape.ok ? wholeJobOf(shape.file) : shape;
}

/** A file of the right shape made into a job, or what is wrong with its figures. */
export function wholeJobOf(file: WholeFile): WholeRead {
  const reading: Reading = { units: file.units, problems: [] };
  const brake = readBrake(reading, file.brake);
  const along = readAlong(reading, file.brake);
  const marginMm =
    file.margin === undefined ? DEFAULT_MARGIN_MM : lengthAt(reading, "margin", file.margin, "atLeast0");
  const read = brake && readWholePart(reading, file, brake);
  const order = read && brake && file.order && readWholeOrder(reading, file.order, read.part, brake);
  if (!brake || !read || reading.problems.length > 0) return { ok: false, problems: reading.problems };
  const { units } = file;
  const unread = unreadKeys(file.part);
  const job: WholeJob = {
    units,
    ...read,
    brake,
    along: { ...along, ...leastOf(brake) },
    ...(order && { order }),
    marginMm,
    ...(unread.length > 0 && { unread }),
  };
  return { ok: true, file, job };
}

/** Keys that are there and change nothing: they are told, so that nobody counts on them. */
function unreadKeys(part: WholeFile["part"]): UnreadKey[] {
  const never = ["grain", "doubts", "cutOuts"] as const;
  // A section's length and overall size are read; a box and a pattern have sizes of their own.
  const ofSections = part.box || part.pattern ? (["overall", "length"] as const) : [];
  const ofDrawn = part.pattern ? (["dimensions"] as const) : [];
  return [...never, ...ofSections, ...ofDrawn].filter((key) => part[key] !== undefined);
}

/** How much sheet must be held and caught, as the brake says. */
function leastOf({
  leastGripMm,
  leastFlangeMm,
}: Brake): Pick<WholeJob["along"], "leastGripMm" | "leastFlangeMm"> {
  return {
    ...(leastGripMm !== undefined && { leastGripMm }),
    ...(leastFlangeMm !== undefined && { leastFlangeMm }),
  };
}
