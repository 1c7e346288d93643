/**
 * The best order among those that can be made: all clear before tight; then fewest changes of clamped end plus changes
 * of face from one bend to the next; then the larger least clearance (design, section 8). Exact, over sets of bends:
 * the best way to a set with a given end and face last used serves every way on from there.
 */
import type { Part } from "../part/part.ts";
import { countOf, formedToward, reversedSet } from "./bendSets.ts";
import { type Allowed, changesBetween, type Hold, type Move, Moves, NO_WAY } from "./moves.ts";
import type { Reach } from "./reach.ts";
import type { SeatTable } from "./seatTable.ts";
import { WidestFirst } from "./widestFirst.ts";

/** Clearances nearer than this are of equal rank. */
const SAME_MM = 1e-6;

/** A best way from the flat blank to one of the goals. */
export interface Way {
  /** The goal: set of bends made. */
  readonly set: number;
  moves(): Move[];
}

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
  const ranking = new Ranking(part, seats, reach, goals);
  // With fewest changes of all and its least clearance over the margin, a way is clear all through and can't be beaten.
  const any = ranking.best(0);
  if (any.widestMm >= marginMm) return any.ways;
  const clear = ranking.best(marginMm);
  return clear.ways.length > 0 ? clear.ways : any.ways;
}

interface Best {
  readonly ways: Way[];
  /** Least clearance on them; Infinity where nothing is measured. */
  readonly widestMm: number;
}

/** The moves allowed, the fewest changes to and from each set and hold, and the fewest from blank to goal. */
interface Frugal {
  readonly allowed: Allowed;
  readonly changes: Uint8Array;
  readonly toGo: Uint8Array;
  readonly fewest: number;
}

/** Clearance of a state, exact below `upToMm`; from there on any value not below it will do. */
type ClearanceOf = (seat: SeatTable, toward: number, away: number, upToMm: number) => number;

class Ranking {
  private readonly moves: Moves;

  constructor(
    part: Part,
    private readonly seats: readonly SeatTable[],
    private readonly reach: Reach,
    private readonly goals: readonly number[],
  ) {
    this.moves = new Moves(part, reach, goals);
  }

  /** Best ways with every clearance at least `leastMm`; none where there is no such way. */
  best(leastMm: number): Best {
    const { goals } = this;
    if (goals[0] === 0) return { ways: [{ set: 0, moves: () => [] }], widestMm: Infinity };
    const allowed = this.over(leastMm);
    const changes = this.moves.fewestChanges(allowed);
    let fewest = NO_WAY;
    for (const goal of goals) {
      for (let hold = 0; hold < 4; hold++) fewest = Math.min(fewest, changes[4 * goal + hold]!);
    }
    if (fewest === NO_WAY) return { ways: [], widestMm: -1 };
    const frugal = { allowed, changes, toGo: this.moves.changesToGo(allowed, fewest), fewest };
    // Against the brake alone, which is cheap, ways are at most too wide: where the part then keeps that far from itself
    // too, its dear distance from itself need not be measured anywhere else.
    const likely = this.widest(frugal, (seat, toward, away) => seat.brakeClearance(toward, away));
    if (likely.ways.every((way) => this.keepsFromItself(way, likely.widestMm))) return likely;
    return this.widest(frugal, (seat, toward, away, upToMm) => seat.clearance(toward, away, upToMm));
  }

  /** Whether the part stays clear of itself by `leastMm` in every bend of a way. */
  private keepsFromItself(way: Way, leastMm: number): boolean {
    let set = 0;
    return way.moves().every(({ bend, clamped }) => {
      const back = reversedSet(set, this.moves.n);
      const towardStart = formedToward("start", bend, set, back, this.moves.n);
      const towardEnd = formedToward("end", bend, set, back, this.moves.n);
      set |= 1 << bend;
      const mm =
        clamped === "start"
          ? this.seats[2 * bend]!.clearance(towardEnd, towardStart, leastMm)
          : this.seats[2 * bend + 1]!.clearance(towardStart, towardEnd, leastMm);
      return mm >= leastMm;
    });
  }

