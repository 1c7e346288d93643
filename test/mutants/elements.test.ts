/**
 * The pieces of a seated sheet laid one by one: which faces, ends and corners each has, whole or in parts, and what the bend
 * zone leaves of the run. Source: a chain of square bends followed on paper; the zone's reach sampled over the sweep.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { FLAT, JOINT, SeatPieces, type Side } from "../../src/contact/seatPieces.ts";
import { END_OF_FLAT, FACE_OF_FLAT, OUTSIDE_OF_BEND } from "../../src/contact/strip.ts";
import { chainWith, type SeatOnPaper, STRIP, seatOnPaper, startAndZone, T } from "./seatOnPaper.ts";

type Point = readonly [number, number];

const INSET = 0.25;
const WHOLE = JOINT | FLAT;
const F = new Features(16, 24, 4);

/** A straight piece on paper: its under face from the bend outward, the way up from it, and which ends are drawn. */
interface Straight {
  readonly from: Point;
  readonly to: Point;
  readonly up: Point;
  readonly near: boolean;
  readonly far: "open" | "closed" | "free";
}

const text = (...points: readonly Point[]) =>
  points.map(([x, y]) => `${(x + 1e-9).toFixed(6)},${(y + 1e-9).toFixed(6)}`).join(" ");

/** Edges with the material to the left, and corners, each with its tag, in any order. */
function wanted({ from, to, up, near, far }: Straight, flat: number, inset: number) {
  const at = ([x, y]: Point, high: number): Point => [x + high * up[0], y + high * up[1]];
  const corners = [at(from, inset), at(to, inset), at(to, T - inset), at(from, T - inset)] as const;
  const [a, b, c, d] = corners;
  const turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
  const face = (flat << 2) | FACE_OF_FLAT;
  const end = far === "free" ? (flat << 2) | END_OF_FLAT : face;
  const edge = (p: Point, q: Point, tag: number) => `${turn > 0 ? text(p, q) : text(q, p)} ${tag}`;
  return {
    edges: [
      edge(a, b, face),
      edge(c, d, face),
      ...(near ? [edge(d, a, face)] : []),
      ...(far === "open" ? [] : [edge(b, c, end)]),
    ].toSorted(),
    corners: [
      ...(near ? [`${text(a)} ${face}`, `${text(d)} ${face}`] : []),
      ...(far === "open" ? [] : [`${text(b)} ${end}`, `${text(c)} ${end}`]),
    ].toSorted(),
  };
}

function laid() {
  const edges = Array.from({ length: F.segments }, (_, i) => {
    const [x, y, long] = [F.segX[i]!, F.segY[i]!, F.segLength[i]!];
    return `${text([x, y], [x + long * F.segUx[i]!, y + long * F.segUy[i]!])} ${F.segTag[i]}`;
  });
  const corners = Array.from({ length: F.rounds }, (_, i) =>
    F.roundR[i] === 0 ? [`${text([F.roundX[i]!, F.roundY[i]!])} ${F.roundTag[i]}`] : [],
  ).flat();
  return { edges: edges.toSorted(), corners: corners.toSorted() };
}

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

const SWEEPS: readonly SeatOnPaper[] = [
  { angleDeg: 135 },
  { angleDeg: 135, sweepDeg: 40 },
  { angleDeg: 120, radius: 3, kFactor: 0.4, pivot: [0.3, 0.4] },
  { angleDeg: 90 },
  { angleDeg: 90, sweepDeg: 92, pivot: [0, -0.5] },
  { angleDeg: 60, sweepDeg: 75, radius: 2, pivot: [0.2, 1.5] },
  { angleDeg: 100, radius: 2, sweepDeg: 140, pivot: [0, 1] },
  { angleDeg: 90, sweepDeg: 60, pivot: [0, 1] },
  { angleDeg: 45, sweepDeg: 30, pivot: [0.4, 0.6] },
];

/** By how much the zone passes the flat's start at most. */
function mostCut(of: SeatOnPaper): number {
  const seat = seatOnPaper(of);
  return Math.max(
    ...Array.from({ length: 4001 }, (_, i) => {
      const [start, zone] = startAndZone(seat, (i * seat.sweepRad) / 4000);
      return zone - start;
    }),
  );
}

