/**
 * Where the numbers of flats and bends stand: beside their flat or bend, off the sheet, inside the canvas, and clear of each
 * other. Boxes are tried nearest first; what finds no room stands where it covers least. All in canvas points.
 */
import type { Point } from "../../src/plane/point.ts";

export interface FlatLabel {
  readonly kind: "flat" | "bend";
  /** Flat or bend, from 0. */
  readonly index: number;
  readonly x: number;
  readonly y: number;
}

export interface Labelled {
  readonly kind: "flat" | "bend";
  readonly index: number;
  /** The run that it belongs to; of a bend its place twice. */
  readonly from: Point;
  readonly to: Point;
  /** Which way it is tried first. */
  readonly away: Point;
}

export interface Ground {
  readonly width: number;
  readonly height: number;
  /** Middle lines of the sheet, and half its thickness. */
  readonly sheet: readonly (readonly [Point, Point])[];
  readonly half: number;
  /** Boxes that must stay free: the words of the finding. */
  readonly taken: readonly Box[];
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly halfWide: number;
  readonly halfHigh: number;
}

/** Half the size of a label, with the air that it wants. */
const SIZES = { flat: { halfWide: 30, halfHigh: 14 }, bend: { halfWide: 12, halfHigh: 12 } } as const;
const GAP = 3;
const FARTHER = [0, 10, 22, 38, 58, 82] as const;
const ALONG = [0.5, 0.34, 0.66, 0.2, 0.8] as const;

const overlap = (a: Box, b: Box) =>
  Math.abs(a.x - b.x) < a.halfWide + b.halfWide && Math.abs(a.y - b.y) < a.halfHigh + b.halfHigh;

/** How far a box reaches from its middle in a direction. */
const reach = ({ halfWide, halfHigh }: Box, { x, y }: Point) =>
  Math.min(halfWide / Math.max(Math.abs(x), 1e-9), halfHigh / Math.max(Math.abs(y), 1e-9));

/** Whether a box touches a sheet whose middle runs from a to b: sampled finer than any box is wide. */
function covers(box: Box, [a, b]: readonly [Point, Point], half: number): boolean {
  const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 4));
  for (let i = 0; i <= count; i++) {
    const at = { x: a.x + ((b.x - a.x) * i) / count, y: a.y + ((b.y - a.y) * i) / count };
    const dx = Math.max(0, Math.abs(at.x - box.x) - box.halfWide);
    const dy = Math.max(0, Math.abs(at.y - box.y) - box.halfHigh);
    if (dx * dx + dy * dy < half * half) return true;
  }
  return false;
}

/** A label for each flat and bend, those that find no room at all left out. */
export function placedLabels(labelled: readonly Labelled[], ground: Ground): readonly FlatLabel[] {
  const { width, height, sheet, half, taken } = ground;
  const boxes: Box[] = [...taken];
  return labelled.flatMap((one): FlatLabel[] => {
    const size = SIZES[one.kind];
    const run = Math.hypot(one.to.x - one.from.x, one.to.y - one.from.y);
    for (const farther of FARTHER) {
      for (const side of [1, -1]) {
        const way = { x: one.away.x * side, y: one.away.y * side };
        const off = half + GAP + reach({ x: 0, y: 0, ...size }, way) + farther;
        for (const share of run > 8 ? ALONG : [0.5]) {
          const box = {
            x: one.from.x + (one.to.x - one.from.x) * share + way.x * off,
            y: one.from.y + (one.to.y - one.from.y) * share + way.y * off,
            ...size,
          };
          const inside =
            box.x >= box.halfWide + 2 &&
            box.x <= width - box.halfWide - 2 &&
            box.y >= box.halfHigh + 2 &&
            box.y <= height - box.halfHigh - 2;
          if (!inside || boxes.some((other) => overlap(other, box))) continue;
          if (sheet.some((line) => covers(box, line, half))) continue;
          boxes.push(box);
          return [{ kind: one.kind, index: one.index, x: box.x, y: box.y }];
        }
      }
    }
    return [];
  });
}

/** Distance of a point from a piece of line. */
export function awayFrom(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
