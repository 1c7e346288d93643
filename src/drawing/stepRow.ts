/**
 * One bend as a row of the shop sheet: picture before and after, what to do, what to watch, what to measure, and a
 * place to tick and to write the measured figures in.
 */
import type { Answer, StepAnswer } from "../job/answer.ts";
import type { Job } from "../job/job.ts";
import { stageAt } from "../job/stageAt.ts";
import type { Mm } from "../units/quantity.ts";
import { placeWords } from "./blankDrawing.ts";
import type { Block } from "./block.ts";
import { flangeAfter } from "./flangeCheck.ts";
import { lengthWords } from "./lengthWords.ts";
import type { Drawing, Mark } from "./model.ts";
import { placeInBox } from "./page.ts";
import { paragraph, stack } from "./paragraph.ts";
import { oneNoseSetback } from "./setUpWords.ts";
import { sightLines } from "./sightLine.ts";
import { clearanceMember } from "./step.ts";
import { drawStepPair } from "./stepPair.ts";
import { angleWords, bendWords, faceWords, outcomeSentence, throatWords } from "./stepWords.ts";

const PICTURE_WIDE_MM: Mm = 41;
const PICTURE_HIGH_MM: Mm = 30;
const BETWEEN_MM: Mm = 2;
const RECORD_WIDE_MM: Mm = 32;
const WORDS_MM: Mm = 3.1;
const CAPTION_MM: Mm = 4;
const MOST_ENLARGED = 2;

/** The row of step `stepIndex` (from 0) on a page with `widthMm` between the margins. */
export function stepRow(job: Job, answer: Answer, stepIndex: number, widthMm: Mm): Block {
  const pair = drawStepPair(job, answer, stepIndex);
  const wordsLeft = 2 * (PICTURE_WIDE_MM + BETWEEN_MM) + 1;
  const wordsWide = widthMm - wordsLeft - RECORD_WIDE_MM - BETWEEN_MM;
  const step = answer.order[stepIndex] as StepAnswer;
  const words = stack([
    paragraph(rowTitle(job, step, stepIndex), 4.2, wordsWide),
    ...rowSentences(job, answer, stepIndex).map((words) => paragraph(words, WORDS_MM, wordsWide)),
  ]);
  const heightMm = Math.max(PICTURE_HIGH_MM + CAPTION_MM, words.heightMm) + 2;
  return {
    heightMm,
    put: (leftMm, topMm) => {
      const bottom = topMm - 2 - PICTURE_HIGH_MM;
      const boxes = [0, 1].map((i) => boxAt(leftMm + i * (PICTURE_WIDE_MM + BETWEEN_MM), bottom));
      const pictures = [pair.before, pair.after];
      const recordLeft = leftMm + widthMm - RECORD_WIDE_MM;
      const marks: Mark[] = [
        { kind: "line", layer: "cut", from: { x: leftMm, y: topMm }, to: { x: leftMm + widthMm, y: topMm } },
        ...words.put(leftMm + wordsLeft, topMm - 2).marks,
        ...boxes.flatMap((box, i) =>
          caption(box, i === 0 ? "before" : `leaf at ${angleWords(step.reached)}`),
        ),
        ...record(job, answer, stepIndex, recordLeft, topMm - 2),
      ];
      return {
        marks,
        placed: boxes.map((box, i) => placeInBox(pictures[i] as Drawing, box, MOST_ENLARGED)),
      };
    },
  };
}

function boxAt(left: Mm, bottom: Mm): Drawing["window"] {
  return { min: { x: left, y: bottom }, max: { x: left + PICTURE_WIDE_MM, y: bottom + PICTURE_HIGH_MM } };
}

function caption(box: Drawing["window"], words: string): readonly Mark[] {
  const at = { x: (box.min.x + box.max.x) / 2, y: box.min.y - 3.2 };
  return [{ kind: "text", layer: "note", at, words, heightMm: 2.8, anchor: "middle" }];
}

