/**
 * What the drawing says of each flat: its figure as the person typed it, and how far past its bend tangent lines it was
 * measured, so that the dimension starts where the person held the rule: at the outside, the inside, or the tangent.
 */
import { finishedPart, type Job } from "../../src/jobFile/job.ts";
import { type Edge, takenAtBend } from "../../src/part/bendSetback.ts";
import type { Bend } from "../../src/part/part.ts";
import type { Mm } from "../../src/units/quantity.ts";
import { lengthLabel, readMm } from "../fields/typed.ts";
import { fileFlat, inChain } from "../store/chain.ts";
import { sizeOf } from "../store/flats.ts";
import type { FlatFile, JobFile, PartFile } from "../store/jobFile.ts";

export interface MeasuredFlat {
  /** The figure without its unit. */
  readonly words: string;
  /** Past the tangent line at the lower-numbered end, and at the other. */
  readonly pastMm: readonly [Mm, Mm];
  readonly edges: readonly [Edge, Edge];
}

/** The figure of a flat without its unit; what the overall size leaves is told as worked out, what can't be read as "?". */
export function flatWords(flat: FlatFile | undefined, mm: Mm | undefined, units: "mm" | "in"): string {
  const size = sizeOf(flat);
  const rest = typeof size === "string" && size.trim().toLowerCase() === "rest";
  const read = rest ? mm : readMm(size, "length", units);
  return read === undefined ? "?" : lengthLabel(read, units).replace(/ (in|mm)$/, "");
}

const OFFSET_FLAT = { size: "rest", from: "tangent", to: "tangent" } as const;

/** All flats of a job's finished part, flat 1 first. */
export function measuredFlats(file: JobFile, job: Job): readonly MeasuredFlat[] {
  const { flatsMm, bends, thicknessMm } = finishedPart(job);
  const usual: Edge = file.part.dimensions === "flat" ? "tangent" : file.part.dimensions;
  // A hem is measured to its outermost point, whatever other closed bends are measured to.
  const closed = ({ hem }: Bend) => (hem ? "tangent" : (file.part.closedBends ?? "corner"));
  const past = (bend: Bend | undefined, edge: Edge) =>
    bend === undefined ? 0 : takenAtBend({ ...bend, thicknessMm }, edge, closed(bend));
  return flatsMm.map((flatMm, i): MeasuredFlat => {
    const index = fileFlat(file.part, i);
    // The flat of an offset is worked out from the offset's height.
    const flat = index === null ? OFFSET_FLAT : file.part.flats[index];
    const { from = usual, to = usual } = typeof flat === "object" ? flat : {};
    const pastMm = [past(bends[i - 1], from), past(bends[i], to)] as const;
    return { words: flatWords(flat, flatMm + pastMm[0] + pastMm[1], file.units), pastMm, edges: [from, to] };
  });
}

/** Which label of a drawing belongs to the field that is being filled in: of "field-part-flats-0-size" that of the first flat. */
export function litLabel(field: string | null, part: PartFile): string | null {
  const [, kind, index, key] = /^field-part-(flat|bend)s-(\d+)(?:-(\w+)|$)/.exec(field ?? "") ?? [];
  if (kind === undefined) return null;
  const place = inChain(part, Number(index));
  return key === "offset" ? `flat ${place + 1}` : `${kind} ${place}`;
}
