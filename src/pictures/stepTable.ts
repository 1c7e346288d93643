/**
 * The steps of a part with many bends as a table: two small pictures, where it lies, where to sight, how far to swing,
 * what to watch, what to measure and room to write. The heading says once what the figures are.
 */

import type { Block } from "../drawing/block.ts";
import type { Mark } from "../drawing/model.ts";
import { placeInBox } from "../drawing/page.ts";
import { HEADING_MM, wrapWords } from "../drawing/printWords.ts";
import { MOST_REDUCED, type PictureSize, type StepSpace } from "../drawing/sheetStyle.ts";
import { tickBox } from "../drawing/tickBox.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { Mm } from "../units/quantity.ts";
import { stepHeadings, type ToldStep } from "../words/toldStep.ts";
import { drawStepPair } from "./stepPair.ts";

const LEADING = 1.24;
/** Words to the next column. */
const APART_MM: Mm = 1.4;
const ABOVE_MM: Mm = 0.6;
const NUMBER_WIDE_MM: Mm = 8.5;
const TICK_MM: Mm = 4;
const FIELDS_WIDE_MM: Mm = 19;
/** Two lines to write on, far enough apart for a pencil. */
const FIELDS_HIGH_MM: Mm = 10.2;
/** Shares of what pictures, number and fields leave. */
const SHARES = [15, 23, 16, 20, 27.5, 29.5] as const;
const LEAF_COLUMN = 3;
const WATCH_COLUMN = 4;
const MOST_ENLARGED = 2;

interface Columns {
  readonly pictures: readonly [Mm, Mm];
  readonly words: readonly { readonly leftMm: Mm; readonly wideMm: Mm }[];
  readonly fields: Mm;
}

/** Rows of all steps, under one heading on each page. */
export function stepTable(
  job: Job,
  answer: Answer,
  steps: readonly ToldStep[],
  space: StepSpace,
): readonly Block[] {
  const columns = columnsOf(space.widthMm, space.picture);
  const head = heading(job, columns, space.widthMm, space.wordsMm);
  return steps.map((told) => ({ ...row(job, answer, told, columns, space), head }));
}

function columnsOf(widthMm: Mm, { wideMm }: PictureSize): Columns {
  const wordsLeft = NUMBER_WIDE_MM + 2 * (wideMm + 1) + 1;
  const room = widthMm - wordsLeft - FIELDS_WIDE_MM;
  const whole = SHARES.reduce<number>((sum, share) => sum + share, 0);
  let leftMm = wordsLeft;
  const words = SHARES.map((share) => {
    const column = { leftMm, wideMm: (room * share) / whole };
    leftMm += column.wideMm;
    return column;
  });
  return { pictures: [NUMBER_WIDE_MM, NUMBER_WIDE_MM + wideMm + 1], words, fields: leftMm };
}

function heading(job: Job, columns: Columns, widthMm: Mm, wordsMm: Mm): Block {
  const cells = stepHeadings(job).map((words, i) => {
    return wrapWords(words, wordsMm, (columns.words[i]?.wideMm ?? 0) - APART_MM);
  });
  const lines = Math.max(...cells.map((cell) => cell.length));
  const heightMm = lines * wordsMm * LEADING + ABOVE_MM + 0.9;
  return {
    heightMm,
    put: (leftMm, topMm) => ({
      marks: [
        ...lineMarks(["before"], leftMm + columns.pictures[0], topMm, wordsMm),
        ...lineMarks(["after"], leftMm + columns.pictures[1], topMm, wordsMm),
        ...cells.flatMap((cell, i) =>
          lineMarks(cell, leftMm + (columns.words[i]?.leftMm ?? 0), topMm, wordsMm),
        ),
        ...lineMarks(["measured"], leftMm + columns.fields, topMm, wordsMm),
        rule("cut", leftMm, topMm - heightMm, widthMm),
      ],
    }),
  };
}

