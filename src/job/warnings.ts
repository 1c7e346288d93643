/**
 * What a good foreman would say before the sheet is cut: radii, reach of the leaf, force, nose and setback.
 * One sentence each, lengths in the job's unit, the source or 'common practice' at its end.
 */
import { brakeWarnings } from "../brake/brakeWarnings.ts";
import { automaticNoseSetback } from "../brake/noseSetback.ts";
import type { Step } from "../contact/step.ts";
import { sharpBends, sharpBendWords } from "../part/sharpBends.ts";
import { formatLength } from "../units/length.ts";
import { type Mm, toDeg } from "../units/quantity.ts";
import { forceWarnings } from "./forceWarnings.ts";
import type { Job } from "./job.ts";

/** Radii that differ by less are the same to any shop. */
const SAME_RADIUS_MM: Mm = 0.05;

export function warningsFor(job: Job, steps: readonly Step[]): string[] {
  const say = (mm: Mm) => `${formatLength(mm, job.units)} ${job.units}`;
  return [
    ...sharpBends(job.part).map(
      (sharp) => `Bend ${sharp.bend + 1}: ${sharpBendWords(sharp, job.part.metal.name, job.units)}`,
    ),
    ...formedRadius(job, say),
    ...steps.flatMap((step) => stepWarnings(job, step, say)),
    ...forceWarnings(job, say),
    ...brakeWarnings(job.brake, job.part.thicknessMm, say),
  ];
}

/** A given nose setback forms its own radius in every bend. */
function formedRadius({ part, brake, askedInsideRadiiMm }: Job, say: (mm: Mm) => string): string[] {
  if (brake.noseSetback === "auto") return [];
  const setBack = say(brake.noseSetback);
  return part.bends.flatMap(({ insideRadiusMm }, i) => {
    const asked = askedInsideRadiiMm[i]!;
    if (Math.abs(insideRadiusMm - asked) < SAME_RADIUS_MM) return [];
    return [
      `Bend ${i + 1}: the nose set back by ${setBack} forms an inside radius of ${say(insideRadiusMm)}, not the ${say(asked)} asked for; flats and blank are laid out for what is formed.`,
    ];
  });
}

function stepWarnings({ part, brake }: Job, step: Step, say: (mm: Mm) => string): string[] {
  const { seat } = step;
  const warnings: string[] = [];
  const named = `Bend ${seat.bend + 1}`;
  const overbendDeg = toDeg(seat.overbendRad);
  if (step.swingShort) {
    warnings.push(
      `${named}: the leaf swings to ${degrees(brake.leaf.swingDeg)} only, and the bend needs ${degrees(overbendDeg)}.`,
    );
  }
  const { noseAngleDeg, noseRadiusMm } = brake.clamp;
  if (noseAngleDeg !== undefined && overbendDeg > 180 - noseAngleDeg + 1e-9 && overbendDeg > 90) {
    warnings.push(
      `${named}: the front of the clamp stands at ${degrees(noseAngleDeg)}, so a flange taller than the clamp can't be swung past about ${degrees(180 - noseAngleDeg)}, and this bend needs ${degrees(overbendDeg)}; bevel the front (common practice, no source).`,
    );
  }
  const needed = automaticNoseSetback({
    insideRadiusMm: seat.insideRadiusMm,
    thicknessMm: seat.thicknessMm,
    overbendDeg,
    noseRadiusMm,
    pivot: seat.pivot,
  });
  if (seat.noseSetbackMm < needed - 0.005) {
    warnings.push(
      `${named}: with the nose set back by ${say(seat.noseSetbackMm)} the sheet is pinched before ${degrees(overbendDeg)}; set it back by ${say(needed)}.`,
    );
  }
  const catches = seat.movingTangentX - seat.pivot.x + runLength(step);
  const wanted = seat.insideRadiusMm + 3 * part.thicknessMm;
  if (catches < wanted) {
    warnings.push(
      `${named}: only ${say(Math.max(0, catches))} of sheet lies on the leaf; under ${say(wanted)} the leaf hardly catches it (inside radius and three thicknesses, common practice, no source).`,
    );
  }
  return warnings;
}

/** Sheet that lies on the leaf beyond the bend's tangent line: flats up to the first formed bend. */
function runLength({ seat, bendsDone }: Step): Mm {
  const { flatMm, allowanceMm, bendNumber, joints } = seat.movingChain;
  let length = flatMm[0]!;
  for (let j = 0; j < joints && !((bendsDone >>> bendNumber[j]!) & 1); j++)
    length += allowanceMm[j]! + flatMm[j + 1]!;
  return length;
}

function degrees(deg: number): string {
  return `${Number(deg.toFixed(1))}°`;
}
