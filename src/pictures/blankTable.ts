/**
 * The figures of a blank as a table for the shop sheet: each line from one edge, turn and angle, when the bend is made and what lies in the throat.
 */

import type { Block } from "../drawing/block.ts";
import { pageTable, type TableSetting } from "../drawing/pageTable.ts";
import { stack } from "../drawing/paragraph.ts";
import type { Answer, BlankBendAnswer, ReliefHoleAnswer } from "../jobFile/answer.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { sightLines } from "../jobFile/sightLine.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import { placeFigures } from "../words/lengthWords.ts";
import { faceWords, throatWords } from "../words/stepWords.ts";

/** Shares of the width for the columns; inches need room for the fraction beside the decimal. */
const SHARES = { mm: [8, 13, 16, 14, 16, 33], in: [8, 12, 19, 19, 19, 23] } as const;
/** Close set, the figures leave room for a line of words. */
const CLOSE_SHARES = [6, 12, 18, 18, 18, 28];

/** The table on a page with `widthMm` between the margins. */
export function blankTable(job: Job, answer: Answer, widthMm: Mm, setting?: TableSetting): Block {
  const headings = [
    "Bend",
    "Turn",
    `Tangent line, ${job.units}`,
    `Sight line, ${job.units}`,
    `Tangent line, ${job.units}`,
    "When, in the throat",
  ];
  const shares: readonly number[] = setting === undefined ? SHARES[job.units] : CLOSE_SHARES;
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const columns = headings.map((heading, i) => ({ heading, widthMm: (widthMm * (shares[i] ?? 0)) / whole }));
  const bends = pageTable(
    columns,
    answer.blank.bends.map((bend) => row(job, answer, bend)),
    setting,
  );
  const holes = answer.blank.reliefHoles ?? [];
  return holes.length === 0 ? bends : stack([bends, holeTable(job, holes, widthMm)], 2);
}

/** Where to drill, and how wide: from the edge that all is measured from, and from the blank's start. */
function holeTable(job: Job, holes: readonly ReliefHoleAnswer[], widthMm: Mm): Block {
  const headings = [
    "Relief hole",
    "Bend",
    `From the edge, ${job.units}`,
    `From the start, ${job.units}`,
    `Wide, ${job.units}`,
  ];
  const columns = headings.map((heading, i) => ({ heading, widthMm: (widthMm * (i < 2 ? 1 : 2)) / 8 }));
  const place = (lengthMm: Mm) => figures(lengthMm, job.units);
  return pageTable(
    columns,
    holes.map(({ bend, x, y, diameter }, i) => [`${i + 1}`, `${bend}`, place(x), place(y), place(diameter)]),
  );
}

function row(job: Job, answer: Answer, bend: BlankBendAnswer): readonly string[] {
  const { turn = "up", angleDeg = 0 } = finishedPart(job).bends[bend.bend - 1] ?? {};
  // A bend in two strokes is held the same way in both.
  const strokes = answer.order.flatMap((step, i) => (step.bend === bend.bend ? [`${i + 1}.`] : []));
  const step = answer.order.find((one) => one.bend === bend.bend);
  const when =
    step === undefined
      ? "not reached"
      : `${strokes.join(" and ")} ${throatWords(step, job.part.bends.length)}, ${faceWords(step)}`;
  const place = (lengthMm: Mm) => figures(lengthMm, job.units);
  return [
    `${bend.bend}`,
    `${turn} ${angleWords(angleDeg)}`,
    place(bend.tangents[0]),
    place(sightLines(answer)[bend.bend - 1]?.at ?? bend.sightLine),
    place(bend.tangents[1]),
    when,
  ];
}

function figures(lengthMm: Mm, units: "mm" | "in"): string {
  return placeFigures(lengthMm, units).join(" ");
}
