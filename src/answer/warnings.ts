/**
 * What a good foreman would say before the sheet is cut: radii, reach of the leaf, force, nose and setback.
 * One sentence each, lengths in the job's unit, the source or 'common practice' at its end.
 */
import { brakeWarnings } from "../brake/brakeWarnings.ts";
import { automaticNoseSetback } from "../brake/noseSetback.ts";
import type { Step } from "../contact/step.ts";
import type { Job } from "../jobFile/job.ts";
import { flangeOf, gripOf, type Hold } from "../motion/holds.ts";
import { sharpBends, sharpBendWords } from "../part/sharpBends.ts";
import { formatLength } from "../units/length.ts";
import { type Mm, toDeg } from "../units/quantity.ts";

/** Radii that differ by less are the same to any shop. */
const SAME_RADIUS_MM: Mm = 0.05;

/** A remark on one bend, counted from 0. */
interface BendRemark {
  readonly bend: number;
  readonly words: string;
}

export function warningsFor(job: Job, steps: readonly Step[]): string[] {
  const say = (mm: Mm) => `${formatLength(mm, job.units)} ${job.units}`;
  const onBends = [
    ...sharpBends(job.part)
      // Half a turn about nothing is a hem's own affair: only metals that want a whole thickness and more crack at it.
      .filter(({ bend, leastMm }) => !job.part.bends[bend]!.hem || leastMm >= job.part.thicknessMm)
      .map((sharp) => ({
        bend: sharp.bend,
        words: sharpBendWords(sharp, job.part.metal.name, job.units),
      })),
    ...formedRadius(job, say),
    ...shortSetback(job, say),
    ...steps.flatMap((step) => stepRemarks(job, step, say).map((words) => ({ bend: step.seat.bend, words }))),
  ];
  return [...together(onBends), ...brakeWarnings(job.brake, job.part.thicknessMm, say)];
}

/** The same words for several bends are said once. */
function together(remarks: readonly BendRemark[]): string[] {
  const bendsOf = new Map<string, Set<number>>();
  for (const { bend, words } of remarks) bendsOf.set(words, (bendsOf.get(words) ?? new Set()).add(bend + 1));
  return [...bendsOf].map(([words, bends]) => `${bendNames([...bends].sort((a, b) => a - b))}: ${words}`);
}

/** @example bendNames([1, 2, 3, 5]) // "Bends 1 to 3 and 5" */
export function bendNames(bends: readonly number[]): string {
  const runs: [first: number, last: number][] = [];
  for (const bend of bends) {
    const run = runs.at(-1);
    if (run?.[1] === bend - 1) run[1] = bend;
    else runs.push([bend, bend]);
  }
  const named = runs.flatMap(([first, last]) => {
    if (last - first < 2) return first === last ? [`${first}`] : [`${first}`, `${last}`];
    return [`${first} to ${last}`];
  });
  const last = named.pop();
  if (bends.length === 1) return `Bend ${last}`;
  return named.length === 0 ? `Bends ${last}` : `Bends ${named.join(", ")} and ${last}`;
}

/** A nose setback that is given, or kept for all bends, forms its own radius in each. */
function formedRadius({ part, brake, askedInsideRadiiMm }: Job, say: (mm: Mm) => string): BendRemark[] {
  if (brake.noseSetback === "auto") return [];
  return part.bends.flatMap(({ insideRadiusMm, noseSetbackMm, pinched, hem }, i) => {
    const asked = askedInsideRadiiMm[i]!;
    if (hem || pinched || Math.abs(insideRadiusMm - asked) < SAME_RADIUS_MM) return [];
    const words = `the nose set back by ${say(noseSetbackMm)} forms an inside radius of ${say(insideRadiusMm)}, not the ${say(asked)} asked for; flats and blank are laid out for what is formed.`;
    return [{ bend: i, words }];
  });
}

/** A given setback under the least for a bend: taken as the least, or refused where no brake springs so far. */
function shortSetback({ part, brake }: Job, say: (mm: Mm) => string): BendRemark[] {
  const { noseSetback, clamp, leaf } = brake;
  if (typeof noseSetback === "string") return [];
  const { thicknessMm } = part;
  return part.bends.flatMap((made, bend) => {
    if (made.hem || (made.noseSetbackMm === noseSetback && !made.pinched)) return [];
    const { noseRunMm } = clamp;
    const leastMm = automaticNoseSetback({ ...made, thicknessMm, noseRunMm, pivot: leaf.pivot });
    const set = `the nose set back by ${say(noseSetback)} pinches the sheet`;
    const least = say(leastMm);
    return made.pinched
      ? [{ bend, words: `${set}. Set it back by ${least} or more.` }]
      : [
          {
            bend,
            words: `${set} a little: the least is ${least}. Brakes spring that much, so the answer takes ${least}.`,
          },
        ];
  });
}

function stepRemarks({ brake }: Job, step: Step, say: (mm: Mm) => string): string[] {
  const { seat } = step;
  const warnings: string[] = [];
  const overbendDeg = toDeg(seat.overbendRad);
  if (step.refused) return [];
  if (step.swingShort) {
    warnings.push(
      `the leaf swings to ${degrees(brake.leaf.swingDeg)} only, and the bend needs ${degrees(overbendDeg)}.`,
    );
  }
  const { noseAngleDeg } = brake.clamp;
  // A short flange may clear a square front all the same; the check has proved it then.
  if (
    step.verdict === "hits" &&
    noseAngleDeg !== undefined &&
    overbendDeg > Math.max(90, 180 - noseAngleDeg)
  ) {
    warnings.push(
      `the front of the clamp stands at ${degrees(noseAngleDeg)}, so a flange taller than the clamp can't be swung past about ${degrees(180 - noseAngleDeg)}, and this bend needs ${degrees(overbendDeg)}; bevel the front (common practice, no source).`,
    );
  }
  // Under the clamp a hem is neither gripped nor pushed.
  if (step.flattens) return warnings;
  const grip = gripOf(seat, brake, step.bendsDone);
  if (isScant(grip)) {
    warnings.push(
      `the clamp grips only ${say(grip.runMm)} of flat sheet; under ${say(2 * grip.leastMm)} it may slip (common practice, no source).`,
    );
  }
  const flange = flangeOf(seat, brake, step.bendsDone);
  if (isScant(flange)) {
    warnings.push(
      `only ${say(flange.runMm)} of flat sheet lies on the leaf; under ${say(2 * flange.leastMm)} the leaf hardly catches it (common practice, no source).`,
    );
  }
  return warnings;
}

/** Less than twice what is wanted at least: it works with care. */
function isScant({ runMm, leastMm }: Hold): boolean {
  return runMm < 2 * leastMm;
}

function degrees(deg: number): string {
  return `${Number(deg.toFixed(1))}°`;
}
