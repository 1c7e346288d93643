/**
 * Stock as drawn: square tube with its hollow in section, rectangles and circles seen from outside.
 * A tube's outline runs round the outside, through its seam, and back round the hollow, so that it stays one loop.
 * Exact.
 */

import type { Layer, Mark } from "../../drawing/model.ts";
import { polygon } from "../../drawing/polygon.ts";
import type { Outline } from "../../plane/outline.ts";
import type { Point } from "../../plane/point.ts";
import type { Mm } from "../../units/quantity.ts";

/** Section of a tube, seam in the middle of its underside. */
export function tubeOutline(minX: Mm, minY: Mm, maxX: Mm, maxY: Mm, wall: Mm): Outline {
  const seamX = (minX + maxX) / 2;
  const [rightUnder, rightTop, leftTop, leftUnder] = [
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
    { x: minX, y: minY },
  ];
  return polygon([
    { x: seamX, y: minY },
    rightUnder,
    rightTop,
    leftTop,
    leftUnder,
    { x: seamX, y: minY },
    { x: seamX, y: minY + wall },
    { x: minX + wall, y: minY + wall },
    { x: minX + wall, y: maxY - wall },
    { x: maxX - wall, y: maxY - wall },
    { x: maxX - wall, y: minY + wall },
    { x: seamX, y: minY + wall },
  ]);
}

/** The four edges of a rectangle as lines: a view from outside, which is not hatched. */
export function rectangleLines(layer: Layer, minX: Mm, minY: Mm, maxX: Mm, maxY: Mm): Mark[] {
  const corners = rectangleCorners(minX, minY, maxX, maxY);
  return corners.map((from, i) => ({ kind: "line", layer, from, to: corners[(i + 1) % 4]! }));
}

/** A full circle. */
export function circle(layer: Layer, center: Point, radius: Mm): Mark {
  return { kind: "arc", layer, center, radius, startRad: 0, sweepRad: 2 * Math.PI };
}

function rectangleCorners(minX: Mm, minY: Mm, maxX: Mm, maxY: Mm): Point[] {
  return [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
}
