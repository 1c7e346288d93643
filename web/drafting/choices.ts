/**
 * The places tried for each kind of label, cheapest first in each kind's own order: a dimension line nearer or farther on
 * either side, its figure in it or beyond an end; an arc wider or narrower; a number round its point. In canvas points.
 */
import type { Point } from "../../src/plane/point.ts";
import type { AskedAngle, AskedLength, AskedNote, Choice, Drawn, Placed, Size } from "./asked.ts";
import { type Box, type Piece, reachOf } from "./boxes.ts";

const ARROW = 9;
const ARROW_HALF = 2.6;
/** From the face to the first dimension line, and from line to line. */
const FIRST = 17;
const STEP = 15;
const LEVELS = 6;
const GAP = 2.5;
/** Where in its line a figure is tried. */
const SHARES = [0.5, 0.36, 0.64, 0.24, 0.76] as const;
const OVERSHOOT = 4;

const step = (p: Point, way: Point, far: number): Point => ({ x: p.x + way.x * far, y: p.y + way.y * far });

function head(tip: Point, along: Point, way: 1 | -1): readonly [Point, Point, Point] {
  const foot = step(tip, along, ARROW * way);
  const across = { x: -along.y, y: along.x };
  return [tip, step(foot, across, ARROW_HALF), step(foot, across, -ARROW_HALF)];
}

/** Written out, since thousands are tried for one picture. */
const boxAt = (x: number, y: number, { halfWide, halfHigh }: Size): Box => ({ x, y, halfWide, halfHigh });

/** Dimension lines of a length, of which the share from `seen[0]` to `seen[1]` lies on the canvas. */
export function lengthChoices(one: AskedLength, seen: readonly [number, number]): readonly Choice[] {
  const { from, to, faces, half, size, own } = one;
  const span = Math.hypot(to.x - from.x, to.y - from.y);
  if (span < 1) return [];
  const along = { x: (to.x - from.x) / span, y: (to.y - from.y) / span };
  const choices: Choice[] = [];
  const wide = reachOf(size, along);
  const shares = SHARES.map((t) => seen[0] + t * (seen[1] - seen[0]));
  for (let level = 0; level < LEVELS; level++) {
    for (const side of [1, -1] as const) {
      const across = { x: -along.y * side, y: along.x * side };
      const off = half + FIRST + level * STEP;
      const [p, q] = [step(from, across, off), step(to, across, off)];
      const extensions = () =>
        [from, to].map((end, i): Piece => {
          const face = faces[i] === 0 ? side : faces[i]!;
          return [step(end, across, face * side * half + GAP), step(end, across, off + OVERSHOOT)];
        });
      const heads = (inner: boolean): Placed["heads"] =>
        inner ? [head(p, along, 1), head(q, along, -1)] : [head(p, along, -1), head(q, along, 1)];
      const outer = (faces[0] !== -side ? 0 : 4) + (faces[1] !== -side ? 0 : 4);
      const cost = 4 * level + outer;
      const add = (mid: Point, dear: number, inner: boolean, strokes: () => readonly Piece[]) =>
        choices.push({
          box: boxAt(mid.x, mid.y, size),
          whole: true,
          cost: cost + dear,
          own,
          drawn: () => {
            const drawn = { strokes: strokes(), extensions: extensions(), heads: heads(inner) };
            return { ...drawn, lines: [...drawn.strokes, ...drawn.extensions] };
          },
        });
      shares.forEach((share, i) => {
        const clear = Math.min(share * span, (1 - share) * span) - wide;
        if (clear < ARROW + 3) return;
        const mid = step(p, along, span * share);
        add(mid, i, true, () => [
          [p, step(mid, along, -wide)],
          [step(mid, along, wide), q],
        ]);
      });
      // Beyond an end: arrows from outside, the figure at the longer tail.
      for (const [end, other, way] of [
        [q, p, 1],
        [p, q, -1],
      ] as const) {
        const inner = span > 3.2 * ARROW;
        const tail = inner ? 5 : ARROW + 6;
        add(step(end, along, way * (tail + wide)), 6, inner, () => [
          [inner ? other : step(other, along, -way * (ARROW + 6)), step(end, along, way * tail)],
        ]);
      }
      // Beside the line, on its far side.
      const inner = span > 2.4 * ARROW;
      const beside = step(step(p, along, span * shares[0]!), across, reachOf(size, across) + 3);
      add(beside, 8, inner, () => [inner ? [p, q] : [step(p, along, -ARROW - 5), step(q, along, ARROW + 5)]]);
    }
  }
  return choices;
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
        const box = { ...step(at, away, radius + outside * (reachOf(size, away) + 4)), ...size };
        const drawn = (): Drawn => {
          const count = 10;
          const arc = Array.from({ length: count }, (_, k): Piece => {
            const turn = (toRad - fromRad) / count;
            return [on(fromRad + turn * k, radius), on(fromRad + turn * (k + 1), radius)];
          });
          // A figure in its arc breaks it.
          const seen = outside ? arc : arc.filter(([a, b]) => !within(a, box) && !within(b, box));
          const leg = step(at, { x: Math.cos(fromRad), y: -Math.sin(fromRad) }, 4);
          const way = toRad > fromRad ? 1 : -1;
          const tangent = (rad: number): Point => ({ x: -Math.sin(rad) * way, y: -Math.cos(rad) * way });
          const heads = [
            head(on(fromRad, radius), tangent(fromRad), 1),
            head(on(toRad, radius), tangent(toRad), -1),
          ];
          const extensions: Piece[] = [[leg, on(fromRad, radius + OVERSHOOT)]];
          return {
            lines: [...seen, ...extensions],
            // The last piece of the arc ends on the face.
            strokes: seen.slice(0, -1),
            extensions,
            heads,
            arc: { at, radius, fromRad, toRad },
          };
        };
        return { box, whole: true, cost: 3 * level + i + (outside ? 2 : 0), drawn };
      }),
    ),
  );
}

