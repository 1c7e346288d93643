/**
 * The flats of a job as they were measured: a length from edge to edge of the bends at its ends, or the rest of an overall size.
 * An edge that is not said is that of the part's `dimensions`; at a free end it means nothing.
 */
import type { Edge } from "../part/bendSetback.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthAt, type Reading, refuse } from "./reading.ts";
import type { JobFile } from "./schema.ts";

export interface AskedFlat {
  /** Absent for the flat that makes up the rest of the overall size. */
  readonly sizeMm?: Mm;
  /** Edge at the lower-numbered bend, and at the other. */
  readonly from: Edge;
  readonly to: Edge;
}

/** Extent of the finished part along one of its flats (from 0), over everything. */
export interface AskedOverall {
  readonly sizeMm: Mm;
  readonly along: number;
}

type PartFile = JobFile["part"];

/** Whether an entry is the word for what is left of the overall size. */
export function isRest(flat: PartFile["flats"][number]): boolean {
  return typeof flat === "string" && flat.trim().toLowerCase() === "rest";
}

/** The edge that a plain length is measured to. */
export function usualEdge(dimensions: PartFile["dimensions"]): Edge {
  return dimensions === "flat" ? "tangent" : dimensions;
}

/** The flats as measured, with problems noted. */
export function readFlats(reading: Reading, file: PartFile): readonly AskedFlat[] {
  const wanted = file.bends.length + 1;
  if (file.flats.length !== wanted) {
    const commas = file.flats.length > wanted ? " (a comma parts two lengths: write 12.5 for 12,5)" : "";
    const allowed = `a list of ${wanted} lengths, one more than there are bends${commas}`;
    refuse(reading, "part.flats", file.flats, allowed);
    return [];
  }
  const rests = file.flats.flatMap((flat, i) => (isRest(flat) ? [i] : []));
  if (rests.length > 1)
    refuse(reading, `part.flats[${rests[1]}]`, "rest", 'a length, since only one flat can be "rest"');
  else if (rests.length === 1 && file.overall === undefined)
    refuse(reading, "part.overall", undefined, '{size, along}, since a flat is "rest"');
  const usual = usualEdge(file.dimensions);
  return file.flats.map((flat, i): AskedFlat => {
    if (typeof flat === "object") {
      const { size, from = usual, to = usual } = flat;
      return { sizeMm: lengthAt(reading, `part.flats[${i}].size`, size, "above0"), from, to };
    }
    if (isRest(flat)) return { from: usual, to: usual };
    return { sizeMm: lengthAt(reading, `part.flats[${i}]`, flat, "above0"), from: usual, to: usual };
  });
}

/** The overall size, with problems noted; undefined where the file gives none. */
export function readOverall(reading: Reading, file: PartFile): AskedOverall | undefined {
  if (file.overall === undefined) return undefined;
  const { size, along } = file.overall;
  const flats = file.bends.length + 1;
  if (along < 1 || along > flats)
    refuse(reading, "part.overall.along", along, `the number of a flat, from 1 to ${flats}`);
  return { sizeMm: lengthAt(reading, "part.overall.size", size, "above0"), along: along - 1 };
}
