/**
 * One bend of the shop sheet in sentences: what lies in the throat, where to sight, how far to swing, what to watch and
 * what to measure after. Settings that are the same for every bend stand in the set-up and are left out here.
 */
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { stageAt } from "../jobFile/stageAt.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthWords } from "../words/lengthWords.ts";
import { oneNoseSetback } from "../words/setUpWords.ts";
import { angleWords, bendWords, faceWords, outcomeSentence, throatWords } from "../words/stepWords.ts";
import { placeWords } from "./blankDrawing.ts";
import { flangeAfter } from "./flangeCheck.ts";
import { sightLines } from "./sightLine.ts";
import { clearanceMember } from "./step.ts";

/** Angles nearer than this are the same on a protractor. */
const SAME_DEG = 0.05;

/** Step `stepIndex` (from 0) of the order. @throws RangeError when the order has no such step */
export function stepOf(answer: Answer, stepIndex: number): StepAnswer {
  const step = answer.order[stepIndex];
  if (step === undefined) throw new RangeError(`the order has no step ${stepIndex + 1}`);
  return step;
}

/** Heading of a step's row. @example "2. Bend 1, up 90°" */
export function rowTitle(job: Job, answer: Answer, stepIndex: number): string {
  const step = stepOf(answer, stepIndex);
  return `${stepIndex + 1}. ${bendWords(step)}, ${turnWords(job, step)}`;
}

/** @example "down 90°" */
export function turnWords(job: Job, step: StepAnswer): string {
  return `${job.part.bends[step.bend - 1]?.turn ?? "up"} ${angleWords(step.angle)}`;
}

/** What to do and to look at, a sentence a line. */
export function rowSentences(job: Job, answer: Answer, stepIndex: number): readonly string[] {
  const step = stepOf(answer, stepIndex);
  const sight = sightMm(job, answer, step);
  const seat = [
    `${capital(throatWords(step, job.part.bends.length))} in the throat, ${faceWords(step)}, ${loadWords(step)}.`,
    ...(oneNoseSetback(answer) ? [] : [`Nose ${lengthWords(step.setback, job.units)} back.`]),
    ...(sight === undefined
      ? []
      : [`Sight line under the nose: ${placeWords(sight, job.units)} from the edge.`]),
  ];
  const outcome = watchWords(job, answer, stepIndex);
  if (step.verdict === "hits") {
    const wanted = `Wants the leaf at ${angleWords(step.overbend)}`;
    const reached =
      step.reached < step.overbend ? [`${wanted}, gets to ${angleWords(step.reached)}${stays(step)}.`] : [];
    return [...seat, ...reached, outcome];
  }
  return [
    ...seat,
    `Swing the leaf to ${angleWords(step.reached)}${stays(step)}.`,
    `Watch: ${lowered(outcome)}`,
    `Then measure: ${measureWords(job, answer, stepIndex)}.`,
  ];
}

/** Where to sight, from the edge that all is measured from. */
export function sightMm(job: Job, answer: Answer, step: StepAnswer): Mm | undefined {
  return sightLines(job, answer)[step.bend - 1]?.atMm;
}

/** How it comes out, and how the part leaves where not to the front. */
export function watchWords(job: Job, answer: Answer, stepIndex: number): string {
  const step = stepOf(answer, stepIndex);
  const nearest = clearanceMember(job, answer, stepIndex);
  const outcome = outcomeSentence(step, job.units, job.brake.clamp.kind, nearest);
  return step.verdict !== "hits" && step.unload === "end" ? `${outcome} Slide it out at the end.` : outcome;
}

/** The run that the leaf turned up: its length, what kind of a length, and from where to where. */
export function flangeWords(job: Job, answer: Answer, stepIndex: number) {
  const step = stepOf(answer, stepIndex);
  const before = answer.order.slice(0, stepIndex).map((earlier) => earlier.bend);
  const flange = flangeAfter(stageAt(job, answer, stepIndex).part, step, before);
  return {
    lengthMm: flange.lengthMm,
    how: flange.square ? "outside" : "to the mold line",
    to: flange.toBend === undefined ? "to the free end" : `to bend ${flange.toBend}`,
  };
}

/** Angle and length to measure. @example "90°; 12.70 mm outside, bend 1 to the free end" */
export function measureWords(job: Job, answer: Answer, stepIndex: number): string {
  const step = stepOf(answer, stepIndex);
  const { lengthMm, how, to } = flangeWords(job, answer, stepIndex);
  return `${angleWords(step.angle)}; ${placeWords(lengthMm, job.units)} ${how}, bend ${step.bend} ${to}`;
}

function loadWords(step: StepAnswer): string {
  if (step.load === "front") return "in from the front";
  return step.load === "end" ? "slid in from the end" : "but there is no way in";
}

/** Whether the bend springs back by more than is seen. */
export function springsBack(step: StepAnswer): boolean {
  return Math.abs(step.relaxesTo - step.reached) >= SAME_DEG;
}

function stays(step: StepAnswer): string {
  return springsBack(step) ? `; relaxes to ${angleWords(step.relaxesTo)}` : "";
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function lowered(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
