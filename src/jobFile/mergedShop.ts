/**
 * A shop file with its jobs taken apart: each brake and each part once, in the shop's unit, under a name of its own.
 */
import type { LengthUnit } from "../units/length.ts";
import { inUnit } from "./inUnit.ts";
import type { JobFile } from "./schema.ts";
import type { Shop, ShopFile } from "./shopFile.ts";

/** All brakes and parts. @example mergedShop({ noseroomShop: 1, units: "mm", jobs: [job] }).parts[0]?.name // that of the job's part */
export function mergedShop({ units, margin, brakes = [], parts = [], jobs = [] }: ShopFile): Shop {
  const inside = jobs.map((job) => inUnit(job, units));
  const given = margin ?? inside.find((job) => job.margin !== undefined)?.margin;
  return {
    units,
    ...(given !== undefined && { margin: given }),
    brakes: eachOnce([...brakes, ...inside.map(({ brake }) => brake)], units),
    parts: eachOnce([...parts, ...inside.map(({ part }) => part)], units),
  };
}

/** Those that are the same but for their name only once, and no two of one name. */
function eachOnce<T extends JobFile["brake"] | JobFile["part"]>(all: readonly T[], units: LengthUnit): T[] {
  const seen = new Set<string>();
  const names = new Set<string>();
  return all.flatMap((one) => {
    const mark = JSON.stringify({ ...one, name: "", units });
    if (seen.has(mark)) return [];
    seen.add(mark);
    let name = one.name;
    for (let n = 2; names.has(name); n++) name = `${one.name} (${n})`;
    names.add(name);
    return [{ ...one, name }];
  });
}
