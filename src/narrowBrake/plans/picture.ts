/**
 * A parallel picture of pieces as a drawing that fits a box of the page, with or without balloons.
 */
import type { Drawing } from "../../drawing/model.ts";
import type { Point } from "../../plane/point.ts";
import type { Mm } from "../../units/quantity.ts";
import type { Piece } from "../solid.ts";
import { balloons } from "./balloons.ts";
import { seenInParallel } from "./parallelView.ts";

/** Room beside the picture for balloons, millimetres of the page. */
const BESIDE_MM: Mm = 13;

/** The pieces as large as fit into `wideMm` × `highMm` of the page; `scale` is page millimetres to a millimetre of the brake. */
export function pictureOf(
  pieces: readonly Piece[],
  sentence: string,
  box: { readonly wideMm: Mm; readonly highMm: Mm; readonly numbered: boolean },
): { readonly drawing: Drawing; readonly scale: number } {
  const seen = seenInParallel(pieces);
  const points = seen.flatMap(({ hull }) => hull);
  const min = { x: Math.min(...points.map(({ x }) => x)), y: Math.min(...points.map(({ y }) => y)) };
  const max = { x: Math.max(...points.map(({ x }) => x)), y: Math.max(...points.map(({ y }) => y)) };
  const beside = box.numbered ? 2 * BESIDE_MM : 2;
  const scale = Math.min(
    (box.wideMm - beside) / (max.x - min.x),
    (box.highMm - (box.numbered ? 8 : 2)) / (max.y - min.y),
  );
  const marks = [
    ...seen.flatMap((one) => one.marks),
    ...(box.numbered ? balloons(seen, pieces, { min, max }, 1 / scale) : []),
  ];
  const middle: Point = { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2 };
  const half = { x: box.wideMm / scale / 2, y: box.highMm / scale / 2 };
  return {
    scale,
    drawing: {
      sentence,
      window: {
        min: { x: middle.x - half.x, y: middle.y - half.y },
        max: { x: middle.x + half.x, y: middle.y + half.y },
      },
      marks,
    },
  };
}
