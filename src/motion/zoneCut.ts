/**
 * How much of the moving flat the bend zone takes: it ends (r + T)·tan(φ/2) past the apex, which may lie beyond the flat's
 * start (src/model.md, section 5). How far past is p(φ) = (cutTan − A)·tan(φ/2) + B·φ − start, with one turn at most. Exact,
 * angles where it passes a length to 1e-12 rad.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import type { Seat } from "./seat.ts";
import { slideAt } from "./slide.ts";

/** Leaf angles, from and to. */
export type AngleRange = readonly [Rad, Rad];

/** How far the zone reaches past the moving flat's start; less than 0 where the flat starts beyond it. */
function pastStart({ bendZoneTan, pivot, movingTangentX, ...slide }: Seat, phiRad: Rad): Mm {
  const cutTan = bendZoneTan - pivot.y;
  return cutTan * Math.tan(phiRad / 2) - (movingTangentX - pivot.x) - slideAt(slide, phiRad);
}

/** Where p turns, (A − cutTan)/2·sec²(φ/2) = B; 0 where it never does. */
function turnRad({ slideTan, slideTurn, bendZoneTan, pivot }: Seat): Rad {
  const squared = (2 * slideTurn) / (slideTan - (bendZoneTan - pivot.y)) - 1;
  return 2 * Math.atan(Math.sqrt(Math.max(0, squared)));
}

/** By how much the zone at most reaches past the moving flat's start from rest to the end of the sweep. */
export function mostCutMm(seat: Seat): Mm {
  const { sweepRad } = seat;
  const turn = turnRad(seat);
  const at = (phiRad: Rad) => pastStart(seat, phiRad);
  return Math.max(at(0), at(sweepRad), turn < sweepRad ? at(turn) : Number.NEGATIVE_INFINITY);
}

/** The leaf angles of the sweep at which the zone ends between two lengths past the moving flat's start. */
export function cutRanges(seat: Seat, fromMm: Mm, toMm: Mm): readonly AngleRange[] {
  const { fromRad, sweepRad } = seat;
  const turn = turnRad(seat);
  const turns = turn > fromRad && turn < sweepRad;
  const legs: readonly AngleRange[] = turns
    ? [
        [fromRad, turn],
        [turn, sweepRad],
      ]
    : [[fromRad, sweepRad]];
  return legs.flatMap(([a, b]): AngleRange[] => {
    const [pa, pb] = [pastStart(seat, a), pastStart(seat, b)];
    if (Math.max(pa, pb) <= fromMm || Math.min(pa, pb) >= toMm) return [];
    const within = (mm: Mm) => Math.min(toMm, Math.max(fromMm, mm));
    const passes = (mm: Mm, past: Mm, end: Rad) => (past === mm ? end : passing(seat, a, b, mm));
    return [[passes(within(pa), pa, a), passes(within(pb), pb, b)]];
  });
}

/** Where p passes a length between two angles between which it only rises or only falls. */
function passing(seat: Seat, a: Rad, b: Rad, mm: Mm): Rad {
  const rises = pastStart(seat, b) > pastStart(seat, a);
  let [before, after] = [a, b];
  while (after - before > 1e-12) {
    const middle = (before + after) / 2;
    if (middle <= before || middle >= after) break;
    if (pastStart(seat, middle) < mm === rises) before = middle;
    else after = middle;
  }
  return (before + after) / 2;
}
