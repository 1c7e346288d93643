/**
 * What the bend zone leaves of the moving side's run, at rest, begun and on the way. Source: the zone's reach and the flat's start
 * by the formulas of src/model.md, section 5, sampled over the sweep.
 */
import { expect, it } from "vitest";
import { SeatPieces } from "../../src/contact/seatPieces.ts";
import { FACE_OF_FLAT } from "../../src/contact/strip.ts";
import { F, INSET, laid, type Point, type Straight, text, WHOLE, wanted } from "./laid.ts";
import { chainWith, type SeatOnPaper, STRIP, seatOnPaper, startAndZone, T } from "./seatOnPaper.ts";

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
      wanted({ from: [from, 0], to: [to, 0], up: [0, 1], near: false, far: "open" }, 10 + k, INSET),
    );
  }
});
