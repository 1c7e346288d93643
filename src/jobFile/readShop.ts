/**
 * From the text of a shop file to its brakes and parts, or to what is wrong with them.
 * Brakes are read as they are; parts on a bar that forms any radius, so that a slip is the part's own. Never throws.
 */
import { dataOf } from "./jsonText.ts";
import type { Problem } from "./problem.ts";
import { readBrake } from "./readBrake.ts";
import type { Reading } from "./reading.ts";
import { jobOf } from "./readJob.ts";
import type { JobFile } from "./schema.ts";
import { shapedBy } from "./shape.ts";
import { type ShopFile, shopFileSchema } from "./shopFile.ts";

export type ShopRead =
  | { readonly ok: true; readonly shop: ShopFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const MOST_TEXT = 4_000_000;

/**
 * Reads a shop file's text.
 * @example readShop("{}") // { ok: false, problems: [{ path: "noseroomShop", … }, …] }
 */
export function readShop(text: string): ShopRead {
  const read = dataOf(text, MOST_TEXT);
  if (!read.ok) return read;
  const shape = shapedBy(shopFileSchema, read.value);
  if (!shape.ok) return shape;
  const shop = shape.file;
  const problems = [
    ...shop.brakes.flatMap((brake, i) => {
      const reading: Reading = { units: shop.units, problems: [] };
      readBrake(reading, brake);
      return reading.problems.map((problem) => moved(problem, "brake", `brakes[${i}]`));
    }),
    ...shop.parts.flatMap((part, i) => {
      const read = jobOf(jobFileOf(shop, part, SHARP_BAR));
      return read.ok ? [] : read.problems.map((problem) => moved(problem, "part", `parts[${i}]`));
    }),
  ];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, shop };
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
export function jobFileOf(shop: ShopFile, part: JobFile["part"], brake: JobFile["brake"]): JobFile {
  const { units, margin } = shop;
  return { noseroom: 1, units, part, brake, ...(margin !== undefined && { margin }) };
}

/** "part.flats[2]" told as "parts[4].flats[2]". */
function moved(problem: Problem, from: string, to: string): Problem {
  if (problem.path !== from && !problem.path.startsWith(`${from}.`)) return problem;
  return { ...problem, path: to + problem.path.slice(from.length) };
}
