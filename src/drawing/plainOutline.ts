/**
 * Outlines and lines of straight-edged stock: polygons, rectangles, square tube with its hollow.
 * A tube's outline runs round the outside, through its seam, and back round the hollow, so that it stays one loop.
 * Exact.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Layer, Mark } from "./model.ts";

/** A closed polygon, corners counter-clockwise, the last joined to the first. */
export function polygon(corners: readonly Point[]): Outline {
  return {
    edges: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % corners.length]! })),
  };
}

/** A rectangle by two opposite corners. @example rectangle(0, 0, 2, 1).edges.length // 4 */
export function rectangle(minX: Mm, minY: Mm, maxX: Mm, maxY: Mm): Outline {
  return polygon(rectangleCorners(minX, minY, maxX, maxY));
}

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
