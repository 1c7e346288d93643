/**
 * The pieces of a seated sheet laid one by one: which faces, ends and corners each has, whole or in parts.
 * Source: a chain of square bends followed on paper.
 */
import { describe, expect, it } from "vitest";
import { FLAT, JOINT, SeatPieces, type Side } from "../../src/contact/seatPieces.ts";
import { OUTSIDE_OF_BEND } from "../../src/contact/strip.ts";
import { F, INSET, laid, type Point, text, WHOLE, wanted } from "./laid.ts";
import { chainWith, seatOnPaper, startAndZone, T } from "./seatOnPaper.ts";

// Flats 20, 10 and 8; the first joint turns up, the second down; both square, r = T = 1, 2 mm of sheet in each.
const moving = chainWith(
  [20, 10, 8],
  [
    { turn: 1, angleDeg: 90 },
    { turn: -1, angleDeg: 90 },
  ],
);
const clamped = chainWith(
  [20, 10, 8],
  [moving, moving].map((_, i) => ({ turn: i ? -1 : 1, angleDeg: 90 }) as const),
  30,
  40,
);
const seat = seatOnPaper({ moving, clamped, pivot: [0.5, 0.25] });

/** Flats 1 and 2 on paper from the first one's start: under face from, to, and its way up. */
type Flat = readonly [from: Point, to: Point, up: Point];
const UPWARD: Point = [0, 1];
const ON_PAPER: readonly { readonly formed: number; readonly flats: readonly [Flat, Flat, Flat] }[] = [
  {
    formed: 0,
    flats: [
      [[0, 0], [20, 0], UPWARD],
      [[22, 0], [32, 0], UPWARD],
      [[34, 0], [42, 0], UPWARD],
    ],
  },
  // Round (20, 2) and up: the under face is 2 off the centre.
  {
    formed: 1,
    flats: [
      [[0, 0], [20, 0], UPWARD],
      [
        [22, 2],
        [22, 12],
        [-1, 0],
      ],
      [
        [22, 14],
        [22, 22],
        [-1, 0],
      ],
    ],
  },
  // Round (32, −1) and down: the under face is 1 off the centre.
  {
    formed: 2,
    flats: [
      [[0, 0], [20, 0], UPWARD],
      [[22, 0], [32, 0], UPWARD],
      [
        [33, -1],
        [33, -9],
        [1, 0],
      ],
    ],
  },
  {
    formed: 3,
    flats: [
      [[0, 0], [20, 0], UPWARD],
      [
        [22, 2],
        [22, 12],
        [-1, 0],
      ],
      [[23, 13], [31, 13], UPWARD],
    ],
  },
];

const [px, py] = [seat.pivot.x, seat.pivot.y];
const PLACE: Record<Side, (point: Point) => Point> = {
  moving: ([x, y]) => [seat.movingTangentX - px + x, y - py],
  clamped: ([x, y]) => [seat.clampedTangentX - px - x, y - py],
};

