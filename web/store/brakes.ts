/**
 * The brakes that lie on the shelves, each once, with names that tell them apart.
 */
import { brakeInUnit } from "../../src/jobFile/inUnit.ts";
import type { BrakeFile, JobFile } from "./jobFile.ts";
import { sameFigures } from "./sameFigures.ts";
import type { Shelf } from "./shelf.ts";

export interface NamedBrake {
  readonly name: string;
  readonly brake: BrakeFile;
}

/** Brakes of these jobs and of the shelf in one unit, the first job's first, then `more`; none that is there already. */
export function differentBrakes(
  files: readonly JobFile[],
  { brakes = [] }: Pick<Shelf, "brakes">,
  units: JobFile["units"],
  more: readonly NamedBrake[] = [],
): readonly NamedBrake[] {
  const found: NamedBrake[] = [];
  const unnamed = (brake: BrakeFile) => ({ units, brake: { ...brake, name: "" } });
  const put = (wanted: string, brake: BrakeFile) => {
    if (found.some((one) => sameFigures(unnamed(one.brake), unnamed(brake)))) return;
    const taken = found.filter(({ name }) => name === wanted || name.startsWith(`${wanted} (`)).length;
    found.push({ name: taken === 0 ? wanted : `${wanted} (${taken + 1})`, brake });
  };
  const all = [...files, ...brakes];
  for (const one of all)
    put(one.brake.name || "Brake without a name", brakeInUnit(one.brake, one.units, units));
  for (const { name, brake } of more) put(name, brake);
  return found;
}
