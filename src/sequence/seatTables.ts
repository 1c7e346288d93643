/**
 * The tables of every bend with either end clamped. Of a part that is the same from both ends (a channel, a hat, a Z) a bend
 * with one end clamped is its counterpart with the other end clamped, and both share a table.
 */
import type { Brake } from "../brake/brake.ts";
import type { Machine } from "../contact/machine.ts";
import { type Seat, seatFor } from "../motion/seat.ts";
import type { Chain } from "../part/chain.ts";
import type { Part } from "../part/part.ts";
import { SeatTable } from "./seatTable.ts";

/** At 2·bend the table with the start clamped, at the next with the end. */
export function seatTables(part: Part, brake: Brake, machine: Machine): readonly SeatTable[] {
  const n = part.bends.length;
  const withStart = part.bends.map((_, bend) => new SeatTable(seatFor(part, brake, bend, "start"), machine));
  return withStart.flatMap((table, bend) => {
    const seat = seatFor(part, brake, bend, "end");
    const counterpart = withStart[n - 1 - bend]!;
    return [table, isSameSeat(seat, counterpart.seat) ? counterpart : new SeatTable(seat, machine)];
  });
}

/** Whether all of two seats but the numbers of bends and the name of the clamped end is the same. */
export function isSameSeat(a: Seat, b: Seat): boolean {
  return (
    a.thicknessMm === b.thicknessMm &&
    a.insideRadiusMm === b.insideRadiusMm &&
    a.angleRad === b.angleRad &&
    a.fromRad === b.fromRad &&
    a.overbendRad === b.overbendRad &&
    a.sweepRad === b.sweepRad &&
    a.clampedTangentX === b.clampedTangentX &&
    a.movingTangentX === b.movingTangentX &&
    a.noseSetbackMm === b.noseSetbackMm &&
    isSameChain(a.movingChain, b.movingChain) &&
    isSameChain(a.clampedChain, b.clampedChain)
  );
}

function isSameChain(a: Chain, b: Chain): boolean {
  const isSame = (mine: ArrayLike<number>, other: ArrayLike<number>) =>
    mine.length === other.length && Array.prototype.every.call(mine, (figure, k) => figure === other[k]);
  return (
    isSame(a.flatMm, b.flatMm) &&
    isSame(a.allowanceMm, b.allowanceMm) &&
    isSame(a.insideRadiusMm, b.insideRadiusMm) &&
    isSame(a.angleRad, b.angleRad) &&
    isSame(a.turn, b.turn)
  );
}
