/**
 * One bend of the shop sheet in the cells of a table, for parts with many bends: figures without what the heading says,
 * and without what is the same for every step.
 */
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { nearestSixtyFourth } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthFigure } from "../words/lengthWords.ts";
import { oneNoseSetback } from "../words/setUpWords.ts";
import { angleWords, bendWords, faceWords, throatWords } from "../words/stepWords.ts";
import { flangeWords, sightMm, springsBack, stepOf, turnWords, watchWords } from "./stepSentences.ts";

export interface StepCells {
  /** The leaf's angle, set large over the words of its column; absent where the leaf does not get there. */
  readonly leaf?: string;
  /** Lines of each column: bend, throat, sight line, leaf, watch, measure. */
  readonly words: readonly (readonly string[])[];
}

/** Headings of the columns of words. */
export function stepHeadings({ units }: Job): readonly string[] {
  return ["bend", "in the throat", `sight line, ${units}`, "leaf to", "watch", `then measure, ${units}`];
}

/** Cells of step `stepIndex` (from 0). @throws RangeError when the order has no such step */
export function stepCells(job: Job, answer: Answer, stepIndex: number): StepCells {
  const step = stepOf(answer, stepIndex);
  const stops = step.reached < step.overbend;
  const relaxes = springsBack(step) ? [`relaxes to ${angleWords(step.relaxesTo)}`] : [];
  const wanted = angleWords(step.overbend);
  return {
    ...(!stops && { leaf: wanted }),
    words: [
      [bendWords(step), turnWords(job, step)],
      [`${throatWords(step, job.part.bends.length)}, ${faceWords(step)}`, ...loadLines(step)],
      seatLines(job, answer, step),
      stops ? [`wants ${wanted}`, `gets to ${angleWords(step.reached)}`, ...relaxes] : relaxes,
      [watchWords(job, answer, stepIndex)],
      step.verdict === "hits" ? [] : [measureLine(job, answer, stepIndex)],
    ],
  };
}

/** How the part gets in, where not from the front as usual. */
function loadLines(step: StepAnswer): readonly string[] {
  if (step.load === "front") return [];
  return [step.load === "end" ? "in from the end" : "no way in"];
}

/** Where to sight, and the nose where it is not the same for every step. */
function seatLines(job: Job, answer: Answer, step: StepAnswer): readonly string[] {
  const sight = sightMm(job, answer, step);
  return [
    ...(sight === undefined ? [] : figures(sight, job)),
    ...(oneNoseSetback(answer) ? [] : [`nose ${lengthFigure(step.setback, job.units)}`]),
  ];
}

function measureLine(job: Job, answer: Answer, stepIndex: number): string {
  const step = stepOf(answer, stepIndex);
  const { lengthMm, how, to } = flangeWords(job, answer, stepIndex);
  return `${angleWords(step.angle)}; ${figures(lengthMm, job).join(" ")} ${how}, bend ${step.bend} ${to}`;
}

/** @example figures(10, job) // ["0.394", "(25/64)"] */
function figures(lengthMm: Mm, { units }: Job): readonly string[] {
  const decimal = lengthFigure(lengthMm, units);
  return units === "in" ? [decimal, `(${nearestSixtyFourth(lengthMm).words})`] : [decimal];
}
