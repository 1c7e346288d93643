/**
 * From the text of a shop file to its brakes and parts, or to what is wrong with them.
 * Brakes are read as they are; parts on a bar that forms any radius, so that a slip is the part's own. Never throws.
 */
import { dataOf } from "./jsonText.ts";
import { mergedShop } from "./mergedShop.ts";
import { withOffsets } from "./offsets.ts";
import type { Problem } from "./problem.ts";
import { readBrake } from "./readBrake.ts";
import type { Reading } from "./reading.ts";
import { type JobRead, jobOf } from "./readJob.ts";
import type { JobFile } from "./schema.ts";
import { shapedBy } from "./shape.ts";
import { type Shop, shopFileSchema } from "./shopFile.ts";
import { notASection, wholeKeyOf } from "./wholeSchema.ts";

export type ShopRead =
  | {
      readonly ok: true;
      readonly shop: Shop;
      /** The jobs of the file, read. */
      readonly jobs: readonly Extract<JobRead, { ok: true }>[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const MOST_TEXT = 4_000_000;

/**
 * Reads a shop file's text.
 * @example readShop("{}") // { ok: false, problems: [{ path: "noseroomShop", … }, …] }
 */
export function readShop(text: string): ShopRead {
  const data = dataOf(text, MOST_TEXT);
  if (!data.ok) return data;
  const whole = wholeParts(data.value);
  if (whole.length > 0) return { ok: false, problems: whole };
  const shape = shapedBy(shopFileSchema, offsetsOut(data.value));
  if (!shape.ok) return shape;
  const { units, brakes = [], parts = [], jobs: written = [] } = shape.file;
  const read = written.map((job) => jobOf(job));
  const problems = [
    ...brakes.flatMap((brake, i) => {
      const reading: Reading = { units, problems: [] };
      readBrake(reading, brake);
      return reading.problems.map((problem) => moved(problem, "brake", `brakes[${i}]`));
    }),
    ...parts.flatMap((part, i) => {
      const alone = jobOf(jobFileOf({ units }, part, SHARP_BAR));
      return alone.ok ? [] : alone.problems.map((problem) => moved(problem, "part", `parts[${i}]`));
    }),
    ...read.flatMap((job, i) =>
      job.ok ? [] : job.problems.map((p) => ({ ...p, path: `jobs[${i}].${p.path}` })),
    ),
  ];
  const shop = mergedShop(shape.file);
  if (shop.brakes.length === 0) problems.push(lacking("brakes", "at least one brake, here or in a job"));
  if (shop.parts.length === 0) problems.push(lacking("parts", "at least one part, here or in a job"));
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, shop, jobs: read.flatMap((job) => (job.ok ? [job] : [])) };
}

/** The shop with the offsets of its parts and jobs written out; a height that can't be is left as typed, for the schema to tell. */
function offsetsOut(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  const { units, parts, jobs } = value as Readonly<Record<string, unknown>>;
  const out = (job: object) => {
    const written = withOffsets(job);
    return written.problems.length > 0 ? job : (written.value as object);
  };
  return {
    ...value,
    ...(Array.isArray(parts) && {
      parts: parts.map((part: unknown) => (out({ units, part }) as { part: unknown }).part),
    }),
    ...(Array.isArray(jobs) && {
      jobs: jobs.map((job: unknown) => (typeof job === "object" && job ? out(job) : job)),
    }),
  };
}

/** Parts and jobs of a shop that are more than sections. */
function wholeParts(value: unknown): Problem[] {
  const { parts, jobs } = (value ?? {}) as { readonly parts?: unknown; readonly jobs?: unknown };
  const all = (of: unknown): unknown[] => (Array.isArray(of) ? of : []);
  const told = (path: string, part: unknown) => {
    const key = wholeKeyOf(part);
    return key === undefined ? [] : [notASection(path, key)];
  };
  return [
    ...all(parts).flatMap((part, i) => told(`parts[${i}]`, part)),
    ...all(jobs).flatMap((job, i) =>
      told(`jobs[${i}].part`, (job as { readonly part?: unknown } | null)?.part),
    ),
  ];
}

function lacking(path: string, allowed: string): Problem {
  return { path, found: "none", allowed };
}

/** Whether a text means to be a shop file, whatever else is wrong with it. @example isShop("{noseroomShop: 1}") // true */
export function isShop(text: string): boolean {
  const data = dataOf(text, MOST_TEXT);
  return (
    data.ok &&
    typeof data.value === "object" &&
    data.value !== null &&
    Object.hasOwn(data.value, "noseroomShop")
  );
}

/** A brake whose sharp, square bar forms any radius, to read parts with. */
export const SHARP_BAR: JobFile["brake"] = {
  name: "any bar",
  clamp: { type: "bar", thickness: "6 mm", depth: "50 mm", noseRadius: 0 },
  bed: { profile: box("-50 mm", "0 mm", "-40 mm") },
  leaf: { profile: box("0 mm", "20 mm", "-10 mm"), swing: 135 },
  lift: "20 mm",
  openEnds: false,
};

function box(fromX: string, toX: string, underY: string): JobFile["brake"]["bed"]["profile"] {
  return [
    [fromX, underY],
    [toX, underY],
    [toX, 0],
    [fromX, 0],
  ];
}

/** The job of one part of the shop on one brake. */
export function jobFileOf(
  shop: Pick<Shop, "units" | "margin">,
  part: JobFile["part"],
  brake: JobFile["brake"],
): JobFile {
  const { units, margin } = shop;
  return { noseroom: 1, units, part, brake, ...(margin !== undefined && { margin }) };
}

/** "part.flats[2]" told as "parts[4].flats[2]". */
function moved(problem: Problem, from: string, to: string): Problem {
  if (problem.path !== from && !problem.path.startsWith(`${from}.`)) return problem;
  return { ...problem, path: to + problem.path.slice(from.length) };
}
