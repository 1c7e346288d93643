/**
 * How to set the brake for a part, in the foreman's words: nose setback, shims over the nose, leaf stop.
 * Settings that are the same for every bend are said once; others stand in the rows of the steps.
 */
import { noseShims } from "../brake/noseShims.ts";
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { Mm } from "../units/quantity.ts";
import { grainWords } from "./grainWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { angleWords } from "./stepWords.ts";

/** Settings nearer than this are the same to a hand on the brake. */
const SAME_MM: Mm = 0.01;
const SAME_DEG = 0.05;

/** Whether all steps set the nose alike, so that the rows need not say it. */
export function oneNoseSetback(answer: Answer): boolean {
  return alike(answer.order, (step) => step.setback, SAME_MM);
}

/** Sentences of the set-up, in the order in which it is done. */
export function setUpSentences(job: Job, answer: Answer): readonly string[] {
  const first = answer.order[0];
  if (first === undefined) return [];
  const nose = oneNoseSetback(answer)
    ? `Nose ${lengthWords(first.setback, job.units)} back from the bed's front edge${shop(job, first)}.`
    : "Set the nose anew for each bend, as its row says.";
  const stop = alike(answer.order, (step) => step.overbend, SAME_DEG)
    ? `Leaf stop at ${angleWords(first.overbend)}.`
    : "Leaf stop anew for each bend, as its row says.";
  return [...shimSentences(job), nose, stop, ...layoutSentences(job, answer)];
}

/** How the sheet lies and what is drilled before it is cut, where the job says so. */
function layoutSentences({ grainDeg }: Job, { blank }: Answer): readonly string[] {
  const holes = blank.reliefHoles ?? [];
  return [
    ...(grainDeg === undefined ? [] : [grainWords(grainDeg)]),
    ...(holes.length === 0
      ? []
      : ["Drill the relief holes first, then cut out, smooth the edges, and bend."]),
  ];
}

/** What the setback comes to beside the sheet's thickness, where that is the rule of the shop. */
function shop(job: Job, step: StepAnswer): string {
  const one = Math.abs(step.setback - job.part.thicknessMm) <= SAME_MM;
  return one ? ", one thickness of the sheet" : "";
}

function shimSentences({ part, brake, units }: Job): readonly string[] {
  const { noseRadiusMm, shimMm } = brake.clamp;
  if (shimMm !== undefined) {
    const [shim, over] = [lengthWords(shimMm, units), lengthWords(noseRadiusMm, units)];
    return [
      `Fold ${shim} of sheet over the nose; it brings the nose radius to ${over}. Setback counts from the sheet.`,
    ];
  }
  // A nose setback that was measured forms its radius over the nose as it is.
  if (brake.noseSetback !== "auto") return [];
  const radii = [...new Set(part.bends.map((bend) => bend.insideRadiusMm))];
  return radii.flatMap((insideRadiusMm) => {
    const shims = noseShims({ noseRadiusMm, insideRadiusMm }, units);
    if (shims === undefined) return [];
    const layers = shims.layers === 1 ? "one layer" : `${shims.layers} layers`;
    const bring = shims.layers === 1 ? "brings" : "bring";
    const [each, reached, asked, bare, shim] = [
      shims.eachMm,
      shims.reachedMm,
      insideRadiusMm,
      noseRadiusMm,
      shims.reachedMm - noseRadiusMm,
    ].map((mm) => lengthWords(mm, units));
    return [
      `You may fold sheet over the nose: ${layers} of ${each} ${bring} its radius from ${bare} to ${reached}, for the part's ${asked}. Give ${shim} as the clamp's "shim" and check again first: shims take room, and setback and sight lines change.`,
    ];
  });
}

function alike(steps: readonly StepAnswer[], of: (step: StepAnswer) => number, within: number): boolean {
  const figures = steps.map(of);
  return Math.max(...figures) - Math.min(...figures) <= within;
}
