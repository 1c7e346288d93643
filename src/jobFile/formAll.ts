/**
 * The bends of a whole part as the brake forms them, wherever in the file they stand: read and formed like those of a
 * section that has them all, so that radius, overbend, allowance and setback come from one place (formPart.ts).
 */
import type { Brake } from "../brake/brake.ts";
import type { Part } from "../part/part.ts";
import { formPart } from "./formPart.ts";
import type { Reading } from "./reading.ts";
import { readPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";
import type { WholeFile } from "./wholeSchema.ts";

/** A bend as written, and where it stands in the file. */
export interface WrittenBend {
  readonly path: string;
  readonly bend: JobFile["part"]["bends"][number];
}

/** Longer than any bend takes up, so that the flats between are never at fault. */
const LONG = "10000 mm";

/** Sheet and bends as formed, or undefined with the problems noted at the keys of the bends. */
export function formAll(
  reading: Reading,
  file: WholeFile,
  written: readonly WrittenBend[],
  brake: Brake,
): Part | undefined {
  const { name, material, thickness, insideRadius, kFactor, closedBends, allowance } = file.part;
  const section: JobFile = {
    noseroom: 1,
    units: file.units,
    brake: file.brake,
    part: {
      name,
      material,
      thickness,
      insideRadius,
      ...(kFactor !== undefined && { kFactor }),
      ...(closedBends !== undefined && { closedBends }),
      ...(allowance !== undefined && { allowance }),
      dimensions: "flat",
      flats: [LONG, ...written.map(() => LONG)],
      bends: written.map(({ bend }) => bend),
    },
  };
  const of: Reading = { units: reading.units, problems: [] };
  const asked = readPart(of, section.part);
  const part = asked && formPart(of, asked, brake, section);
  for (const problem of of.problems) {
    const path = problem.path.replace(/^part\.bends\[(\d+)\]/u, (_, i) => written[Number(i)]!.path);
    reading.problems.push({ ...problem, path });
  }
  return of.problems.length === 0 ? part : undefined;
}