function rowTitle(job: Job, step: StepAnswer, stepIndex: number): string {
  const turn = job.part.bends[step.bend - 1]?.turn ?? "up";
  return `${stepIndex + 1}. ${bendWords(step)}, ${turn} ${angleWords(step.angle)}`;
}

function rowSentences(job: Job, answer: Answer, stepIndex: number): readonly string[] {
  const step = answer.order[stepIndex] as StepAnswer;
  const { units, part } = job;
  const throat = throatWords(step, part.bends.length);
  const sight = sightLines(job, answer)[step.bend - 1]?.atMm;
  const stays =
    Math.abs(step.relaxesTo - step.reached) < 0.05 ? "" : `; relaxes to ${angleWords(step.relaxesTo)}`;
  const nose = oneNoseSetback(answer) ? [] : [`Nose ${lengthWords(step.setback, units)} back.`];
  const seat = [
    `${capital(throat)} in the throat, ${faceWords(step)}, ${loadWords(step)}.`,
    ...nose,
    ...(sight === undefined ? [] : [`Sight line under the nose: ${placeWords(sight, units)} from the edge.`]),
  ];
  const outcome = outcomeSentence(step, units, job.brake.clamp.kind, clearanceMember(job, answer, stepIndex));
  if (step.verdict === "hits") {
    const wanted = `Wants the leaf at ${angleWords(step.overbend)}`;
    const reached =
      step.reached < step.overbend ? [`${wanted}, gets to ${angleWords(step.reached)}${stays}.`] : [];
    return [...seat, ...reached, outcome];
  }
  return [
    ...seat,
    `Swing the leaf to ${angleWords(step.reached)}${stays}.`,
    `Watch: ${lowered(outcome)}${unloadWords(step)}`,
    `Then measure: ${measureWords(job, answer, stepIndex)}.`,
  ];
}

function loadWords(step: StepAnswer): string {
  if (step.load === "front") return "in from the front";
  return step.load === "end" ? "slid in from the end" : "but there is no way in";
}

function unloadWords(step: StepAnswer): string {
  return step.unload === "end" ? " Slide it out at the end." : "";
}

function measureWords(job: Job, answer: Answer, stepIndex: number): string {
  const step = answer.order[stepIndex] as StepAnswer;
  const before = answer.order.slice(0, stepIndex).map((earlier) => earlier.bend);
  const flange = flangeAfter(stageAt(job, answer, stepIndex).part, step, before);
  const to = flange.toBend === undefined ? "to the free end" : `to bend ${flange.toBend}`;
  const how = flange.square ? "outside" : "to the mold line";
  return `${angleWords(step.angle)}; ${placeWords(flange.lengthMm, job.units)} ${how}, bend ${step.bend} ${to}`;
}

/** Tick box, and lines for the angle and the length that were measured. */
function record(job: Job, answer: Answer, stepIndex: number, left: Mm, top: Mm): readonly Mark[] {
  const side = 6;
  const corners = [
    { x: left, y: top - side },
    { x: left + side, y: top - side },
    { x: left + side, y: top },
    { x: left, y: top },
  ];
  const lines = [
    ["angle", "°"],
    ["length", job.units],
  ] as const;
  const bend = answer.order[stepIndex]?.bend ?? 0;
  return [
    ...corners.map(
      (from, i): Mark => ({ kind: "line", layer: "cut", from, to: corners[(i + 1) % 4] ?? from }),
    ),
    text(left + side + 2, top - side + 1.5, `bend ${bend} done`),
    text(left, top - 13, "measured:"),
    ...lines.flatMap(([what, unit], i): Mark[] => {
      const y = top - 21 - i * 9;
      const right = left + RECORD_WIDE_MM - 7;
      return [
        text(left, y, what),
        {
          kind: "line",
          layer: "dimension",
          from: { x: left + 11, y: y - 0.5 },
          to: { x: right, y: y - 0.5 },
        },
        text(right + 1, y, unit),
      ];
    }),
  ];
}

function text(x: Mm, y: Mm, words: string): Mark {
  return { kind: "text", layer: "note", at: { x, y }, words, heightMm: WORDS_MM, anchor: "start" };
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function lowered(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
