/**
 * One bend as a row of the shop sheet: picture before and after, what to do, what to watch, what to measure, and a
 * place to tick and to write the measured figures in.
 */

import type { Block } from "../drawing/block.ts";
import type { Drawing, Mark } from "../drawing/model.ts";
import { placeInBox } from "../drawing/page.ts";
import { paragraph, stack } from "../drawing/paragraph.ts";
import { HEADING_MM } from "../drawing/printWords.ts";
import { MOST_REDUCED, type PictureSize, type StepSpace } from "../drawing/sheetStyle.ts";
import { tickBox } from "../drawing/tickBox.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import type { ToldStep } from "../words/toldStep.ts";
import { drawStepPair } from "./stepPair.ts";

const BETWEEN_MM: Mm = 2;
const RECORD_WIDE_MM: Mm = 32;
/** Tick box, two lines to write on. */
const RECORD_HIGH_MM: Mm = 23.5;
const CAPTION_MM: Mm = 2.8;
const UNDER_PICTURE_MM: Mm = 4;
const TICK_MM: Mm = 6;
const MOST_ENLARGED = 2;

/** The row of a step. */
export function stepRow(
  job: Job,
  answer: Answer,
  told: ToldStep,
  { widthMm, picture, wordsMm }: StepSpace,
): Block {
  const wordsLeft = 2 * (picture.wideMm + BETWEEN_MM) + 1;
  const wordsWide = widthMm - wordsLeft - RECORD_WIDE_MM - BETWEEN_MM;
  const { step } = told;
  const words = stack([
    paragraph(told.title, HEADING_MM, wordsWide),
    ...told.sentences.map((words) => paragraph(words, wordsMm, wordsWide)),
  ]);
  const inside = Math.max(picture.highMm + UNDER_PICTURE_MM, words.heightMm, RECORD_HIGH_MM);
  return {
    heightMm: inside + 2,
    put: (leftMm, topMm) => {
      const bottom = topMm - 2 - picture.highMm;
      const boxes = [0, 1].map((i) => boxAt(leftMm + i * (picture.wideMm + BETWEEN_MM), bottom, picture));
      const pair = drawStepPair(job, answer, told.index, picture.wideMm * MOST_REDUCED);
      const pictures = [pair.before, pair.after];
      const recordLeft = leftMm + widthMm - RECORD_WIDE_MM;
      const marks: Mark[] = [
        { kind: "line", layer: "cut", from: { x: leftMm, y: topMm }, to: { x: leftMm + widthMm, y: topMm } },
        ...words.put(leftMm + wordsLeft, topMm - 2).marks,
        ...boxes.flatMap((box, i) =>
          caption(box, i === 0 ? "before" : `leaf at ${angleWords(step.reached)}`),
        ),
        ...record(job, step.bend, recordLeft, topMm - 2, wordsMm),
      ];
      return {
        marks,
        placed: boxes.map((box, i) => placeInBox(pictures[i] as Drawing, box, MOST_ENLARGED)),
      };
    },
  };
}

function boxAt(left: Mm, bottom: Mm, { wideMm, highMm }: PictureSize): Drawing["window"] {
  return { min: { x: left, y: bottom }, max: { x: left + wideMm, y: bottom + highMm } };
}

function caption(box: Drawing["window"], words: string): readonly Mark[] {
  const at = { x: (box.min.x + box.max.x) / 2, y: box.min.y - 3.2 };
  return [{ kind: "text", layer: "note", at, words, heightMm: CAPTION_MM, anchor: "middle" }];
}

/** Tick box, and lines for the angle and the length that were measured. */
function record(job: Job, bend: number, left: Mm, top: Mm, wordsMm: Mm): readonly Mark[] {
  const text = (x: Mm, y: Mm, words: string): Mark => {
    return { kind: "text", layer: "note", at: { x, y }, words, heightMm: wordsMm, anchor: "start" };
  };
  const lines = [
    ["angle", "°"],
    ["length", job.units],
  ] as const;
  return [
    ...tickBox(left, top, TICK_MM),
    text(left + TICK_MM + 2, top - TICK_MM + 1.5, `bend ${bend} done`),
    ...lines.flatMap(([what, unit], i): Mark[] => {
      const y = top - 14 - i * 8.5;
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