  /**
   * The widest ways to the goals among those with fewest changes. A set and hold is gone on from in the order of the
   * least clearance on the way there, so what is narrower than the best way is never measured.
   */
  private widest(frugal: Frugal, clearanceOf: ClearanceOf): Best {
    const width = new Float64Array(4 * this.moves.sets).fill(-1);
    const from = new Uint8Array(4 * this.moves.sets);
    const lastBend = new Uint8Array(4 * this.moves.sets);
    const goals = new Set(this.goals);
    const queue = new WidestFirst();
    const goneOn = new Uint8Array(4 * this.moves.sets);
    const ends: number[] = [];
    let widestMm = -1;
    this.goOn(
      frugal,
      clearanceOf,
      0,
      0,
      this.lastMovesAllow(frugal, clearanceOf),
      width,
      from,
      lastBend,
      queue,
    );
    while (queue.size > 0) {
      const at = queue.take();
      if (goneOn[at]) continue;
      goneOn[at] = 1;
      const mm = width[at]!;
      if (ends.length > 0 && mm !== widestMm && mm < widestMm - SAME_MM) break;
      if (!goals.has(at >> 2)) {
        this.goOn(frugal, clearanceOf, at >> 2, at & 3, mm, width, from, lastBend, queue);
        continue;
      }
      if (ends.length === 0) widestMm = mm;
      ends.push(at);
      if (this.goals.length === 1) break;
    }
    const ways = ends
      .sort((a, b) => a - b)
      .map((at) => ({ set: at >> 2, moves: () => retrace(at >> 2, at & 3, from, lastBend) }));
    return { ways, widestMm };
  }

  /**
   * The most that any last move leaves: no way is wider, so past that all are alike and the queue dives for the goal.
   * The end is where a part is most in its own and the brake's way, so this is mostly the answer itself.
   */
  private lastMovesAllow({ allowed, changes, fewest }: Frugal, clearanceOf: ClearanceOf): number {
    let most = -1;
    for (const goal of this.goals) {
      for (let bend = 0; bend < this.moves.n; bend++) {
        const set = goal & ~(1 << bend);
        if (set === goal || !this.moves.alive[set]) continue;
        this.moves.from(allowed, set, (_set, next, made, endHeld, hold, toward, away) => {
          if (next !== goal || made !== bend || changes[4 * goal + hold] !== fewest) return;
          most = Math.max(most, clearanceOf(this.seats[2 * bend + endHeld]!, toward, away, Infinity));
        });
      }
    }
    return most;
  }

  /** Puts every frugal move from a set and hold into the queue, as wide as the way there and the move let it be. */
  private goOn(
    { allowed, changes, toGo, fewest }: Frugal,
    clearanceOf: ClearanceOf,
    set: number,
    before: Hold,
    mm: number,
    width: Float64Array,
    from: Uint8Array,
    lastBend: Uint8Array,
    queue: WidestFirst,
  ): void {
    const so = set === 0 ? 0 : changes[4 * set + before]!;
    this.moves.from(allowed, set, (_set, next, bend, endHeld, hold, toward, away) => {
      const cost = so + (set === 0 ? 0 : changesBetween(before, hold));
      const at = 4 * next + hold;
      if (cost !== changes[at] || cost + toGo[at]! !== fewest || mm <= width[at]!) return;
      const through = Math.min(mm, clearanceOf(this.seats[2 * bend + endHeld]!, toward, away, mm));
      if (through <= width[at]!) return;
      width[at] = through;
      from[at] = before;
      lastBend[at] = bend;
      queue.put(at, through, countOf(next));
    });
  }

  /** The moves with clearance of at least `leastMm` that still lead to a goal. */
  private over(leastMm: number): Allowed {
    const { sets } = this.moves;
    const all = { start: this.reach.withStart, end: this.reach.withEnd };
    if (leastMm === 0) return all;
    const allowed = { start: new Int32Array(sets), end: new Int32Array(sets) };
    this.moves.each(all, (set, _next, bend, endHeld, _hold, toward, away) => {
      if (this.seats[2 * bend + endHeld]!.clearance(toward, away, leastMm) < leastMm) return;
      const ways = endHeld ? allowed.end : allowed.start;
      ways[set] = ways[set]! | (1 << bend);
    });
    return allowed;
  }
}

function retrace(goal: number, held: Hold, from: Uint8Array, lastBend: Uint8Array): Move[] {
  const moves: Move[] = [];
  let [set, hold] = [goal, held];
  while (set !== 0) {
    const bend = lastBend[4 * set + hold]!;
    moves.push({ bend, clamped: hold & 1 ? "end" : "start" });
    hold = from[4 * set + hold]!;
    set &= ~(1 << bend);
  }
  return moves.reverse();
}
