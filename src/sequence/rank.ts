/**
 * The best order among those that can be made: all clear before tight; then fewest changes of clamped end plus changes
 * of face from one bend to the next; then the larger least clearance (design, section 8). Exact, over sets of bends:
 * the best way to a set with a given end and face last used serves every way on from there.
 */
import type { End, Part } from "../part/part.ts";
import { formedToward, reversedSet } from "./bendSets.ts";
import type { Reach } from "./reach.ts";
import type { SeatTable } from "./seatTable.ts";

export interface Move {
  readonly bend: number;
  readonly clamped: End;
}

const NONE = 255;

/** How the last bend was held: end clamped (0 start, 1 end) plus 2 where the marked face was up. */
type Hold = number;

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
  const clear = ranking.best(marginMm);
  return clear.length > 0 ? clear : ranking.best(0);
}

/** The moves allowed, the fewest changes to and from each set and hold, and the fewest from blank to goal. */
interface Frugal {
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly changes: Uint8Array;
  readonly toGo: Uint8Array;
  readonly fewest: number;
}

/** Per set and hold: least clearance on the widest way there, and its last move. */
interface Widths {
  readonly width: Float64Array;
  readonly from: Uint8Array;
  readonly lastBend: Uint8Array;
}

class Ranking {
  private readonly n: number;
  private readonly sets: number;
  /** Sets from which a goal can still be reached. */
  private readonly alive: Uint8Array;

  constructor(
    private readonly part: Part,
    private readonly seats: readonly SeatTable[],
    private readonly reach: Reach,
    private readonly goals: readonly number[],
  ) {
    this.n = part.bends.length;
    this.sets = Math.max(...goals) + 1;
    this.alive = new Uint8Array(this.sets);
    this.keepWays();
  }

  /** Marks the sets on some way from the blank to a goal. */
  private keepWays(): void {
    const { alive, reach } = this;
    for (const goal of this.goals) alive[goal] = 1;
    for (let set = this.sets - 1; set >= 0; set--) {
      let ways = reach.withStart[set]! | reach.withEnd[set]!;
      while (ways && !alive[set]) {
        const bit = ways & -ways;
        ways ^= bit;
        if (alive[set | bit]) alive[set] = 1;
      }
    }
  }

  /** Best ways with every clearance at least `leastMm`; none where there is no such way. */
  best(leastMm: number): Way[] {
    const { goals } = this;
    if (goals[0] === 0) return [{ set: 0, moves: () => [] }];
    const [start, end] = this.waysOver(leastMm);
    const changes = this.fewestChanges(start, end);
    let fewest = NONE;
    for (const goal of goals) {
      for (let hold = 0; hold < 4; hold++) fewest = Math.min(fewest, changes[4 * goal + hold]!);
    }
    if (fewest === NONE) return [];
    const frugal: Frugal = { start, end, changes, toGo: this.changesToGo(start, end, fewest), fewest };
    // Measured against the brake alone, which is cheap, no way is wider than it turns out to be: beyond that width the
    // part's distance from itself, which is dear, need not be known.
    const brakeOnly = this.widestWays(frugal, (seat, toward, away) => seat.brakeClearance(toward, away));
    const enough = this.widest(brakeOnly);
    const ways = this.widestWays(frugal, (seat, toward, away, least) =>
      seat.clearance(toward, away, Math.min(least, enough)),
    );
    const widest = this.widest(ways);
    const ends = goals.flatMap((set) =>
      [0, 1, 2, 3].map((hold) => ({ set, hold, mm: ways.width[4 * set + hold]! })),
    );
    return ends
      .filter(({ mm }) => mm === widest || mm > widest - SAME_MM)
      .map(({ set, hold }) => ({ set, moves: () => retrace(set, hold, ways) }));
  }

  private widest({ width }: Widths): number {
    let widest = -1;
    for (const goal of this.goals) {
      for (let hold = 0; hold < 4; hold++) widest = Math.max(widest, width[4 * goal + hold]!);
    }
    return widest;
  }

