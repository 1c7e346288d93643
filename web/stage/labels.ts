/**
 * Where the flats' dimensions stand: beside the middle of each flat, pushed further out or to the other side where
 * another dimension stands already. All in canvas points.
 */
import type { Point } from "../../src/plane/point.ts";

export interface FlatLabel {
  readonly flat: number;
  readonly x: number;
  readonly y: number;
}

export interface FlatLine {
  readonly flat: number;
  readonly from: Point;
  readonly to: Point;
  /** Side of the line that is tried first, seen from `from` to `to`. */
  readonly side: 1 | -1;
}

const OFF = 20;
/** Tried in this order, as multiples of the usual distance. */
const TRIES = [1, -1, 2.3, -2.3, 3.6] as const;
const WIDE = 46;
const HIGH = 24;
const EDGE = 12;

const overlap = (a: FlatLabel, b: FlatLabel) => Math.abs(a.x - b.x) < WIDE && Math.abs(a.y - b.y) < HIGH;

/** One label a flat, as far as there is room inside the canvas. */
export function placedLabels(
  lines: readonly FlatLine[],
  width: number,
  height: number,
): readonly FlatLabel[] {
  const placed: FlatLabel[] = [];
  for (const line of lines) {
    const { from, to, flat, side } = line;
    const run = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const normal = { x: (-side * (to.y - from.y)) / run, y: (side * (to.x - from.x)) / run };
    for (const times of TRIES) {
      const off = OFF * times;
      const label = {
        flat,
        x: (from.x + to.x) / 2 + normal.x * off,
        y: (from.y + to.y) / 2 + normal.y * off,
      };
      const seen = label.x > EDGE && label.x < width - EDGE && label.y > EDGE && label.y < height - EDGE;
      if (!seen || placed.some((other) => overlap(other, label))) continue;
      placed.push(label);
      break;
    }
  }
  return placed;
}

/** Distance of a point from a piece of line. */
export function awayFrom(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
