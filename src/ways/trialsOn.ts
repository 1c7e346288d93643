/**
 * Files put on a brake that is not theirs: read anew, the brake once for all of one unit; and how a part comes out there over the
 * range of leaf angles that the brake has to reach.
 */
import type { Trial } from "../jobFile/change.ts";
import type { Job } from "../jobFile/job.ts";
import { jobOf } from "../jobFile/readJob.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { type Outcome, outcomeOf } from "./folds.ts";

type BrakeFile = JobFile["brake"];

/** A file as it was read. */
export interface Known {
  readonly file: JobFile;
  readonly job: Job;
}

/** The file on another brake, which is taken over as read where the `known` one has the same. */
export function onBrake({ order: _, ...rest }: JobFile, brake: BrakeFile, known?: Known): Known | undefined {
  const file = { ...rest, brake };
  const read = jobOf(file, known);
  return read.ok ? { file, job: read.job } : undefined;
}

/** The files on a brake, without their own orders; undefined where one can't be read so. */
export function trialsOn(
  files: readonly JobFile[],
  brakeIn: (units: LengthUnit) => BrakeFile,
): Trial[] | undefined {
  const trials: Trial[] = [];
  const brakes = { in: brakeIn("in"), mm: brakeIn("mm") };
  let known: Known | undefined;
  for (const file of files) {
    known = onBrake(file, brakes[file.units], known);
    if (known === undefined) return undefined;
    trials.push(known.job);
  }
  return trials;
}

/** How a part comes out at its likely leaf angle, in the best order of that or of the high angle which does at all three. */
export function throughRange(
  [likely, high, low]: readonly [Trial, Trial, Trial],
  marginMm: Mm,
): Outcome | undefined {
  const does = (trial: Trial, order: Outcome["order"]) =>
    outcomeOf(trial, marginMm, order).verdict !== "hits";
  const best = outcomeOf(likely, marginMm);
  if (best.verdict !== "hits" && does(high, best.order) && does(low, best.order)) return best;
  const { order, verdict } = outcomeOf(high, marginMm);
  if (verdict === "hits" || !does(low, order)) return undefined;
  const asHigh = outcomeOf(likely, marginMm, order);
  return asHigh.verdict === "hits" ? undefined : asHigh;
}
