/**
 * Places in the chain against places in the file: an offset is one entry of the file's bends, and in the chain two bends with a
 * flat of its own between. Drawings, orders, doubts and labels count along the chain, from 0; key paths count as the file does.
 */
import type { JobFile, KeyPath, PartFile } from "./jobFile.ts";

type Bends = Pick<PartFile, "bends">;

/** Where flat `index` and bend `index` of the file stand in the chain; of an offset, its first bend. */
export function inChain({ bends }: Bends, index: number): number {
  return index + bends.slice(0, index).filter(({ offset }) => offset !== undefined).length;
}

/** How many flats the chain has. */
export function chainFlats(part: Bends): number {
  return inChain(part, part.bends.length) + 1;
}

/** Which flat of the file a flat of the chain is; null for an offset's own. */
export function fileFlat(part: Bends, flat: number): number | null {
  const index = part.bends.findIndex((_, i) => inChain(part, i + 1) > flat);
  const at = index < 0 ? part.bends.length : index;
  return inChain(part, at) === flat ? at : null;
}

/** Which bend of the file a bend of the chain belongs to. */
export function fileBend(part: Bends, bend: number): number {
  const index = part.bends.findIndex((_, i) => inChain(part, i + 1) > bend);
  return index < 0 ? part.bends.length - 1 : index;
}

/** Where the size of a flat of the chain stands in the file; of an offset's own flat, the offset's height. */
export function flatPath({ part }: JobFile, flat: number): KeyPath {
  const index = fileFlat(part, flat);
  if (index === null) return ["part", "bends", fileBend(part, flat - 1), "offset"];
  const path = ["part", "flats", index];
  return typeof part.flats[index] === "object" ? [...path, "size"] : path;
}

/** Where the angle of a bend of the chain stands in the file; of a hem, its kind. */
export function bendPath({ part }: JobFile, bend: number): KeyPath {
  const index = fileBend(part, bend);
  const { hem, included } = part.bends[index] ?? {};
  return ["part", "bends", index, hem ? "hem" : included === undefined ? "angle" : "included"];
}
