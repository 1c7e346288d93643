/**
 * The places tried for each kind of label, cheapest first in each kind's own order: a dimension line nearer or farther on
 * either side, its figure in it or beyond an end; an arc wider or narrower; a number round its point. In canvas points.
 */
import type { Point } from "../../src/plane/point.ts";
import type { AskedAngle, AskedLength, AskedNote, Choice, Placed, Size } from "./asked.ts";
import { type Piece, reachOf } from "./boxes.ts";

const ARROW = 9;
const ARROW_HALF = 2.6;
/** From the face to the first dimension line, and from line to line. */
const FIRST = 17;
const STEP = 15;
const LEVELS = 6;
const GAP = 2.5;
const OVERSHOOT = 4;

const step = (p: Point, way: Point, far: number): Point => ({ x: p.x + way.x * far, y: p.y + way.y * far });

function head(tip: Point, along: Point, way: 1 | -1): readonly [Point, Point, Point] {
  const foot = step(tip, along, ARROW * way);
  const across = { x: -along.y, y: along.x };
  return [tip, step(foot, across, ARROW_HALF), step(foot, across, -ARROW_HALF)];
}

/** Dimension lines of a length, of which the share from `seen[0]` to `seen[1]` lies on the canvas. */
export function lengthChoices(one: AskedLength, seen: readonly [number, number]): readonly Choice[] {
  const { from, to, faces, half, size, own } = one;
  const span = Math.hypot(to.x - from.x, to.y - from.y);
  if (span < 1) return [];
  const along = { x: (to.x - from.x) / span, y: (to.y - from.y) / span };
  const choices: Choice[] = [];
  const wide = reachOf(size, along);
  for (let level = 0; level < LEVELS; level++) {
    for (const side of [1, -1] as const) {
      const across = { x: -along.y * side, y: along.x * side };
      const off = half + FIRST + level * STEP;
      const [p, q] = [step(from, across, off), step(to, across, off)];
      const extensions = [from, to].map((end, i): Piece => {
        const face = faces[i] === 0 ? side : faces[i]!;
        return [step(end, across, face * side * half + GAP), step(end, across, off + OVERSHOOT)];
      });
      const outer = (faces[0] !== -side ? 0 : 4) + (faces[1] !== -side ? 0 : 4);
      const cost = 4 * level + outer;
      const shares = [0.5, 0.36, 0.64, 0.24, 0.76].map((t) => seen[0] + t * (seen[1] - seen[0]));
      shares.forEach((share, i) => {
        const mid = step(p, along, span * share);
        const clear = Math.min(share * span, (1 - share) * span) - wide;
        if (clear < ARROW + 3) return;
        const parts: Piece[] = [
          [p, step(mid, along, -wide)],
          [step(mid, along, wide), q],
        ];
        choices.push(
          choice(mid, size, parts, extensions, [head(p, along, 1), head(q, along, -1)], cost + i, own),
        );
      });
      // Beyond an end: arrows from outside, the figure at the longer tail.
      for (const [end, other, way] of [
        [q, p, 1],
        [p, q, -1],
      ] as const) {
        const inner = span > 3.2 * ARROW;
        const tail = inner ? 5 : ARROW + 6;
        const mid = step(end, along, way * (tail + wide));
        const parts: Piece[] = inner
          ? [[other, step(end, along, way * tail)]]
          : [[step(other, along, -way * (ARROW + 6)), step(end, along, way * tail)]];
        const heads = inner
          ? [head(p, along, 1), head(q, along, -1)]
          : [head(p, along, -1), head(q, along, 1)];
        choices.push(choice(mid, size, parts, extensions, heads, cost + 6, own));
      }
      // Beside the line, on its far side.
      const beside = step(step(p, along, span * shares[0]!), across, reachOf(size, across) + 3);
      const inner = span > 2.4 * ARROW;
      const heads = inner ? [head(p, along, 1), head(q, along, -1)] : [head(p, along, -1), head(q, along, 1)];
      const line: Piece = inner ? [p, q] : [step(p, along, -ARROW - 5), step(q, along, ARROW + 5)];
      choices.push(choice(beside, size, [line], extensions, heads, cost + 8, own));
    }
  }
  return choices;
}

