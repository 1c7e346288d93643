/**
 * One bend of the shop sheet in words, as a heading with sentences and as the cells of a table for parts with many
 * bends. Settings that are the same for every bend stand in the set-up and are left out here.
 */

import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { angleWords } from "./angleWords.ts";
import { capital } from "./capital.ts";
import { flattenSentences } from "./hemWords.ts";
import { lengthFigure, lengthWords, placeFigures, placeWords } from "./lengthWords.ts";
import { oneNoseSetback } from "./setUpWords.ts";
import { bendWords, faceWords, lowered, outcomeSentence, throatWords } from "./stepWords.ts";

/** Angles nearer than this are the same on a protractor. */
const SAME_DEG = 0.05;

/** A step of the order with all that the shop sheet tells of it. */
export interface ToldStep {
  readonly index: number;
  readonly step: StepAnswer;
  /** @example "2. Bend 1, up 90°" */
  readonly title: string;
  /** What to do and to look at, a sentence a line. */
  readonly sentences: readonly string[];
  /** Lines of each column under `stepHeadings`: bend, throat, sight line, leaf, watch, measure. */
  readonly cells: readonly (readonly string[])[];
  /** The leaf's angle, to be set large over the words of its column; absent where the leaf does not get there. */
  readonly leaf?: string;
}

/** Headings of the columns of words. */
export function stepHeadings({ units }: Job): readonly string[] {
  return ["bend", "in the throat", `sight line, ${units}`, "leaf to", "watch", `then measure, ${units}`];
}

/** What is told of every step of the order. */
export function toldSteps(job: Job, answer: Answer): ToldStep[] {
  const oneNose = oneNoseSetback(answer);
  return answer.order.map((step, index) => tellStep(job, step, index, oneNose));
}

function tellStep(job: Job, step: StepAnswer, index: number, oneNose: boolean): ToldStep {
  const { units } = job;
  if (step.stroke === "flatten") return tellFlattening(job, step, index);
  const [flats, face] = [throatWords(step, job.part.bends.length), faceWords(step)];
  const turn = `${job.part.bends[step.bend - 1]?.turn ?? "up"} ${angleWords(step.angle)}`;
  const stops = step.reached < step.overbend;
  const wants = angleWords(step.overbend);
  const gets = `gets to ${angleWords(step.reached)}`;
  const relaxes = springsBack(step) ? [`relaxes to ${angleWords(step.relaxesTo)}`] : [];
  const watch = watchWords(job, step);
  const to = `${measured(step).how}, bend ${step.bend} ${measured(step).to}`;
  const measure = (length: string) => `${angleWords(step.angle)}; ${length} ${to}`;
  const hits = step.verdict === "hits";
  return {
    index,
    step,
    title: `${index + 1}. ${bendWords(step)}, ${turn}`,
    sentences: [
      `${capital(flats)} in the throat, ${face}, ${LOADS[step.load]}.`,
      ...(oneNose ? [] : [`Nose ${lengthWords(step.setback, units)} back.`]),
      `Sight line under the nose${step.markedFaceUp ? "" : ", drawn on the back"}: ${placeWords(step.sightLine, units)} from the edge of flat 1.`,
      ...(stops ? [`${[`Wants the leaf at ${wants}, ${gets}`, ...relaxes].join("; ")}.`] : []),
      ...(hits
        ? [watch]
        : [
            `${[`Swing the leaf to ${wants}`, ...relaxes].join("; ")}.`,
            `Watch: ${lowered(watch)}`,
            `Then measure: ${measure(placeWords(step.flange.length, units))}.`,
          ]),
    ],
    ...(!stops && { leaf: wants }),
    cells: [
      [bendWords(step), turn],
      [`${flats}, ${face}`, ...(step.load === "front" ? [] : [LOADS_SHORT[step.load]])],
      [
        ...placeFigures(step.sightLine, units),
        ...(step.markedFaceUp ? [] : ["on the back"]),
        ...(oneNose ? [] : [`nose ${lengthFigure(step.setback, units)}`]),
      ],
      stops ? [`wants ${wants}`, gets, ...relaxes] : relaxes,
      [watch],
      hits ? [] : [measure(placeFigures(step.flange.length, units).join(" "))],
    ],
  };
}

/** A hem pressed flat under the clamp. */
function tellFlattening(job: Job, step: StepAnswer, index: number): ToldStep {
  const watch = watchWords(job, step);
  const bend = job.part.bends[step.bend - 1];
  const to = `${lengthWords(step.flange.length, job.units)} from the fold to the edge`;
  const hits = step.verdict === "hits";
  const sentences = bend === undefined ? [] : flattenSentences(bend, step, job.units);
  return {
    index,
    step,
    title: `${index + 1}. ${bendWords(step)}`,
    sentences: hits ? [watch] : [...sentences, `Watch: ${lowered(watch)}`, `Then measure: ${to}.`],
    cells: [
      [bendWords(step)],
      [`the hem under the clamp, ${faceWords(step)}`],
      [],
      ["clamp down"],
      [watch],
      hits ? [] : [to],
    ],
  };
}

const LOADS = {
  front: "in from the front",
  end: "slid in from the end",
  blocked: "but there is no way in",
} as const;
const LOADS_SHORT = { end: "in from the end", blocked: "no way in" } as const;

/** How it comes out, and how the part leaves where not to the front. */
function watchWords(job: Job, step: StepAnswer): string {
  const outcome = outcomeSentence(step, job.units, job.brake.clamp.kind);
  return step.verdict !== "hits" && step.unload === "end" ? `${outcome} Slide it out at the end.` : outcome;
}

/** What kind of a length the leaf turned up, and to where it runs. */
function measured({ flange }: StepAnswer) {
  return {
    how: flange.square ? "outside" : "to the mold line",
    to: flange.to === null ? "to the free end" : `to bend ${flange.to}`,
  };
}

/** Whether the bend springs back by more than is seen. */
function springsBack(step: StepAnswer): boolean {
  return Math.abs(step.relaxesTo - step.reached) >= SAME_DEG;
}
