/**
 * One bend judged by the engine held against what the reference wrote down of it: what differs, in a few words.
 * Bounds: the contact's angle to 0.05°, the clearance to 0.01 mm (the reference's own accuracy), points on what they name.
 */
import type { Step } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { pointFault } from "../torture/sameness.ts";
import type { RecordedBend } from "./recorded.ts";

const ANGLE_DEG = 0.05;
const CLEARANCE_MM = 0.01;
const SETBACK_MM = 1e-9;

/** Undefined where nothing differs. */
export function bendFault(job: Job, step: Step, truth: RecordedBend): string | undefined {
  if (step.verdict !== truth.verdict) return `verdict ${step.verdict}, not ${truth.verdict}`;
  if (step.load !== truth.load) return `goes in by ${step.load}, not ${truth.load}`;
  if (step.unload !== truth.unload) return `comes out by ${step.unload}, not ${truth.unload}`;
  if (!(Math.abs(step.seat.noseSetbackMm - truth.noseSetbackMm) < SETBACK_MM)) return "nose setback";
  if ((step.contact === undefined) !== (truth.contact === null)) return "contact or none";
  if (step.contact && truth.contact) {
    const off = Math.abs(toDeg(step.contact.leafAngleRad) - truth.contact.angleDeg);
    if (!(off < ANGLE_DEG)) return `contact ${off}° off`;
    if (!truth.contact.members.includes(step.contact.member)) return `met the ${step.contact.member}`;
  }
  if ((step.clearanceMm === undefined) !== (truth.clearanceMm === null)) return "clearance or none";
  const off = Math.abs((step.clearanceMm ?? 0) - (truth.clearanceMm ?? 0));
  if (!(off < CLEARANCE_MM)) return `clearance ${off} mm off`;
  return pointFault(job, step);
}