function choice(
  at: Point,
  size: Size,
  strokes: readonly Piece[],
  extensions: readonly Piece[],
  heads: Placed["heads"],
  cost: number,
  own?: number,
): Choice {
  const placed = { box: { ...at, ...size }, whole: true, lines: [...strokes, ...extensions], heads };
  return { placed, strokes, extensions, cost, ...(own === undefined ? {} : { own }) };
}

const RADII = [40, 54, 70, 90, 114] as const;

/** Arcs of an angle, the figure in it or just outside of it. */
export function arcChoices({ at, fromRad, toRad, size }: AskedAngle): readonly Choice[] {
  const on = (rad: number, radius: number): Point => ({
    x: at.x + radius * Math.cos(rad),
    y: at.y - radius * Math.sin(rad),
  });
  return RADII.flatMap((radius, level) =>
    [0.5, 0.34, 0.66].flatMap((share, i) =>
      [0, 1].map((outside): Choice => {
        const rad = fromRad + (toRad - fromRad) * share;
        const away = { x: Math.cos(rad), y: -Math.sin(rad) };
        const mid = step(at, away, radius + outside * (reachOf(size, away) + 4));
        const count = 10;
        const arc = Array.from({ length: count }, (_, k): Piece => {
          const turn = (toRad - fromRad) / count;
          return [on(fromRad + turn * k, radius), on(fromRad + turn * (k + 1), radius)];
        });
        // A figure in its arc breaks it.
        const box = { ...mid, ...size };
        const seen = outside ? arc : arc.filter(([a, b]) => !within(a, box) && !within(b, box));
        const legs: Piece[] = [
          [step(at, { x: Math.cos(fromRad), y: -Math.sin(fromRad) }, 4), on(fromRad, radius + OVERSHOOT)],
        ];
        const way = toRad > fromRad ? 1 : -1;
        const tangent = (rad: number): Point => ({ x: -Math.sin(rad) * way, y: -Math.cos(rad) * way });
        const heads = [
          head(on(fromRad, radius), tangent(fromRad), 1),
          head(on(toRad, radius), tangent(toRad), -1),
        ];
        return {
          placed: { box, whole: true, lines: [...seen, ...legs], heads, arc: { at, radius, fromRad, toRad } },
          // The last piece of the arc ends on the face.
          strokes: seen.slice(0, -1),
          extensions: legs,
          cost: 3 * level + i + (outside ? 2 : 0),
        };
      }),
    ),
  );
}

const within = (p: Point, box: Placed["box"]) =>
  Math.abs(p.x - box.x) < box.halfWide + 2 && Math.abs(p.y - box.y) < box.halfHigh + 2;

const FARTHER = [0, 8, 18, 30, 46, 66, 90, 120] as const;
const TURNS = [0, 25, -25, 50, -50, 80, -80, 110, -110, 140, -140, 180] as const;

/** Places of a number round its point, or at just `far` from it. */
export function noteChoices(
  one: Pick<AskedNote, "at" | "away" | "half" | "led"> & { readonly far?: number },
  size: Size,
  whole: boolean,
): readonly Choice[] {
  const { at, away, half, led, far } = one;
  return (far === undefined ? FARTHER : [0]).flatMap((farther, level) =>
    (far === undefined ? TURNS : [0]).map((turn, i): Choice => {
      const rad = (turn * Math.PI) / 180;
      const way = {
        x: away.x * Math.cos(rad) - away.y * Math.sin(rad),
        y: away.x * Math.sin(rad) + away.y * Math.cos(rad),
      };
      const reach = reachOf(size, way);
      const off = far ?? half + 4 + reach + farther + (led ? 6 : 0);
      const mid = step(at, way, off);
      const lead: Piece[] =
        off - reach - half > (led ? 3 : 12) ? [[step(at, way, half + 1), step(mid, way, -reach)]] : [];
      return {
        placed: { box: { ...mid, ...size }, whole, lines: lead, heads: [] },
        strokes: lead.map(([a, b]): Piece => [step(a, way, 2), b]),
        extensions: [],
        cost: 4 * level + i + (far === undefined ? 0 : far / 12),
      };
    }),
  );
}
