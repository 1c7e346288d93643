/**
 * The moves that lead from the flat blank to one of the goals: sets of bends, what can be made next and how it is held, and
 * the fewest changes of clamped end plus face to and from each. One pass over all sets each (design, section 8).
 */
import type { End, Part } from "../part/part.ts";
import { formedToward, reversedSet } from "./bendSets.ts";
import type { Reach } from "./reach.ts";

export interface Move {
  readonly bend: number;
  readonly clamped: End;
}

export const NO_WAY = 255;

/** How the last bend was held: end clamped (0 start, 1 end) plus 2 where the marked face was up. */
export type Hold = number;

/** Changes from one hold to the next. */
export function changesBetween(before: Hold, hold: Hold): number {
  const other = before ^ hold;
  return (other & 1) + (other >>> 1);
}

/** Per set, masks of the bends that may be made next with the start (the end) clamped. */
export interface Allowed {
  readonly start: Int32Array;
  readonly end: Int32Array;
}

/** A bend made from `set`, held as said, and the joints formed on the two sides then. */
export type Visit = (
  set: number,
  next: number,
  bend: number,
  endHeld: 0 | 1,
  hold: Hold,
  formedMoving: number,
  formedClamped: number,
) => void;

export class Moves {
  readonly n: number;
  readonly sets: number;
  /** Sets from which a goal can still be reached. */
  readonly alive: Uint8Array;

  constructor(
    private readonly part: Part,
    private readonly reach: Reach,
    readonly goals: readonly number[],
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

  /** Every move from every set that is alive, lower sets first. */
  each(allowed: Allowed, visit: Visit): void {
    for (let set = 0; set < this.sets; set++) if (this.alive[set]) this.from(allowed, set, visit);
  }

  /** Every move from one set. */
  from({ start, end }: Allowed, set: number, visit: Visit): void {
    const { n } = this;
    const back = reversedSet(set, n);
    let ways = start[set]! | end[set]!;
    while (ways) {
      const bit = ways & -ways;
      ways ^= bit;
      const next = set | bit;
      if (!this.alive[next]) continue;
      const bend = 31 - Math.clz32(bit);
      const towardStart = formedToward("start", bend, set, back, n);
      const towardEnd = formedToward("end", bend, set, back, n);
      const face = this.faceOf(bend);
      if (start[set]! & bit) visit(set, next, bend, 0, face, towardEnd, towardStart);
      if (end[set]! & bit) visit(set, next, bend, 1, 1 + face, towardStart, towardEnd);
    }
  }

  /** Fewest changes on the way to each set and hold (4·set + hold); NO_WAY where none leads there. */
  fewestChanges(allowed: Allowed): Uint8Array {
    const changes = new Uint8Array(4 * this.sets).fill(NO_WAY);
    this.each(allowed, (set, next, _bend, _endHeld, hold) => {
      const at = 4 * next + hold;
      if (set === 0) {
        changes[at] = 0;
        return;
      }
      for (let before = 0; before < 4; before++) {
        const so = changes[4 * set + before]!;
        if (so !== NO_WAY) changes[at] = Math.min(changes[at]!, so + changesBetween(before, hold));
      }
    });
    return changes;
  }

  /** Fewest changes on the way on to a goal, as far as they are at most `most`. */
  changesToGo({ start, end }: Allowed, most: number): Uint8Array {
    const toGo = new Uint8Array(4 * this.sets).fill(NO_WAY);
    for (const goal of this.goals) toGo.fill(0, 4 * goal, 4 * goal + 4);
    for (let set = this.sets - 1; set > 0; set--) {
      if (!this.alive[set]) continue;
      let ways = start[set]! | end[set]!;
      while (ways) {
        const bit = ways & -ways;
        ways ^= bit;
        if (!this.alive[set | bit]) continue;
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

  private faceOf(bend: number): number {
    return this.part.bends[bend]!.turn === "up" ? 2 : 0;
  }
}
