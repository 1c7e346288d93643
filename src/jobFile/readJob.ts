/**
 * From the text of a job file to a job that the engine can work on, or to what is wrong with it.
 * Quick refusals first: size, JSON, shape, then numbers, then geometry. Never throws.
 */

import { brakeForPart } from "../brake/stretches.ts";
import { formPart } from "./formPart.ts";
import type { Job } from "./job.ts";
import { dataOf } from "./jsonText.ts";
import { oddFigures } from "./oddFigures.ts";
import { withOffsets } from "./offsets.ts";
import type { Problem } from "./problem.ts";
import { readBrake } from "./readBrake.ts";
import { asTheLeafLeaves, readFinishByHand } from "./readFinishByHand.ts";
import { lengthAt, type Reading } from "./reading.ts";
import { readLayout } from "./readLayout.ts";
import { checkBegun, readOrder } from "./readOrder.ts";
import { readPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";
import { shapeOf } from "./shape.ts";
import { isWholeFile, notASection, wholeKeyOf } from "./wholeSchema.ts";

export type JobRead =
  | { readonly ok: true; readonly job: Job; readonly file: JobFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A job of 20 bends with 50 profiles of many corners stays far below. */
const MOST_TEXT = 1_000_000;

/** Clearance under which a bend is called tight, unless the job says otherwise: common practice, no source. */
export const DEFAULT_MARGIN_MM = 0.5;

/**
 * Reads a job file's text.
 * @example readJob("{}").problems[0].path // "noseroom"
 */
export function readJob(text: string): JobRead {
  const read = dataOf(text, MOST_TEXT);
  if (!read.ok) return read;
  const whole = isWholeFile(read.value) && wholeKeyOf((read.value as { readonly part: unknown }).part);
  if (whole) return { ok: false, problems: [notASection("part", whole)] };
  const { value, problems, asTyped } = withOffsets(read.value);
  if (problems.length > 0) return { ok: false, problems };
  const shape = shapeOf(value);
  const job = shape.ok ? jobOf(shape.file) : shape;
  return job.ok
    ? job
    : { ...job, problems: job.problems.map((one) => ({ ...one, path: asTyped(one.path) })) };
}

/**
 * A job file of the right shape made into a job, or what is wrong with its figures. `known` is another job read
 * before: where both files share one brake (the same object), it is taken over as read.
 */
export function jobOf(file: JobFile, known?: { readonly file: JobFile; readonly job: Job }): JobRead {
  const reading: Reading = { units: file.units, problems: [] };
  // What stands along a stretch of the brake only depends on the part's length: such a brake is read anew.
  const sameBrake =
    known !== undefined && known.file.brake === file.brake && known.job.brake.stretches === undefined;
  const read = sameBrake ? known.job.brake : readBrake(reading, file.brake);
  const asked = readPart(reading, file.part);
  const brake = read && brakeForPart(read, asked?.lengthMm);
  const order = file.order && readOrder(reading, file.order, file.part.bends.length);
  const marginMm =
    file.margin === undefined ? DEFAULT_MARGIN_MM : lengthAt(reading, "margin", file.margin, "atLeast0");
  const finished = brake && asked && formPart(reading, asked, brake, file);
  const byHand = finished && file.finishByHand && readFinishByHand(reading, file.finishByHand, finished);
  const readable = reading.problems.length === 0 && byHand !== undefined;
  const part = finished && readable ? asTheLeafLeaves(finished, byHand) : finished;
  if (brake && part && order && file.order) checkBegun(reading, file.order, { part, brake, order });
  const layout = finished && readLayout(reading, file.part, finished);
  if (!brake || !asked || !part || reading.problems.length > 0)
    return { ok: false, problems: reading.problems };
  const askedInsideRadiiMm = asked.bends.map((bend) => bend.insideRadiusMm);
  const { units } = file;
  const hand = byHand && { finishByHand: byHand, ...(part !== finished && { finished: finished! }) };
  const odd = oddFigures(file, part.metal.name, part.thicknessMm);
  const job = {
    units,
    part,
    ...hand,
    brake,
    ...(order && { order }),
    marginMm,
    askedInsideRadiiMm,
    ...(odd.length > 0 && { odd }),
    ...layout,
  };
  return { ok: true, job, file };
}