describe.each(ON_PAPER)("with the joints in $formed made", ({ formed, flats }) => {
  const pieces = new SeatPieces(seat);
  const placed = (side: Side, [from, to, up]: Flat): Flat => {
    const mirror = side === "clamped" ? -1 : 1;
    return [PLACE[side](from), PLACE[side](to), [mirror * up[0], up[1]]];
  };

  it.each([
    ["moving", true],
    ["moving", false],
    ["clamped", true],
    ["clamped", false],
  ] as const)("the %s side, its open corners drawn: %s", (side, open) => {
    for (const k of [0, 1, 2]) {
      const flat = pieces.chainOf(side).flatNumber[k]!;
      const [from, to, up] = placed(side, flats[k]!);
      const far = k === 2 ? "free" : "open";
      const joined = k > 0 && ((formed >> (k - 1)) & 1) === 0;
      const lay = (parts: number) => {
        pieces.element(F, side, k, formed, parts, INSET, open);
        return laid();
      };
      if (k === 0) {
        // The clamped flat ends at its tangent line; the moving one's start is laid by itself.
        const near = open || side === "clamped";
        for (const parts of [FLAT, WHOLE])
          expect(lay(parts)).toEqual(wanted({ from, to, up, near, far }, flat, INSET));
        expect(lay(JOINT)).toEqual({ edges: [], corners: [] });
        continue;
      }
      expect(lay(FLAT)).toEqual(wanted({ from, to, up, near: open, far }, flat, INSET));
      if (joined) {
        const before = placed(side, flats[k - 1]!)[1];
        expect(lay(WHOLE)).toEqual(wanted({ from: before, to, up, near: open, far }, flat, INSET));
        expect(lay(JOINT)).toEqual(
          wanted({ from: before, to: from, up, near: open, far: open ? "closed" : "open" }, flat, INSET),
        );
        expect([F.rounds - F.segments, F.hollows]).toEqual([open ? 0 : -2, 0]);
        continue;
      }
      // A bend's two arcs; with its corners drawn, its start, and its end too where the flat is left out.
      expect(lay(JOINT).edges).toHaveLength(open ? 2 : 0);
      expect([F.rounds, F.hollows]).toEqual([open ? 5 : 1, 1]);
      expect(lay(WHOLE).edges).toHaveLength(2 + Number(open) + Number(far === "free"));
      expect([F.rounds, F.hollows]).toEqual([1 + 2 * Number(open) + 2 * Number(far === "free"), 1]);
      const straight = wanted({ from, to, up, near: false, far }, flat, INSET).edges;
      expect(laid().edges).toEqual(expect.arrayContaining(straight));
    }
  });

  it("marks for the bend zone what is still in the moving flat's run, and nothing else", () => {
    for (const [side, k] of [0, 1, 2].flatMap((k) => [["moving", k] as const, ["clamped", k] as const])) {
      pieces.element(F, side, k, formed, WHOLE, INSET, false);
      const run = side === "moving" && (formed & ((1 << k) - 1)) === 0;
      expect(F.cutRule).toBe(run ? "pastZone" : "none");
    }
  });
});

it("draws no start where the zone leaves some of the run before a bend, and one where it takes it all", () => {
  // θ = 135°: SB = 2·tan 67.5° = 4.83 and BA = 3.53, so the zone ends 1.29 past the start at rest, and farther on the way.
  for (const [mm, bare] of [
    [1, true],
    [1.7, true],
    [1.75, false],
    [9, false],
  ] as const) {
    const one = chainWith([mm, 10], [{ turn: 1, angleDeg: 90 }]);
    const pieces = new SeatPieces(seatOnPaper({ angleDeg: 135, moving: one, clamped: one }));
    for (const [side, open, parts] of [
      ["moving", false, WHOLE],
      ["moving", false, JOINT],
      ["moving", false, FLAT],
      ["moving", true, WHOLE],
      ["clamped", false, WHOLE],
    ] as const) {
      pieces.element(F, side, 1, 1, parts, INSET, open);
      const drawn = bare && side === "moving" && !open && parts !== FLAT;
      const ends = parts & FLAT ? 1 : 0;
      const faces = parts & FLAT ? 2 : 0;
      expect(F.segments, `${mm} ${side} ${parts}`).toBe(faces + ends + Number(open) + Number(drawn));
      if (!drawn) continue;
      // The run's end, from the under face up: the material lies past it.
      const x = one.flatMm[0]! + pieces.seat.movingTangentX;
      const i = F.segments - 1;
      expect(text([F.segX[i]!, F.segY[i]!])).toBe(text([x, T - INSET]));
      expect([F.segUx[i], F.segUy[i]]).toEqual([0, -1]);
      expect(F.segLength[i]).toBeCloseTo(T - 2 * INSET, 9);
      expect(F.segTag[i]).toBe((one.bendNumber[0]! << 2) | OUTSIDE_OF_BEND);
    }
    // With the bend still flat there is no run to take.
    pieces.element(F, "moving", 1, 0, WHOLE, INSET, false);
    expect([F.segments, F.cutRule]).toEqual([3, "pastZone"]);
  }
});

it("does not go lower than its box's corners when the bend is finished", () => {
  for (const angleDeg of [30, 90, 150]) {
    const seat = seatOnPaper({ angleDeg, moving: chainWith([9, 5], [{ turn: -1, angleDeg: 90 }]) });
    const pieces = new SeatPieces(seat);
    pieces.element(F, "moving", 1, 1, WHOLE, INSET, false);
    const [start] = startAndZone(seat, seat.angleRad);
    const slide = start - startAndZone(seat, 0)[0];
    const heights = [F.minX, F.maxX].flatMap((x) =>
      [F.minY, F.maxY].map((y) => Math.sin(seat.angleRad) * (x + slide) + Math.cos(seat.angleRad) * y),
    );
    expect(pieces.lowestFinished(F)).toBeCloseTo(Math.min(...heights), 9);
  }
});