  /**
   * Widest way to each set and hold among those with fewest changes. `clearanceOf` is asked for a clearance up to some
   * bound; past it any value will do.
   */
  private widestWays(
    { start, end, changes, toGo, fewest }: Frugal,
    clearanceOf: (seat: SeatTable, toward: number, away: number, least: number) => number,
  ): Widths {
    const width = new Float64Array(4 * this.sets).fill(-1);
    const from = new Uint8Array(4 * this.sets);
    const lastBend = new Uint8Array(4 * this.sets);
    this.eachMove(start, end, (set, next, bend, endHeld, hold, toward, away) => {
      // The least clearance on the way so far only caps what follows, so the widest way to here is the one to go on from.
      let best = -1;
      let least = -1;
      for (let before = 0; before < (set === 0 ? 1 : 4); before++) {
        const so = set === 0 ? 0 : changes[4 * set + before]!;
        if (so === NONE) continue;
        const cost = so + (set === 0 ? 0 : changesBetween(before, hold));
        if (cost !== changes[4 * next + hold] || cost + toGo[4 * next + hold]! !== fewest) continue;
        const wide = set === 0 ? Infinity : width[4 * set + before]!;
        if (wide > least) {
          best = before;
          least = wide;
        }
      }
      const known = width[4 * next + hold]!;
      if (least <= known) return;
      const seat = this.seats[2 * bend + endHeld]!;
      if (Math.min(least, seat.brakeClearance(toward, away)) <= known) return;
      const through = Math.min(least, clearanceOf(seat, toward, away, least));
      if (through <= known) return;
      width[4 * next + hold] = through;
      from[4 * next + hold] = best;
      lastBend[4 * next + hold] = bend;
    });
    return { width, from, lastBend };
  }

  /** Masks of the bends that can be made next with clearance of at least `leastMm` and still lead to the goal. */
  private waysOver(leastMm: number): [Int32Array, Int32Array] {
    const start = new Int32Array(this.sets);
    const end = new Int32Array(this.sets);
    this.eachMove(
      this.reach.withStart,
      this.reach.withEnd,
      (set, _next, bend, endHeld, _hold, toward, away) => {
        if (leastMm > 0 && this.seats[2 * bend + endHeld]!.clearance(toward, away, leastMm) < leastMm) return;
        const ways = endHeld ? end : start;
        ways[set] = ways[set]! | (1 << bend);
      },
    );
    return [start, end];
  }

  private fewestChanges(start: Int32Array, end: Int32Array): Uint8Array {
    const changes = new Uint8Array(4 * this.sets).fill(NONE);
    this.eachMove(start, end, (set, next, _bend, _endHeld, hold) => {
      const at = 4 * next + hold;
      if (set === 0) {
        changes[at] = 0;
        return;
      }
      for (let before = 0; before < 4; before++) {
        const so = changes[4 * set + before]!;
        if (so !== NONE) changes[at] = Math.min(changes[at]!, so + changesBetween(before, hold));
      }
    });
    return changes;
  }

  private changesToGo(start: Int32Array, end: Int32Array, most: number): Uint8Array {
    const toGo = new Uint8Array(4 * this.sets).fill(NONE);
    for (const goal of this.goals) toGo.fill(0, 4 * goal, 4 * goal + 4);
    for (let set = this.sets - 1; set > 0; set--) {
      if (!this.alive[set]) continue;
      let ways = start[set]! | end[set]!;
      while (ways) {
        const bit = ways & -ways;
        ways ^= bit;
        const face = this.faceOf(31 - Math.clz32(bit));
        for (let endHeld = 0; endHeld < 2; endHeld++) {
          if (!((endHeld ? end : start)[set]! & bit)) continue;
          const hold = endHeld + face;
          const rest = toGo[4 * (set | bit) + hold]!;
          if (rest > most) continue;
          for (let before = 0; before < 4; before++) {
            toGo[4 * set + before] = Math.min(toGo[4 * set + before]!, rest + changesBetween(before, hold));
          }
        }
      }
    }
    return toGo;
  }

  private eachMove(
    start: Int32Array,
    end: Int32Array,
    visit: (
      set: number,
      next: number,
      bend: number,
      endHeld: 0 | 1,
      hold: Hold,
      formedMoving: number,
      formedClamped: number,
    ) => void,
  ): void {
    const { n, sets, alive } = this;
    for (let set = 0; set < sets; set++) {
      if (!alive[set]) continue;
      const back = reversedSet(set, n);
      let ways = start[set]! | end[set]!;
      while (ways) {
        const bit = ways & -ways;
        ways ^= bit;
        const next = set | bit;
        if (!alive[next]) continue;
        const bend = 31 - Math.clz32(bit);
        const towardStart = formedToward("start", bend, set, back, n);
        const towardEnd = formedToward("end", bend, set, back, n);
        const face = this.faceOf(bend);
        if (start[set]! & bit) visit(set, next, bend, 0, face, towardEnd, towardStart);
        if (end[set]! & bit) visit(set, next, bend, 1, 1 + face, towardStart, towardEnd);
      }
    }
  }

  private faceOf(bend: number): number {
    return this.part.bends[bend]!.turn === "up" ? 2 : 0;
  }
}

function changesBetween(before: Hold, hold: Hold): number {
  const other = before ^ hold;
  return (other & 1) + (other >>> 1);
}

function retrace(goal: number, held: Hold, { from, lastBend }: Widths): Move[] {
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
