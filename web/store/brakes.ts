/**
 * The brakes that lie on the shelf, each kind once, with names that tell them apart.
 */
import type { BrakeFile, JobFile } from "./jobFile.ts";
import { inUnit } from "./units.ts";

export interface NamedBrake {
  readonly name: string;
  readonly brake: BrakeFile;
}

/** A brake with the place of the first job that has it; null where it is one of `more`. */
export interface BrakeOfJob extends NamedBrake {
  readonly from: number | null;
}

/** Brakes of these jobs in one unit, the first job's first, then `more`; a brake that is there already is left out. */
export function differentBrakes(
  files: readonly JobFile[],
  units: JobFile["units"],
  more: readonly NamedBrake[] = [],
): readonly BrakeOfJob[] {
  const found: BrakeOfJob[] = [];
  const seen = new Set<string>();
  const put = (wanted: string, brake: BrakeFile, from: number | null) => {
    const mark = JSON.stringify({ ...brake, name: "" });
    if (seen.has(mark)) return;
    seen.add(mark);
    const taken = found.filter(({ name }) => name === wanted || name.startsWith(`${wanted} (`)).length;
    found.push({ name: taken === 0 ? wanted : `${wanted} (${taken + 1})`, brake, from });
  };
  for (const [i, file] of files.entries())
    put(file.brake.name || "Brake without a name", inUnit(file, units).brake, i);
  for (const { name, brake } of more) put(name, brake, null);
  return found;
}
