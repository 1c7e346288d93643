/**
 * Straight-edged outlines for frames, bars and grounds of a drawing.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";

/** The outline through these corners, in their order. */
export function polygon(corners: readonly Point[]): Outline {
  return {
    edges: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % corners.length] as Point })),
  };
}

/** An upright rectangle, counter-clockwise from its lower left corner. */
export function rectangle(min: Point, max: Point): Outline {
  return polygon([min, { x: max.x, y: min.y }, max, { x: min.x, y: max.y }]);
}
