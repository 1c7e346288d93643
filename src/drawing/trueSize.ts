/**
 * A drawing that is to be printed at true size, with a check square beneath to lay a rule on: 50 mm, or 2 in.
 * Exact; what a printer does to it is what the square shows.
 */
import type { Drawing, Mark } from "./model.ts";
import { rectangle } from "./polygon.ts";
import { checkSquareMm } from "./templateFoot.ts";

/** Room round the square. */
const APART_MM = 6;
const WORDS_MM = 3;

/** The drawing with its check square under the lower left corner. */
export function withCheckSquare(drawing: Drawing, units: "mm" | "in"): Drawing {
  const side = checkSquareMm(units);
  const { min, max } = drawing.window;
  const at = { x: min.x + APART_MM, y: min.y - APART_MM - side };
  const corner = { x: at.x + side, y: at.y + side };
  const lines = [
    `This square is ${units === "in" ? "2 in" : "50 mm"} a side.`,
    "Print at 100 %, then lay a rule on it.",
  ];
  const words = lines.map(
    (line, i): Mark => ({
      kind: "text",
      layer: "note",
      at: { x: corner.x + APART_MM, y: corner.y - WORDS_MM - i * WORDS_MM * 1.4 },
      words: line,
      heightMm: WORDS_MM,
      anchor: "start",
    }),
  );
  // Words of some seventy millimetres stand beside it, so that a narrow blank's window has to grow.
  const right = Math.max(max.x, corner.x + 75);
  return {
    sentence: drawing.sentence,
    window: { min: { x: min.x, y: at.y - APART_MM }, max: { x: right, y: max.y } },
    marks: [
      ...drawing.marks,
      { kind: "outline", layer: "dimension", outline: rectangle(at, corner), caption: "check square" },
      ...words,
    ],
  };
}
