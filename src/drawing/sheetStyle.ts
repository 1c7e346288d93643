/**
 * How close a shop sheet is set: from roomy, for a few bends, to tight, so that twenty bends still go on two pages.
 * The least type is 2.7 mm, 7.7 points: read at arm's length on a bench (common practice, no source).
 */
import type { Mm } from "../units/quantity.ts";
import { CLOSE_SET, type TableSetting } from "./pageTable.ts";

/** Millimetres of the section to a millimetre of a picture's width at most, so that a flange is still seen. */
export const MOST_REDUCED = 6.5;

export interface PictureSize {
  readonly wideMm: Mm;
  readonly highMm: Mm;
}

/** What a step has on paper: width between the margins, its picture, height of its words. */
export interface StepSpace {
  readonly widthMm: Mm;
  readonly picture: PictureSize;
  readonly wordsMm: Mm;
}

export interface SheetStyle {
  readonly titleMm: Mm;
  readonly answerMm: Mm;
  readonly wordsMm: Mm;
  /** Between blocks. */
  readonly gapMm: Mm;
  readonly picture: PictureSize;
  /** Steps told in sentences, a row each, or in a table whose heading says once what the figures are. */
  readonly steps: "rows" | "table";
  /** How high the blank is drawn. */
  readonly stripMm: Mm;
  /** The set-up in one paragraph, not a sentence a line. */
  readonly setUpRunOn: boolean;
  /** How the blank's figures are set; absent: roomy. */
  readonly blankTable?: TableSetting;
}

const ROOMY = {
  titleMm: 6,
  answerMm: 4.6,
  wordsMm: 3.1,
  gapMm: 3,
  stripMm: 26,
  steps: "rows",
  setUpRunOn: false,
} as const;
const CLOSE = {
  titleMm: 5.2,
  answerMm: 4.4,
  wordsMm: 2.8,
  gapMm: 2.4,
  stripMm: 20,
  blankTable: CLOSE_SET,
  setUpRunOn: false,
} as const;
const TIGHT = {
  ...CLOSE,
  titleMm: 5,
  answerMm: 4.2,
  wordsMm: 2.7,
  gapMm: 1.6,
  stripMm: 14,
  steps: "table",
  setUpRunOn: true,
} as const;

/** For a few bends, the roomiest first. */
export const ROOMY_STYLES: readonly SheetStyle[] = [
  { ...ROOMY, picture: { wideMm: 41, highMm: 30 } },
  { ...ROOMY, picture: { wideMm: 34, highMm: 24 } },
];

/** For many bends, from close to tight; a sheet takes the first that fits. */
export const CLOSER_STYLES: readonly SheetStyle[] = [
  { ...CLOSE, steps: "rows", picture: { wideMm: 28, highMm: 20 } },
  ...[26, 23, 20, 17, 15, 13, 11.5, 10.2].map((highMm) => ({
    ...TIGHT,
    picture: { wideMm: Math.min(30, highMm * 1.5), highMm },
  })),
];
