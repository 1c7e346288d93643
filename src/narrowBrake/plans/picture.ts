/**
 * A parallel picture of pieces as a drawing that fits a box of the page, with or without balloons.
 */
import type { Drawing, Mark } from "../../drawing/model.ts";
import { polygon } from "../../drawing/polygon.ts";
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

/** A drawing in millimetres of the page instead of the thing's own, for pens that know no scale. */
export function scaledDrawing({ sentence, window, marks }: Drawing, scale: number): Drawing {
  const put = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  return {
    sentence,
    window: { min: put(window.min), max: put(window.max) },
    marks: marks.map((mark) => scaledMark(mark, scale, put)),
  };
}

function scaledMark(mark: Mark, scale: number, put: (point: Point) => Point): Mark {
  switch (mark.kind) {
    case "line":
      return { ...mark, from: put(mark.from), to: put(mark.to) };
    case "arc":
      return { ...mark, center: put(mark.center), radius: mark.radius * scale };
    case "text":
      return { ...mark, at: put(mark.at), heightMm: mark.heightMm * scale };
    case "outline":
      return { ...mark, outline: polygon(mark.outline.edges.map(({ from }) => put(from))) };
    case "dimension":
      return { ...mark, from: put(mark.from), to: put(mark.to), offsetMm: mark.offsetMm * scale };
    case "cross":
      return { ...mark, at: put(mark.at) };
  }
}