function row(
  job: Job,
  answer: Answer,
  told: ToldStep,
  columns: Columns,
  { widthMm, picture, wordsMm }: StepSpace,
): Block {
  const { leaf, cells: columnsTold } = told;
  const wideOf = (i: number) => columns.words[i]?.wideMm ?? 0;
  const cells = columnsTold.map((cell, i) => {
    // What stops a bend leaves nothing to measure, and runs on over that column.
    const wide =
      i === WATCH_COLUMN && columnsTold[i + 1]?.length === 0 ? wideOf(i) + wideOf(i + 1) : wideOf(i);
    return cell.flatMap((line) => wrapWords(line, wordsMm, wide - APART_MM));
  });
  const leafMm = leaf === undefined ? 0 : HEADING_MM * LEADING;
  const high = cells.map((cell, i) => cell.length * wordsMm * LEADING + (i === LEAF_COLUMN ? leafMm : 0));
  const heightMm = Math.max(...high, picture.highMm, FIELDS_HIGH_MM) + ABOVE_MM + 0.6;
  return {
    heightMm,
    put: (leftMm, topMm) => {
      const bold = (at: Mm, words: string): Mark => {
        const y = topMm - ABOVE_MM - HEADING_MM;
        return {
          kind: "text",
          layer: "note",
          at: { x: at, y },
          words,
          heightMm: HEADING_MM,
          anchor: "start",
        };
      };
      const boxes = columns.pictures.map((from) => ({
        min: { x: leftMm + from, y: topMm - ABOVE_MM / 2 - 0.3 - picture.highMm },
        max: { x: leftMm + from + picture.wideMm, y: topMm - ABOVE_MM / 2 - 0.3 },
      }));
      const marks: Mark[] = [
        bold(leftMm, `${told.index + 1}.`),
        ...tickBox(leftMm + 0.5, topMm - ABOVE_MM - HEADING_MM - 1.1, TICK_MM),
        ...cells.flatMap((cell, i) => {
          const under = i === LEAF_COLUMN ? leafMm : 0;
          return lineMarks(cell, leftMm + (columns.words[i]?.leftMm ?? 0), topMm - under, wordsMm);
        }),
        ...(leaf === undefined ? [] : [bold(leftMm + (columns.words[LEAF_COLUMN]?.leftMm ?? 0), leaf)]),
        ...fields(job, leftMm + columns.fields, topMm, heightMm, wordsMm),
        rule("dimension", leftMm, topMm - heightMm, widthMm),
      ];
      const pair = drawStepPair(job, answer, told.index, picture.wideMm * MOST_REDUCED);
      const [before, after] = boxes as [(typeof boxes)[number], (typeof boxes)[number]];
      return {
        marks,
        placed: [
          placeInBox(pair.before, before, MOST_ENLARGED),
          placeInBox(pair.after, after, MOST_ENLARGED),
        ],
      };
    },
  };
}

/** Lines to write the measured angle and length on. */
function fields(job: Job, left: Mm, top: Mm, heightMm: Mm, wordsMm: Mm): readonly Mark[] {
  return ["°", job.units].flatMap((unit, i): Mark[] => {
    const y = top - (heightMm * (i + 1)) / 2 + 1.7;
    const right = left + FIELDS_WIDE_MM - 6;
    return [
      { kind: "line", layer: "dimension", from: { x: left, y }, to: { x: right, y } },
      {
        kind: "text",
        layer: "note",
        at: { x: right + 0.8, y },
        words: unit,
        heightMm: wordsMm,
        anchor: "start",
      },
    ];
  });
}

function lineMarks(lines: readonly string[], x: Mm, top: Mm, wordsMm: Mm): readonly Mark[] {
  return lines.map((words, i) => ({
    kind: "text",
    layer: "note",
    at: { x, y: top - ABOVE_MM - wordsMm - i * wordsMm * LEADING },
    words,
    heightMm: wordsMm,
    anchor: "start",
  }));
}

function rule(layer: "cut" | "dimension", x: Mm, y: Mm, widthMm: Mm): Mark {
  return { kind: "line", layer, from: { x, y }, to: { x: x + widthMm, y } };
}
