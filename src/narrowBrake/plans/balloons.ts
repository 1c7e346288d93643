/**
 * Numbers in circles beside a parallel picture, one for each line of the list, each with a leader to a spot of its piece that is
 * not covered by a nearer one; a piece that is wholly covered is pointed at through what covers it.
 */
import type { Mark } from "../../drawing/model.ts";
import { spread } from "../../drawing/spread.ts";
import type { Point } from "../../plane/point.ts";
import type { Mm } from "../../units/quantity.ts";
import { boxOfShape, type Piece } from "../solid.ts";
import { onPage, type Seen } from "./parallelView.ts";

const BALLOON_MM: Mm = 3.4;
const WORDS_MM: Mm = 3.2;
const DOT_MM: Mm = 0.5;

/** Balloons at both sides of a picture whose window is given; `pageMm` is what a millimetre of the page is in it. */
export function balloons(
  seen: readonly Seen[],
  pieces: readonly Piece[],
  window: { readonly min: Point; readonly max: Point },
  pageMm: number,
): Mark[] {
  const items = [...new Set(pieces.map(({ item }) => item))].sort((a, b) => a - b);
  const spots = items.map((item) => ({ item, at: spotOf(seen, item) ?? withinOthers(pieces, item) }));
  // Half of them on either side, whatever the picture's own middle is.
  const sorted = [...spots].sort((a, b) => a.at.x - b.at.x);
  const half = Math.ceil(sorted.length / 2);
  return [sorted.slice(0, half), sorted.slice(half)].flatMap((spotsOfSide, k) => {
    const side = [...spotsOfSide].sort((a, b) => a.at.y - b.at.y);
    const gap = Math.min(
      2.6 * BALLOON_MM * pageMm,
      (window.max.y - window.min.y - 2 * BALLOON_MM * pageMm) / Math.max(1, side.length - 1),
    );
    const ys = within(
      spread(
        side.map(({ at }) => at.y),
        gap,
      ),
      window.min.y + BALLOON_MM * pageMm,
      window.max.y - BALLOON_MM * pageMm,
      gap,
    );
    const x = k === 0 ? window.min.x - 8 * pageMm : window.max.x + 8 * pageMm;
    return side.flatMap(({ item, at }, i) => balloon(item, at, { x, y: ys[i]! }, pageMm));
  });
}

/** Pushed back between two bounds, a gap apart, where they were spread past them. */
function within(ys: readonly number[], low: number, high: number, gap: number): number[] {
  const places = [...ys];
  let least = low;
  for (const [i, y] of places.entries()) {
    places[i] = Math.max(y, least);
    least = places[i]! + gap;
  }
  let most = high;
  for (let i = places.length - 1; i >= 0; i--) {
    places[i] = Math.min(places[i]!, most);
    most = places[i]! - gap;
  }
  return places;
}

function balloon(item: number, at: Point, center: Point, pageMm: number): Mark[] {
  const radius = BALLOON_MM * pageMm;
  const length = Math.hypot(at.x - center.x, at.y - center.y);
  const rim = {
    x: center.x + ((at.x - center.x) * radius) / length,
    y: center.y + ((at.y - center.y) * radius) / length,
  };
  return [
    { kind: "line", layer: "dimension", from: rim, to: at },
    { kind: "arc", layer: "cut", center: at, radius: DOT_MM * pageMm, startRad: 0, sweepRad: 2 * Math.PI },
    { kind: "arc", layer: "cut", center, radius, startRad: 0, sweepRad: 2 * Math.PI },
    {
      kind: "text",
      layer: "note",
      at: { x: center.x, y: center.y - 0.36 * WORDS_MM * pageMm },
      words: String(item),
      heightMm: WORDS_MM * pageMm,
      anchor: "middle",
    },
  ];
}

/** The middle of the nearest piece with that number, where all of them stand within others. */
function withinOthers(pieces: readonly Piece[], item: number): Point {
  const { min, max } = boxOfShape(pieces.filter((piece) => piece.item === item).at(-1)!.shape);
  return onPage([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2]);
}

/** A spot of some piece with that number that nothing nearer covers, else the middle of one. */
function spotOf(seen: readonly Seen[], item: number): Point | undefined {
  let fallback: Point | undefined;
  for (let i = seen.length - 1; i >= 0; i--) {
    const { piece, hull } = seen[i]!;
    if (piece.item !== item) continue;
    const center = middleOf(hull);
    fallback ??= center;
    const tries = [0, 0.45, 0.8].flatMap((out) =>
      hull.map((corner) => ({
        x: center.x + (corner.x - center.x) * out,
        y: center.y + (corner.y - center.y) * out,
      })),
    );
    const free = tries.find((spot) => !seen.slice(i + 1).some((nearer) => isInside(spot, nearer.hull)));
    if (free) return free;
  }
  return fallback;
}

function middleOf(hull: readonly Point[]): Point {
  return {
    x: hull.reduce((sum, { x }) => sum + x, 0) / hull.length,
    y: hull.reduce((sum, { y }) => sum + y, 0) / hull.length,
  };
}

function isInside(spot: Point, hull: readonly Point[]): boolean {
  const sides = hull.map((a, i) => {
    const b = hull[(i + 1) % hull.length]!;
    return (b.x - a.x) * (spot.y - a.y) - (b.y - a.y) * (spot.x - a.x);
  });
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}
