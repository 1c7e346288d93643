/**
 * How to lay out a blank: all lines from one edge, with what to draw them, on which side of the sheet, and where the
 * error of the widths ends up. Common practice of the bench, no source.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";

/** How a line is drawn on sheet that is to be bent. */
export const DRAW_LINES =
  "Draw lines with a soft pencil or in layout dye. Don't scribe across a bend: it cracks there.";

/** What is done to the edges first. */
export const DEBURR = "Deburr the ends of each bend line before you bend.";

/** Sentences for where the lines of a blank are given. */
export function markingSentences({ part, units }: Job, { order }: Answer): string[] {
  const back = [...new Set(order.flatMap((step) => (step.markedFaceUp ? [] : [step.bend])))].toSorted(
    (a, b) => a - b,
  );
  const which = back.length === 1 ? `bend ${back[0]}` : `bends ${back.join(", ")}`;
  const last = part.flatsMm.length;
  return [
    "Measure every line from the free end of flat 1.",
    ...(back.length === 0
      ? []
      : [
          `Marked face down for ${which}: draw that sight line on the back, the same distance from the same edge.`,
        ]),
    ...(last < 2
      ? []
      : [
          `What the bends are off by ends up in flat ${last}: where that matters, cut it ${units === "in" ? "1/16 in" : "1.5 mm"} long and trim it last.`,
        ]),
    DRAW_LINES,
    DEBURR,
  ];
}
