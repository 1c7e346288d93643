/**
 * A dimension as a draughtsman sets it: extension lines, a dimension line with arrowheads, and the figure over it.
 * Arrowheads go outside where they don't fit between (ISO 129-1, from memory); the figure reads from below or the right.
 * Shared by every pen. Exact; only the room that the figure needs is a guess.
 */
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import type { Mark } from "./model.ts";

type Dimension = Extract<Mark, { kind: "dimension" }>;

export interface DimensionStrokes {
  /** Extension lines and the dimension line. */
  readonly lines: readonly (readonly Point[])[];
  /** Arrowheads, closed triangles with the tip first. */
  readonly heads: readonly (readonly Point[])[];
  /** Where the figure stands: the middle of its foot line. */
  readonly words: {
    readonly at: Point;
    readonly heightMm: Mm;
    readonly angleRad: Rad;
    readonly anchor: "middle";
  };
}

const ARROW_MM: Mm = 2.5;
const ARROW_HALF_WIDTH_MM: Mm = 0.45;
const FIGURE_MM: Mm = 3;
/** Rough width of a character over its height, enough to see whether the figure fits between the arrows. */
const CHARACTER_WIDTH = 0.55;

/**
 * Strokes of one dimension, in the drawing's frame; `pageMm` is what a millimetre of the page is in the drawing.
 * No lines and heads where the two points are the same.
 * @example dimensionStrokes({ kind: "dimension", layer: "dimension", from: { x: 0, y: 0 }, to: { x: 50, y: 0 }, words: "50", offsetMm: 8 }, 1).words.at.x // 25
 */
export function dimensionStrokes(mark: Dimension, pageMm: number): DimensionStrokes {
  const { from, to, words, offsetMm } = mark;
  const arrow = ARROW_MM * pageMm;
  const figure = FIGURE_MM * pageMm;
  const span = Math.hypot(to.x - from.x, to.y - from.y);
  if (span === 0) return { lines: [], heads: [], words: figurePlace(from, { x: 1, y: 0 }, figure) };
  const along = { x: (to.x - from.x) / span, y: (to.y - from.y) / span };
  const left = { x: -along.y, y: along.x };
  const a = step(from, left, offsetMm);
  const b = step(to, left, offsetMm);
  const figureWidth = words.length * figure * CHARACTER_WIDTH;
  const arrowsInside = span >= 3 * arrow;
  const figureInside = span >= figureWidth + (arrowsInside ? 2 * arrow : 0);
  const tail = arrowsInside ? 0 : 2 * arrow;
  const reach = figureInside ? tail : Math.max(tail, arrow) + figureWidth;
  const lines: (readonly Point[])[] = [[step(a, along, -tail), step(b, along, reach)]];
  if (offsetMm !== 0) lines.push(...extensions(from, to, left, offsetMm, arrow));
  const inward = arrowsInside ? arrow : -arrow;
  const halfWidth = ARROW_HALF_WIDTH_MM * pageMm;
  const heads = [head(a, along, inward, halfWidth), head(b, along, -inward, halfWidth)];
  const middle = figureInside ? span / 2 : span + reach - figureWidth / 2;
  return { lines, heads, words: figurePlace(step(a, along, middle), along, figure) };
}

/** Lines from the measured points out past the dimension line, with a gap so that they don't touch the part. */
function extensions(from: Point, to: Point, left: Point, offsetMm: Mm, arrow: Mm): (readonly Point[])[] {
  const sign = Math.sign(offsetMm);
  const gap = Math.min(arrow / 3, Math.abs(offsetMm) / 2) * sign;
  const end = offsetMm + (arrow / 2) * sign;
  return [from, to].map((point) => [step(point, left, gap), step(point, left, end)]);
}

function head(tip: Point, along: Point, length: Mm, halfWidth: Mm): readonly Point[] {
  const foot = step(tip, along, length);
  const left = { x: -along.y, y: along.x };
  return [tip, step(foot, left, halfWidth), step(foot, left, -halfWidth)];
}

/** The figure stands over the line as seen by a reader below or at the right of the page. */
function figurePlace(foot: Point, along: Point, heightMm: Mm): DimensionStrokes["words"] {
  const flip = along.x < -1e-9 || (Math.abs(along.x) <= 1e-9 && along.y < 0) ? -1 : 1;
  const reading = { x: along.x * flip, y: along.y * flip };
  const up = { x: -reading.y, y: reading.x };
  return {
    at: step(foot, up, heightMm * 0.35),
    heightMm,
    angleRad: Math.atan2(reading.y, reading.x),
    anchor: "middle",
  };
}

function step(from: Point, direction: Point, length: Mm): Point {
  return { x: from.x + direction.x * length, y: from.y + direction.y * length };
}
