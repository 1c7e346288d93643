/**
 * A flat's size in a job as it is held on the page: the entry itself, or its `size` where it was measured from edge to edge.
 */
import { inChain } from "./chain.ts";
import type { FlatFile, JobFile, KeyPath, Typed } from "./jobFile.ts";

/** The size as typed. @example sizeOf({ size: "3/8", from: "inside" }) // "3/8" */
export function sizeOf(flat: FlatFile | undefined): Typed {
  if (flat === undefined) return "";
  return typeof flat === "object" ? flat.size : flat;
}

export type FlatEdge = "outside" | "inside" | "tangent";

/** The same flat measured to another edge at one end; undefined for the part's own way. */
export function withEdge(flat: FlatFile, end: "from" | "to", edge: FlatEdge | undefined): FlatFile {
  const { [end]: _before, ...rest } = typeof flat === "object" ? flat : { size: flat };
  const next = edge === undefined ? rest : { ...rest, [end]: edge };
  return Object.keys(next).length === 1 ? next.size : next;
}

/** Whether a flat is what an overall size leaves. */
export function isRest(flat: FlatFile): boolean {
  return typeof flat === "string" && flat.trim().toLowerCase() === "rest";
}

/** The job with flat `rest` (from 0) worked out from an overall size, or with every flat measured. */
export function withRest(
  file: JobFile,
  rest: number | null,
  known: { readonly size: Typed; readonly rest: Typed },
): JobFile {
  const { overall, ...part } = file.part;
  const flats = part.flats.map((flat, i) => (i === rest ? "rest" : isRest(flat) ? known.rest : flat));
  const kept = overall ?? { size: known.size, along: inChain(part, rest ?? 0) + 1 };
  return { ...file, part: { ...part, flats, ...(rest === null ? {} : { overall: kept }) } };
}

/** The id of the field of a key. @example pathId(["part", "flats", 0]) // "field-part-flats-0" */
export function pathId(path: KeyPath): string {
  return `field-${path.join("-")}`;
}

/** The flat as it is read from the part's other end. */
export function turnedEnd(flat: FlatFile): FlatFile {
  if (typeof flat !== "object") return flat;
  const { size, from, to } = flat;
  return { size, ...(to && { from: to }), ...(from && { to: from }) };
}
