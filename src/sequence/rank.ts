/**
 * The best order among those that can be made: all clear before tight; then fewest changes of clamped end plus changes
 * of face from one bend to the next; then the larger least clearance (src/model.md, section 8). Exact, over sets of bends.
 */
import type { Part } from "../part/part.ts";
import { type Allowed, AllowedMasks, Moves } from "./moves.ts";
import { LONG, Ranking, type Way } from "./ranking.ts";
import type { Reach } from "./reach.ts";
import type { SeatTable } from "./seatTable.ts";
import { StateClearance } from "./stateClearance.ts";

/**
 * The best ways from the flat blank to any of the `goals` (sets of equally many bends, all reached): several where their
 * rank is equal, the lower set first; an order clear all through if there is one, else the best tight one.
 */
export function bestWays(
  part: Part,
  seats: readonly SeatTable[],
  reach: Reach,
  goals: readonly number[],
  marginMm: number,
): Way[] {
  const moves = new Moves(part, goals);
  const all = moves.leadingOn(new AllowedMasks(reach.withStart, reach.withEnd));
  const ranking = new Ranking(moves, new StateClearance(seats, moves.n));
  // With fewest changes of all and its least clearance over the margin, a way is clear all through and can't be beaten.
  const any = ranking.best(all, 0);
  if (any.widestMm >= marginMm) return any.ways;
  const clear = ranking.best(all, marginMm);
  return clear.ways.length > 0 ? clear.ways : any.ways;
}

/**
 * The same where such ways are found soon with as few changes as if every bend could be made at any time, and no others can
 * be clear where they are not. Undefined where it is not so.
 */
export function bestWaysSoon(
  part: Part,
  seats: readonly SeatTable[],
  allowed: Allowed,
  goals: readonly number[],
  marginMm: number,
): Way[] | undefined {
  const moves = new Moves(part, goals);
  const ranking = new Ranking(moves, new StateClearance(seats, moves.n));
  const frugal = { ...moves.frugal(moves.every())!, allowed };
  const best = ranking.widestWays(
    frugal,
    ranking.mostOf(() => true),
    LONG * moves.n,
  );
  if (!best || best.ways.length === 0) return undefined;
  return best.widestMm >= marginMm || ranking.noneIsWide(allowed, marginMm) ? best.ways : undefined;
}
