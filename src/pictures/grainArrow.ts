/**
 * The two-headed arrow along the grain of the sheet, on a blank whose bend lines run up and down the page.
 * Angles from the bend lines, 0 along and 90 across, turned from up toward the far end of the blank.
 */

import type { Layer, Mark } from "../drawing/model.ts";
import type { Point } from "../plane/point.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";

const BARB_MM: Mm = 2;
const BARB_WIDE_MM: Mm = 0.8;

/** The arrow's strokes, `halfMm` each way from its middle; on `grain` it is seen on the blank, on `note` beside it. */
export function grainArrow(
  middle: Point,
  grainDeg: Deg,
  halfMm: Mm,
  layer: Layer = "grain",
): readonly Mark[] {
  const turn = toRad(grainDeg);
  const along = { x: Math.sin(turn), y: Math.cos(turn) };
  const at = (run: Mm, aside: Mm): Point => ({
    x: middle.x + along.x * run - along.y * aside,
    y: middle.y + along.y * run + along.x * aside,
  });
  const line = (from: Point, to: Point): Mark => ({ kind: "line", layer, from, to });
  const heads = [-1, 1].flatMap((side) =>
    [-1, 1].map((way) => line(at(side * halfMm, 0), at(side * (halfMm - BARB_MM), way * BARB_WIDE_MM))),
  );
  return [line(at(-halfMm, 0), at(halfMm, 0)), ...heads];
}