it("knows how far the zone takes the run: to the element in which it ends, and no farther", () => {
  let [cut, whole] = [0, 0];
  for (const of of SWEEPS) {
    const most = mostCut(of);
    const uncut = new SeatPieces(seatOnPaper(of));
    uncut.element(F, "moving", 0, 0, WHOLE, INSET, false);
    expect([uncut.startCut === undefined, F.cutRule]).toEqual([most < 0, most < 0 ? "none" : "pastZone"]);
    for (const less of [-1e-3, 1e-3]) {
      const mm = most - less;
      if (mm < 0.01) continue;
      const flats = [
        [mm, 10],
        [mm - 2.5, 0.5, 10],
        [7, mm],
      ];
      for (const [first, ...rest] of flats) {
        if (first! <= 0) continue;
        const joints = rest.map(() => ({ turn: 1, angleDeg: 90 }) as const);
        const pieces = new SeatPieces(seatOnPaper({ ...of, moving: chainWith([first!, ...rest], joints) }));
        let from = 0;
        for (const [k, long] of [first!, ...rest].entries()) {
          const to = from + long + (k > 0 ? STRIP : 0);
          const said = `${JSON.stringify(of)} ${first} ${k}`;
          expect(pieces.cutStart(F, k, 0, INSET), said).toBe(most > from);
          if (most > from) {
            cut++;
            // On the pivot's own line: it rides on the zone's end.
            const { y } = pieces.seat.pivot;
            const tag = (pieces.seat.movingChain.flatNumber[k]! << 2) | FACE_OF_FLAT;
            expect(laid()).toEqual({
              edges: [`${text([0, T - INSET - y], [0, INSET - y])} ${tag}`],
              corners: [`${text([0, INSET - y])} ${tag}`, `${text([0, T - INSET - y])} ${tag}`].toSorted(),
            });
            expect(F.cutRule).toBe("onlyCut");
            // The side itself stays where it was laid.
            pieces.movingStart(F, INSET);
            expect(F.segX[0]).toBeCloseTo(startAndZone(pieces.seat, 0)[0], 9);
            pieces.cutStart(F, k, 0, INSET);
            expect([F.cutFrom, F.cutTo]).toEqual([expect.closeTo(from, 9), expect.closeTo(to, 9)]);
          } else whole++;
          // Past a bend there is no run to be cut.
          if (k > 0) expect(pieces.cutStart(F, k, 1, INSET)).toBe(false);
          from = to;
        }
      }
    }
  }
  expect(Math.min(cut, whole)).toBeGreaterThan(10);
});

it("lays at rest, and begun, what the bend zone leaves of the run", () => {
  const joint = { turn: 1, angleDeg: 90 } as const;
  for (const first of [0.5, 1.2, 1.4, 6])
    for (const fromDeg of [0, 30, 70]) {
      const seat = seatOnPaper({ angleDeg: 135, fromDeg, moving: chainWith([first, 10], [joint]) });
      const pieces = new SeatPieces(seat);
      const [start, zone] = startAndZone(seat, seat.fromRad);
      const [c, s] = [Math.cos(seat.fromRad), Math.sin(seat.fromRad)];
      const place = ([x, y]: Point): Point => [c * x - s * y, s * x + c * y];
      let from = start;
      for (const k of [0, 1]) {
        const to = from + seat.movingChain.flatMm[k]! + (k > 0 ? STRIP : 0);
        if (fromDeg === 0) pieces.movingAtRest(F, k, 0, INSET);
        else pieces.begunElement(F, k, 0, WHOLE, INSET, false);
        const left = Math.max(from, zone);
        const piece: Straight = {
          from: place([left, 0]),
          to: place([to, 0]),
          up: [-s, c],
          near: false,
          far: k === 1 ? "free" : "open",
        };
        const none = { edges: [], corners: [] };
        expect(laid(), `${first} ${fromDeg} ${k}`).toEqual(left < to ? wanted(piece, 10 + k, INSET) : none);
        expect(F.cutRule).toBe("none");
        from = to;
      }
      // Off the run nothing is cut, and no corner is drawn where pieces join.
      const straight = () => [F.segments, F.rounds, F.hollows, F.cutRule];
      if (fromDeg === 0) pieces.movingAtRest(F, 1, 1, INSET);
      else pieces.begunElement(F, 1, 1, WHOLE, INSET, false);
      const bare = mostCut({ angleDeg: 135 }) > first;
      expect(straight()).toEqual([3 + Number(bare), 3 + 2 * Number(bare), 1, "none"]);
      pieces.movingStart(F, INSET);
      expect(straight()).toEqual([1, 2, 0, "onlyUncut"]);
      const x = startAndZone(seat, 0)[0];
      expect(text([F.segX[0]!, F.segY[0]!])).toBe(text([x, T - INSET]));
    }
});

it("lays nothing of a last flat that the zone takes whole, and cuts the run as far as it goes", () => {
  const short = new SeatPieces(seatOnPaper({ angleDeg: 135, moving: chainWith([1], []) }));
  short.movingAtRest(F, 0, 0, INSET);
  expect([F.segments, F.rounds, F.hasCore]).toEqual([0, 0, false]);
  const joints = [1, 1].map(() => ({ turn: 1, angleDeg: 90 }) as const);
  const seat = seatOnPaper({ angleDeg: 135, moving: chainWith([6, 5, 4], joints) });
  const long = new SeatPieces(seat);
  const start = startAndZone(seat, 0)[0];
  // The second joint made: the run ends with the second flat.
  for (const [k, from, to] of [
    [0, 0, start + 6],
    [1, start + 6, start + 13],
  ] as const) {
    long.movingAtRest(F, k, 2, INSET);
    expect(laid()).toEqual(
      wanted({ from: [from, 0], to: [to, 0], up: UPWARD, near: false, far: "open" }, 10 + k, INSET),
    );
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
