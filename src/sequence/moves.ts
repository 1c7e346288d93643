/**
 * The moves that lead from the flat blank to one of the goals: sets of bends, what can be made next and how it is held, and
 * the fewest changes of clamped end plus face to and from each. One pass over all sets each (src/model.md, section 8).
 */
import type { End, Part } from "../part/part.ts";

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

/** Which moves there are. */
export interface Allowed {
  /** Whether a bend may be made next, `endHeld` 0 with the start clamped, 1 with the end. */
  has(set: number, bend: number, endHeld: number): boolean;
}

/** Per set, masks of the bends that may be made next with the start (the end) clamped. */
export class AllowedMasks implements Allowed {
  constructor(
    readonly start: Int32Array,
    readonly end: Int32Array,
  ) {}

  has(set: number, bend: number, endHeld: number): boolean {
    return (((endHeld ? this.end : this.start)[set]! >>> bend) & 1) === 1;
  }
}

/** The moves allowed, the fewest changes to and from each set and hold, and the fewest from blank to goal. */
export interface Frugal<Moves extends Allowed = Allowed> {
  readonly allowed: Moves;
  readonly changes: Uint8Array;
  readonly toGo: Uint8Array;
  readonly fewest: number;
}

export class Moves {
  readonly n: number;
  readonly sets: number;
  /** By bend: 2 where its marked face is up, else 0. */
  readonly faces: Uint8Array;
  /** The bends whose marked face is up, as a mask. */
  private readonly up: number;

  constructor(
    part: Part,
    readonly goals: readonly number[],
  ) {
    this.n = part.bends.length;
    this.sets = Math.max(...goals) + 1;
    this.faces = Uint8Array.from(part.bends, ({ turn }) => (turn === "up" ? 2 : 0));
    this.up = part.bends.reduce((mask, { turn }, bend) => (turn === "up" ? mask | (1 << bend) : mask), 0);
  }

  /** All moves toward a goal, as if every bend could be made at any time with either end. */
  every(): AllowedMasks {
    const whole = (1 << this.n) - 1;
    const any = Int32Array.from({ length: this.sets }, (_, set) => whole & ~set);
    return this.leadingOn(new AllowedMasks(any, any));
  }

  /** Of the moves from each set those that lead on to a goal, through moves that all pass. */
  leadingOn(
    allowed: AllowedMasks,
    passes: (set: number, bend: number, endHeld: number) => boolean = () => true,
  ): AllowedMasks {
    const { sets } = this;
    const alive = new Uint8Array(sets);
    const kept = new AllowedMasks(new Int32Array(sets), new Int32Array(sets));
    for (const goal of this.goals) alive[goal] = 1;
    for (let set = sets - 1; set >= 0; set--) {
      for (let ways = allowed.start[set]! | allowed.end[set]!; ways !== 0; ways &= ways - 1) {
        const bit = ways & -ways;
        // No way leads through a goal: all goals are of equally many bends.
        if (!alive[set | bit]) continue;
        const bend = 31 - Math.clz32(bit);
        if (allowed.start[set]! & bit && passes(set, bend, 0)) kept.start[set] = kept.start[set]! | bit;
        if (allowed.end[set]! & bit && passes(set, bend, 1)) kept.end[set] = kept.end[set]! | bit;
      }
      if ((kept.start[set]! | kept.end[set]!) !== 0) alive[set] = 1;
    }
    return kept;
  }

  /** The fewest changes by the moves allowed; undefined where these lead to no goal. */
  frugal(allowed: AllowedMasks): Frugal<AllowedMasks> | undefined {
    const changes = this.fewestChanges(allowed);
    let fewest = NO_WAY;
    for (const goal of this.goals) {
      for (let hold = 0; hold < 4; hold++) fewest = Math.min(fewest, changes[4 * goal + hold]!);
    }
    if (fewest === NO_WAY) return undefined;
    return { allowed, changes, toGo: this.changesToGo(allowed, fewest), fewest };
  }

  /** The bends that may be made next, held as said, as a mask. */
  ways(allowed: AllowedMasks, set: number, hold: Hold): number {
    const held = hold & 1 ? allowed.end[set]! : allowed.start[set]!;
    return hold & 2 ? held & this.up : held & ~this.up;
  }

  /** Fewest changes on the way to each set and hold (4·set + hold); NO_WAY where none leads there. */
  fewestChanges(allowed: AllowedMasks): Uint8Array {
    const changes = new Uint8Array(4 * this.sets).fill(NO_WAY);
    for (let set = 0; set < this.sets; set++) {
      if ((allowed.start[set]! | allowed.end[set]!) === 0) continue;
      for (let hold = 0; hold < 4; hold++) {
        let ways = this.ways(allowed, set, hold);
        if (ways === 0) continue;
        const so = set === 0 ? 0 : leastFrom(changes, 4 * set, hold);
        if (so >= NO_WAY) continue;
        for (; ways !== 0; ways &= ways - 1) {
          const at = 4 * (set | (ways & -ways)) + hold;
          if (so < changes[at]!) changes[at] = so;
        }
      }
    }
    return changes;
  }

  /** Fewest changes on the way on to a goal, as far as they are at most `most`. */
  changesToGo(allowed: AllowedMasks, most: number): Uint8Array {
    const toGo = new Uint8Array(4 * this.sets).fill(NO_WAY);
    for (const goal of this.goals) toGo.fill(0, 4 * goal, 4 * goal + 4);
    for (let set = this.sets - 1; set > 0; set--) {
      if ((allowed.start[set]! | allowed.end[set]!) === 0) continue;
      for (let hold = 0; hold < 4; hold++) {
        let rest = NO_WAY;
        for (let ways = this.ways(allowed, set, hold); ways !== 0; ways &= ways - 1) {
          rest = Math.min(rest, toGo[4 * (set | (ways & -ways)) + hold]!);
        }
        if (rest > most) continue;
        for (let before = 0; before < 4; before++) {
          const at = 4 * set + before;
          toGo[at] = Math.min(toGo[at]!, rest + changesBetween(before, hold));
        }
      }
    }
    return toGo;
  }

  /** Which end is ever clamped for which bend on a way with fewest changes. */
  endsUsed({
    allowed,
    changes,
    toGo,
    fewest,
  }: Frugal<AllowedMasks>): (bend: number, endHeld: number) => boolean {
    const used = [0, 0];
    for (let set = 0; set < this.sets; set++) {
      for (let endHeld = 0; endHeld < 2; endHeld++) {
        // Only bends not seen with this end yet need be looked at.
        let ways = (endHeld ? allowed.end : allowed.start)[set]! & ~used[endHeld]!;
        for (; ways !== 0; ways &= ways - 1) {
          const bit = ways & -ways;
          const at = 4 * (set | bit) + endHeld + this.faces[31 - Math.clz32(bit)]!;
          if (changes[at]! + toGo[at]! === fewest) used[endHeld] = used[endHeld]! | bit;
        }
      }
    }
    return (bend, endHeld) => ((used[endHeld]! >>> bend) & 1) === 1;
  }
}

/** Fewest changes to come to a hold from any before it. */
function leastFrom(changes: Uint8Array, at: number, hold: Hold): number {
  let least = NO_WAY;
  for (let before = 0; before < 4; before++) {
    least = Math.min(least, changes[at + before]! + changesBetween(before, hold));
  }
  return least;
}
