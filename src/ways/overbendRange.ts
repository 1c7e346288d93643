/**
 * The leaf angles that a made brake has to reach: the likely one of each bend, less what springback may be smaller, up to what it
 * may be larger and what the brake itself may lose at mid-length, which the handles make up for at the ends.
 * Doubt of a reckoned springback: its published range, half of it, or 1°, whichever is most; of an overbend that the job gives: half a degree. Common practice, no source.
 */
import type { Job } from "../jobFile/job.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { Deg } from "../units/quantity.ts";

export interface OverbendRange {
  /** For each bend of the file, in its order. */
  readonly bends: readonly { readonly lowDeg: Deg; readonly likelyDeg: Deg; readonly highDeg: Deg }[];
}

const LEAST_DOUBT_DEG = 1;
const GIVEN_DOUBT_DEG = 0.5;
/** A leaf never goes further than this. */
const MOST_DEG = 179;

/** The range of each bend; `lostDeg` is what the brake may lose at mid-length. */
export function overbendRange(file: JobFile, job: Job, lostDeg: Deg): OverbendRange {
  return {
    bends: job.part.bends.map(
      ({ angleDeg, overbendDeg, overbendRangeDeg: [low, high] = [overbendDeg, overbendDeg] }, i) => {
        const given = file.part.bends[i]?.overbend !== undefined;
        const doubt = given ? GIVEN_DOUBT_DEG : Math.max(LEAST_DOUBT_DEG, (overbendDeg - angleDeg) / 2);
        return {
          lowDeg: Math.max(angleDeg, Math.min(low, overbendDeg - doubt)),
          likelyDeg: overbendDeg,
          highDeg: Math.min(MOST_DEG, Math.max(high, overbendDeg + doubt) + lostDeg),
        };
      },
    ),
  };
}

/** The job with each bend's leaf angle at one end of its range, or the likely one and no doubt of it. */
export function atEnd(
  file: JobFile,
  { bends }: OverbendRange,
  end: "lowDeg" | "likelyDeg" | "highDeg",
): JobFile {
  if (file.part.bends.length !== bends.length) return file;
  return {
    ...file,
    part: { ...file.part, bends: file.part.bends.map((bend, i) => ({ ...bend, overbend: bends[i]![end] })) },
  };
}
