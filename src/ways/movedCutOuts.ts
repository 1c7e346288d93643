/**
 * Cut-outs that go with a flat that is made longer or shorter: an edge beyond the flat, or on the bend tangent line at
 * its far end, keeps its distance from there; one nearer to the datum edge stays. Exact but for the rounding of the file.
 */
import { layOut } from "../blank/blank.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { AS_PRINTED_MM } from "../jobFile/readLayout.ts";
import type { JobFile } from "../jobFile/schema.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import { parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

type CutOuts = NonNullable<JobFile["part"]["cutOuts"]>;

/**
 * The cut-outs of the file with flat `index` (from 0) longer by `byMm`; `job` is what the unchanged file reads as.
 * A cut-out of which nothing is left goes.
 */
export function movedCutOuts(file: JobFile, job: Job, index: number, byMm: Mm): CutOuts | undefined {
  const { units } = file;
  const { developedWidthMm, bends } = layOut(finishedPart(job));
  const endMm = bends[index]?.tangentsMm[0] ?? developedWidthMm;
  const mm = (written: string | number | undefined) => parseLength(written ?? "", units);
  const moved = (written: string | number | undefined): string | number => {
    const placeMm = mm(written);
    // The word for the blank's end goes with it by itself.
    if (placeMm === undefined || placeMm < endMm - AS_PRINTED_MM) return written ?? 0;
    return writtenLength(placeMm + byMm, units);
  };
  return file.part.cutOuts
    ?.map((cutOut) => ({ ...cutOut, across: cutOut.across.map(moved) }))
    .filter(({ across: [from, to] }) => (mm(from) ?? 0) < (mm(to) ?? Number.POSITIVE_INFINITY));
}