const within = (p: Point, box: Placed["box"]) =>
  Math.abs(p.x - box.x) < box.halfWide + 2 && Math.abs(p.y - box.y) < box.halfHigh + 2;

const FARTHER = [0, 8, 18, 30, 46, 66, 90, 120] as const;
const TURNS = [0, 25, -25, 50, -50, 80, -80, 110, -110, 140, -140, 180].map((deg) => {
  const rad = (deg * Math.PI) / 180;
  return { cos: Math.cos(rad), sin: Math.sin(rad) };
});

type AskedPoint = Pick<AskedNote, "at" | "half" | "led">;

/** Places of a number round its point. */
export function noteChoices(
  one: AskedPoint & Pick<AskedNote, "away">,
  size: Size,
  whole: boolean,
): readonly Choice[] {
  const { away, half, led } = one;
  return TURNS.flatMap(({ cos, sin }, i) => {
    const way = { x: away.x * cos - away.y * sin, y: away.x * sin + away.y * cos };
    const near = half + 4 + reachOf(size, way) + (led ? 6 : 0);
    return FARTHER.map((farther, level) =>
      atEnd(one, way, near + farther, { size, whole, cost: 4 * level + i }),
    );
  });
}

const NO_LINES: Drawn = { lines: [], strokes: [], extensions: [], heads: [] };

/** A number at just `far` from its point. */
export function atEnd(
  { at, half, led }: AskedPoint,
  way: Point,
  far: number,
  { size, whole, cost }: { readonly size: Size; readonly whole: boolean; readonly cost: number },
): Choice {
  const drawn = (): Drawn => {
    const reach = reachOf(size, way);
    if (far - reach - half <= (led ? 3 : 12)) return NO_LINES;
    const end = step(at, way, far - reach);
    const lead = (from: number): readonly Piece[] => [[step(at, way, half + from), end]];
    return { lines: lead(1), strokes: lead(3), extensions: [], heads: [] };
  };
  return { box: boxAt(at.x + way.x * far, at.y + way.y * far, size), whole, cost, drawn };
}
