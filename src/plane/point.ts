/**
 * A point of a plane, in millimetres. Which frame it is in (part, section, nose) is said where it is named.
 * Plain data: the engine's own geometry is kept free of library objects so that it can cross to a worker.
 */
import type { Mm } from "../units/quantity.ts";

export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

/** Straight distance between two points. @example distanceBetween({ x: 0, y: 0 }, { x: 3, y: 4 }) // 5 */
export function distanceBetween(a: Point, b: Point): Mm {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
