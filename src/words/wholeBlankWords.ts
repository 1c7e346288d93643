/**
 * The blank of a whole part in words and a table: sizes, bends, relief holes, what is cut.
 */
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { angleWords } from "./angleWords.ts";
import { lengthWords, placeWords } from "./lengthWords.ts";
import { numbersWords } from "./wholeWords.ts";

/** Said of a nest of blanks that are no rectangles. */
export const TRUE_OUTLINE =
  "Straight cuts take out the rectangle round each blank; its true outline, drawn inside, is cut after that.";

export const BENDS_BOTH_WAYS =
  "Its bends run both ways, so some lie along the grain whichever way it is laid: keep the sharpest across it, or take larger inside radii.";

/** Size of the blank and what it is of. */
export function wholeBlankTitle({ part, units }: WholeJob, { blank }: WholeAnswer): string {
  const xs = blank.outline.map(([x]) => x);
  const ys = blank.outline.map(([, y]) => y);
  const say = (all: readonly number[]) => lengthWords(Math.max(...all) - Math.min(...all), units);
  return `Blank of ${part.name}: ${say(xs)} by ${say(ys)}, marked face up.`;
}

/** Headings, then a row a bend: its line's two ends from the lower left corner, and when you make it. */
export function wholeBlankTable(
  { part, finished, units }: WholeJob,
  { blank, order }: WholeAnswer,
): string[][] {
  const place = ([x, y]: readonly [number, number]) =>
    `${placeWords(x, units)}, ${placeWords(y, units)}`.replaceAll(` ${units}`, "");
  const rows = blank.bends.map(({ bend, line, allowance }) => {
    const { turn, angleDeg } = (finished ?? part).sheet.pattern.bends[bend - 1]!;
    const stroke = order.findIndex(({ bends }) => bends.includes(bend));
    return [
      `bend ${bend}, ${turn} ${angleWords(angleDeg)}`,
      place(line[0]),
      place(line[1]),
      lengthWords(allowance, units),
      stroke < 0 ? "not reached" : `${stroke + 1}.`,
    ];
  });
  return [["", `line from x, y ${units}`, "to", "allowance", "made"], ...rows];
}

/** Relief holes, and where x and y are measured from. */
export function wholeBlankSentences({ units }: WholeJob, { blank }: WholeAnswer): string[] {
  const holes = blank.reliefHoles.map(({ x, y, diameter, bends }) => {
    const at = `${placeWords(x, units)}, ${placeWords(y, units)}`.replaceAll(` ${units}`, "");
    return `${lengthWords(diameter, units)} across at ${at}, where bends ${numbersWords(bends)} meet`;
  });
  return [
    "x runs to the right and y up from the lower left corner of the blank. Each line is the middle of its bend.",
    "On the drawing, heavy lines are sight lines: set the nose over them, with the side that you clamp under it.",
    ...(holes.length === 0
      ? []
      : [`Drill the relief holes first, then cut out, then bend: ${holes.join("; ")}.`]),
  ];
}
