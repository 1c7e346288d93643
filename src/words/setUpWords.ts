/**
 * How to set the brake for a part, in the foreman's words: nose setback, shims over the nose, leaf stop.
 * Settings that are the same for every bend are said once.
 */

import { noseShims } from "../brake/noseShims.ts";
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { grainWords } from "./grainWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { leafRangeSentences } from "./rangeWords.ts";

/** Settings of the nose nearer than this are left as they are. */
const SAME_MM: Mm = 0.1;
/** Nearer than this to nothing, or to the sheet's thickness, it is called so. */
const CALLED_MM: Mm = 0.01;
const SAME_DEG = 0.05;

/** Whether all steps set the nose alike, so that the rows need not say it. */
export function oneNoseSetback(answer: Answer): boolean {
  return alike(answer.order, (step) => step.setback, SAME_MM);
}

/** Sentences of the set-up, in the order in which it is done. */
export function setUpSentences(job: Job, answer: Answer): readonly string[] {
  // A hem is pressed flat with the leaf at rest, wherever the nose stands.
  const bent = answer.order.filter(({ stroke }) => stroke !== "flatten");
  const first = bent[0];
  if (first === undefined) return [];
  const stop = alike(bent, (step) => step.overbend, SAME_DEG)
    ? `Leaf stop at ${angleWords(first.overbend)}.`
    : "Leaf stop anew for each bend, as its row says.";
  return [
    ...shimSentences(job),
    noseSentence(job, bent),
    stop,
    ...leafRangeSentences(answer.order),
    ...layoutSentences(job, answer),
    PROVE,
  ];
}

/** A brake that bends more at one place than at another is seen on a strip, not on the part. Common practice, no source. */
const PROVE =
  "Prove the brake first: fold a strip as long as the part and read its angle at both ends and in the middle. If they differ by more than 1°, set the nose forward at the end that is bent less, with that end's setback screw. If the middle is bent less, give the brake more crown.";

/** How far the nose stands back, for each bend where it differs, and how often it is moved. */
function noseSentence(job: Job, order: readonly StepAnswer[]): string {
  const settings: { readonly bends: number[]; readonly setback: Mm }[] = [];
  for (const { bend, setback } of order) {
    const last = settings.at(-1);
    if (last && Math.abs(last.setback - setback) <= SAME_MM) last.bends.push(bend);
    else settings.push({ bends: [bend], setback });
  }
  const [only, ...more] = settings;
  if (only && more.length === 0) return `Nose ${backWords(only.setback, job)}.`;
  const each = settings.map(({ bends, setback }) => {
    return `${bends.length === 1 ? "bend" : "bends"} ${[...new Set(bends)].join(", ")} ${backWords(setback, job)}`;
  });
  const times = more.length === 1 ? "once" : `${more.length} times`;
  return `Nose, in the order of the bends: ${each.join("; ")}. You set it anew ${times}.`;
}

/** A nose that stands over the leaf counts as less than nothing. */
function backWords(setbackMm: Mm, { part, units }: Job): string {
  if (Math.abs(setbackMm) < CALLED_MM) return "flush with the bed's front edge";
  const way = setbackMm < 0 ? "out over the leaf" : "back from the bed's front edge";
  // The shop's rule for a radius like the nose's.
  const rule = Math.abs(setbackMm - part.thicknessMm) <= CALLED_MM ? ", one thickness of the sheet" : "";
  return `${lengthWords(Math.abs(setbackMm), units)} ${way}${rule}`;
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
  const radii = [
    ...new Set(part.bends.map(({ hem, insideRadiusMm }) => hem?.foldRadiusMm ?? insideRadiusMm)),
  ];
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
