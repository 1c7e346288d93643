/**
 * A flat's size in a job as it is held on the page: the entry itself, or its `size` where it was measured from edge to edge.
 */
import type { FlatFile, JobFile, KeyPath, Typed } from "./jobFile.ts";

/** The size as typed. @example sizeOf({ size: "3/8", from: "inside" }) // "3/8" */
export function sizeOf(flat: FlatFile | undefined): Typed {
  if (flat === undefined) return "";
  return typeof flat === "object" ? flat.size : flat;
}

/** Where the size of flat `index` stands in the file. */
export function sizePath({ part }: JobFile, index: number): KeyPath {
  const path = ["part", "flats", index];
  return typeof part.flats[index] === "object" ? [...path, "size"] : path;
}

/** The flat as it is read from the part's other end. */
export function turnedEnd(flat: FlatFile): FlatFile {
  if (typeof flat !== "object") return flat;
  const { size, from, to } = flat;
  return { size, ...(to && { from: to }), ...(from && { to: from }) };
}
