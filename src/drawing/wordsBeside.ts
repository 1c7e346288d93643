/**
 * A place for a few words beside a point: of some places left and right of it, above and below, the one that stands
 * most free of the sheet without leaving the window.
 */
import { distanceToEdge } from "../plane/edge.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Drawing } from "./model.ts";

/** Rough width of a bold letter over its height. */
const LETTER_WIDTH = 0.62;
/** Feet of the words over or under the point, nearest first, in text heights. */
const HEIGHTS = [0.9, -1.7, 2.4, -3.2, 3.9];
/** More room than this does not make words easier to read. */
const ENOUGH = 1.2;

export interface WordsPlace {
  readonly at: Point;
  readonly anchor: "start" | "end";
}

/** Where to set `letters` letters of `textMm` beside `point`; the first of equals wins, so words stay near. */
export function wordsBeside(
  point: Point,
  letters: number,
  textMm: number,
  sheet: Outline,
  window: Drawing["window"],
): WordsPlace {
  const width = letters * LETTER_WIDTH * textMm;
  const inner = point.x < (window.min.x + window.max.x) / 2 ? 1 : -1;
  let best: { place: WordsPlace; room: number } | undefined;
  for (const height of HEIGHTS) {
    for (const side of [inner, -inner]) {
      const at = { x: point.x + side * 1.6 * textMm, y: point.y + height * textMm };
      const end = at.x + side * width;
      const sticksOut = Math.max(0, window.min.x - Math.min(at.x, end), Math.max(at.x, end) - window.max.x);
      const middles = [0, 0.25, 0.5, 0.75, 1].map((share) => ({
        x: at.x + side * width * share,
        y: at.y + textMm * 0.4,
      }));
      const free = Math.min(
        ...middles.flatMap((middle) => sheet.edges.map((edge) => distanceToEdge(middle, edge))),
      );
      const room = Math.min(free, ENOUGH * textMm) - sticksOut;
      if (best === undefined || room > best.room + 1e-9) {
        best = { place: { at, anchor: side > 0 ? "start" : "end" }, room };
      }
    }
  }
  return best?.place ?? { at: point, anchor: "start" };
}
