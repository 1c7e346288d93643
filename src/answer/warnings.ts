/**
 * What a good foreman would look at before the sheet is cut: radii, reach of the leaf, grip, nose and setback.
 * words/warningWords.ts has the sentences; limits are common practice where no source is named.
 */
import { brakeRemarks } from "../brake/brakeRemarks.ts";
import { automaticNoseSetback } from "../brake/noseSetback.ts";
import type { Step } from "../contact/step.ts";
import type { Job } from "../jobFile/job.ts";
import { flangeOf, gripOf, type Hold } from "../motion/holds.ts";
import { sharpBends } from "../part/sharpBends.ts";
import { type Mm, toDeg } from "../units/quantity.ts";
import { brakeRemarkWords } from "../words/brakeRemarkWords.ts";
import {
  bendRemarks,
  formedRadiusWords,
  scantFlangeWords,
  scantGripWords,
  sharpBendWords,
  shortSetbackWords,
  shortSwingWords,
  steepFrontWords,
} from "../words/warningWords.ts";

/** Radii that differ by less are the same to any shop. */
const SAME_RADIUS_MM: Mm = 0.05;

/** A remark on one bend, counted from 0. */
interface BendRemark {
  readonly bend: number;
  readonly words: string;
}

export function warningsFor(job: Job, steps: readonly Step[]): string[] {
  const onBends = [
    ...sharpBends(job.part)
      // Half a turn about nothing is a hem's own affair: only metals that want a whole thickness and more crack at it.
      .filter(({ bend, leastMm }) => !job.part.bends[bend]!.hem || leastMm >= job.part.thicknessMm)
      .map((sharp) => ({
        bend: sharp.bend,
        words: sharpBendWords(sharp, job.part.metal.name, job.units),
      })),
    ...formedRadius(job),
    ...shortSetback(job),
    ...steps.flatMap((step) => stepRemarks(job, step).map((words) => ({ bend: step.seat.bend, words }))),
  ];
  const onBrake = brakeRemarks(job.brake, job.part.thicknessMm);
  return [...bendRemarks(onBends), ...onBrake.map((remark) => brakeRemarkWords(remark, job.units))];
}

/** A nose setback that is given, or kept for all bends, forms its own radius in each. */
function formedRadius({ part, brake, askedInsideRadiiMm, units }: Job): BendRemark[] {
  if (brake.noseSetback === "auto") return [];
  return part.bends.flatMap((made, bend) => {
    const asked = askedInsideRadiiMm[bend]!;
    if (made.hem || made.pinched || Math.abs(made.insideRadiusMm - asked) < SAME_RADIUS_MM) return [];
    return [{ bend, words: formedRadiusWords(made, asked, units) }];
  });
}

/** A given setback under the least for a bend: taken as the least, or refused where no brake springs so far. */
function shortSetback({ part, brake, units }: Job): BendRemark[] {
  const { noseSetback, clamp, leaf } = brake;
  if (typeof noseSetback === "string") return [];
  const { thicknessMm } = part;
  return part.bends.flatMap((made, bend) => {
    if (made.hem || (made.noseSetbackMm === noseSetback && !made.pinched)) return [];
    const { noseRunMm } = clamp;
    const leastMm = automaticNoseSetback({ ...made, thicknessMm, noseRunMm, pivot: leaf.pivot });
    return [{ bend, words: shortSetbackWords(noseSetback, leastMm, made.pinched === true, units) }];
  });
}

function stepRemarks({ brake, units }: Job, step: Step): string[] {
  const { seat } = step;
  const warnings: string[] = [];
  const overbendDeg = toDeg(seat.overbendRad);
  if (step.refused) return [];
  if (step.swingShort) warnings.push(shortSwingWords(brake.leaf.swingDeg, overbendDeg));
  const { noseAngleDeg } = brake.clamp;
  // A short flange may clear a square front all the same; the check has proved it then.
  if (
    step.verdict === "hits" &&
    noseAngleDeg !== undefined &&
    overbendDeg > Math.max(90, 180 - noseAngleDeg)
  ) {
    warnings.push(steepFrontWords(noseAngleDeg, overbendDeg));
  }
  // Under the clamp a hem is neither gripped nor pushed.
  if (step.flattens) return warnings;
  const grip = gripOf(seat, brake, step.bendsDone);
  if (isScant(grip)) warnings.push(scantGripWords(grip.runMm, grip.leastMm, units));
  const flange = flangeOf(seat, brake, step.bendsDone);
  if (isScant(flange)) warnings.push(scantFlangeWords(flange.runMm, flange.leastMm, units));
  return warnings;
}

/** Less than twice what is wanted at least: it works with care. */
function isScant({ runMm, leastMm }: Hold): boolean {
  return runMm < 2 * leastMm;
}
