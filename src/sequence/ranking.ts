/**
 * Orders ranked over sets of bends: the fewest changes, and of these the widest way, looked for from the flat blank and from the
 * goals. The best way to a set with a given end and face last used serves every way on from there.
 */
import { countOf } from "./bendSets.ts";
import {
  type Allowed,
  type AllowedMasks,
  changesBetween,
  type Frugal,
  type Hold,
  type Move,
  type Moves,
} from "./moves.ts";
import type { StateClearance } from "./stateClearance.ts";
import { WaysThere } from "./waysThere.ts";
import { WidestBack } from "./widestBack.ts";
import { WidestFirst } from "./widestFirst.ts";

/** Clearances nearer than this are of equal rank. */
const SAME_MM = 1e-6;

/** A way is found soon within so many times n² looks: a straight dive takes n. */
const SOON = 16;

/** After so many looks from the flat blank the way is looked for from the goals too. */
export const LONG = 1000;

/** A best way from the flat blank to one of the goals. */
export interface Way {
  /** The goal: set of bends made. */
  readonly set: number;
  moves(): Move[];
}

export interface Best {
  readonly ways: Way[];
  /** Least clearance on them; Infinity where nothing is measured. */
  readonly widestMm: number;
}

const NONE: Best = { ways: [], widestMm: -1 };

/** Where the search for the widest way stands. */
interface Widest {
  readonly ways: WaysThere;
  readonly queue: WidestFirst;
  /** Counts the part's distance from itself too. */
  readonly withSelf: boolean;
}

export class Ranking {
  private readonly goals: readonly number[];

  constructor(
    private readonly moves: Moves,
    private readonly clearance: StateClearance,
  ) {
    this.goals = moves.goals;
  }

  /** Best ways by the moves in `all` with every clearance at least `leastMm`; none where there is no such way. */
  best(all: AllowedMasks, leastMm: number): Best {
    const { goals } = this;
    if (goals[0] === 0) return { ways: [{ set: 0, moves: () => [] }], widestMm: Number.POSITIVE_INFINITY };
    if (leastMm > 0 && this.mostOf(() => true) < leastMm) return NONE;
    const allowed = this.over(all, leastMm);
    const frugal = this.moves.frugal(allowed);
    if (!frugal) return NONE;
    return this.widestWays(frugal, this.mostOf(this.moves.endsUsed(frugal)), Number.POSITIVE_INFINITY)!;
  }

  /**
   * The widest ways among those with fewest changes, none of whose moves is wider than `most`. Undefined where that takes
   * more than so many looks.
   */
  widestWays(frugal: Frugal, most: number, looks: number): Best | undefined {
    // Against the brake alone, which is cheap, ways are at most too wide: where one is soon found and the part then keeps
    // that far from itself too, its dear distance from itself need not be measured anywhere else.
    const likely = this.widest(frugal, most, false, Math.min(looks, SOON * this.moves.n ** 2));
    if (likely?.ways.every((way) => this.keepsFromItself(way, likely.widestMm))) return likely;
    return this.widest(frugal, most, true, looks);
  }

  /** Whether the part stays clear of itself by `leastMm` in every bend of a way. */
  private keepsFromItself(way: Way, leastMm: number): boolean {
    let set = 0;
    return way.moves().every(({ bend, clamped }) => {
      const mm = this.clearance.fromSelf(set, bend, clamped === "end" ? 1 : 0, leastMm);
      set |= 1 << bend;
      return mm >= leastMm;
    });
  }

  /**
   * The widest ways to the goals among those with fewest changes. A set and hold is gone on from in the order of the
   * least clearance on the way there, so what is narrower than the best way is never measured. Undefined where that takes
   * more than so many looks.
   */
  private widest(frugal: Frugal, mostOfBends: number, withSelf: boolean, looks: number): Best | undefined {
    const states = 4 * this.moves.sets;
    const so: Widest = { ways: new WaysThere(states), queue: new WidestFirst(), withSelf };
    const goals = new Set(this.goals);
    const goneOn = new Uint8Array(states);
    // No way is wider than its last move, nor than the widest that any of its bends is made: past the least of these all
    // ways are alike, and the queue dives for the goal.
    let most = Math.min(this.lastMovesAllow(frugal, withSelf), mostOfBends);
    this.goOn(frugal, so, 0, 0, most);
    let back: WidestBack | undefined;
    for (let looked = 0; so.queue.size > 0; looked++) {
      if (looked > looks) return undefined;
      if (looked === LONG) back = new WidestBack(this.moves, this.clearance, frugal, most);
      // From either side nothing is wider than the widest still to be gone on from.
      if (back) most = Math.min(most, back.mostMm, so.queue.first.width);
      const through = back?.stepBack(most);
      if (back && through !== undefined)
        return this.found(frugal, so, so.ways.keepAll(back, through), through);
      const at = so.queue.take();
      if (goneOn[at]) continue;
      goneOn[at] = 1;
      const mm = Math.min(most, so.ways.width[at]!);
      if (goals.has(at >> 2)) return this.found(frugal, so, at, mm);
      this.goOn(frugal, so, at >> 2, at & 3, mm);
    }
    return NONE;
  }

  /** A way found, by the set and hold it ends with, and those to other goals that are as wide. */
  private found(frugal: Frugal, so: Widest, at: number, widestMm: number): Best {
    const ends = this.goals.length === 1 ? [at] : this.asWide(frugal, so, widestMm);
    return { ways: ends.map((end) => ({ set: end >> 2, moves: () => so.ways.movesTo(end) })), widestMm };
  }

  /** The goals, with their last holds, to which a frugal way of this width leads, lower sets first. */
  private asWide({ allowed, changes, fewest }: Frugal, so: Widest, widestMm: number): number[] {
    const { ways, withSelf } = so;
    const { width } = ways;
    const least = widestMm - SAME_MM;
    const none = new Uint8Array(width.length);
    /** Whether a way so wide leads to a set and hold; looked for from its last move back, each set and hold once. */
    const leadsTo = (at: number): boolean => {
      if (width[at]! >= least) return true;
      if (none[at]) return false;
      none[at] = 1;
      const [set, hold] = [at >> 2, at & 3];
      const endHeld = hold & 1;
      for (let rest = set; rest !== 0; rest &= rest - 1) {
        const bit = rest & -rest;
        const bend = 31 - Math.clz32(bit);
        const earlier = set ^ bit;
        if (this.moves.faces[bend] !== (hold & 2) || !allowed.has(earlier, bend, endHeld)) continue;
        if (this.clearance.fromBrake(earlier, bend, endHeld) < least) continue;
        if (withSelf && this.clearance.fromSelf(earlier, bend, endHeld, least) < least) continue;
        for (let before = 0; before < 4; before++) {
          const on = changes[4 * earlier + before]! + changesBetween(before, hold) === changes[at];
          if (earlier !== 0 && !(on && leadsTo(4 * earlier + before))) continue;
          ways.keep(at, least, before, bend);
          return true;
        }
      }
      return false;
    };
    return [...this.goals]
      .sort((a, b) => a - b)
      .flatMap((goal) => [0, 1, 2, 3].map((hold) => 4 * goal + hold))
      .filter((at) => changes[at] === fewest && leadsTo(at));
  }

  /** The most that any last move leaves. */
  private lastMovesAllow({ allowed, changes, fewest }: Frugal, withSelf: boolean): number {
    let most = -1;
    for (const goal of this.goals) {
      for (let bend = 0; bend < this.moves.n; bend++) {
        const bit = 1 << bend;
        const set = goal & ~bit;
        if (set === goal) continue;
        for (let endHeld = 0; endHeld < 2; endHeld++) {
          if (changes[4 * goal + endHeld + this.moves.faces[bend]!] !== fewest) continue;
          if (!allowed.has(set, bend, endHeld)) continue;
          let mm = this.clearance.fromBrake(set, bend, endHeld);
          if (withSelf && mm > most)
            mm = Math.min(mm, this.clearance.fromSelf(set, bend, endHeld, Number.POSITIVE_INFINITY));
          most = Math.max(most, mm);
        }
      }
    }
    return most;
  }

  /** The least, over the bends that every goal has, of the most that any hold it is made in can leave. */
  mostOf(isMade: (bend: number, endHeld: number) => boolean): number {
    let most = Number.POSITIVE_INFINITY;
    for (let bend = 0; bend < this.moves.n; bend++) {
      if (this.goals.some((goal) => ((goal >>> bend) & 1) === 0)) continue;
      let ofBend = -1;
      for (let endHeld = 0; endHeld < 2; endHeld++) {
        if (isMade(bend, endHeld)) ofBend = Math.max(ofBend, this.clearance.mostFromBrake(bend, endHeld));
      }
      most = Math.min(most, ofBend);
    }
    return most;
  }

  /** Puts every frugal move from a set and hold into the queue, as wide as the way there and the move let it be. */
  private goOn(frugal: Frugal, so: Widest, set: number, before: Hold, mm: number): void {
    const { allowed, changes, toGo, fewest } = frugal;
    const { queue, withSelf } = so;
    const { width } = so.ways;
    const sofar = set === 0 ? 0 : changes[4 * set + before]!;
    const depth = countOf(set) + 1;
    for (let bend = 0; bend < this.moves.n; bend++) {
      const bit = 1 << bend;
      if ((set & bit) !== 0) continue;
      for (let endHeld = 0; endHeld < 2; endHeld++) {
        const hold = endHeld + this.moves.faces[bend]!;
        const cost = sofar + (set === 0 ? 0 : changesBetween(before, hold));
        const at = 4 * (set | bit) + hold;
        if (cost !== changes[at] || cost + toGo[at]! !== fewest || mm <= width[at]!) continue;
        if (!allowed.has(set, bend, endHeld)) continue;
        let through = Math.min(mm, this.clearance.fromBrake(set, bend, endHeld));
        if (through <= width[at]!) continue;
        if (withSelf) through = Math.min(through, this.clearance.fromSelf(set, bend, endHeld, mm, through));
        if (through <= width[at]!) continue;
        so.ways.keep(at, through, before, bend);
        queue.put(at, through, depth);
      }
    }
  }

  /**
   * The moves with clearance of at least `leastMm` that still lead to a goal: from the goals back, since near the end few
   * sets are wide, and none is measured from where no goal is reached so.
   */
  private over(all: AllowedMasks, leastMm: number): AllowedMasks {
    if (leastMm === 0) return all;
    return this.moves.leadingOn(all, (set, bend, endHeld) => this.isWide(set, bend, endHeld, leastMm));
  }

  /** Whether it is soon seen, from the goals back, that no way keeps `leastMm` all along. */
  noneIsWide(allowed: Allowed, leastMm: number): boolean {
    const wide = new Set(this.goals);
    // A set grows while it is gone through.
    for (const set of wide) {
      if (set === 0 || wide.size > LONG * this.moves.n) return false;
      for (let rest = set; rest !== 0; rest &= rest - 1) {
        const bit = rest & -rest;
        const bend = 31 - Math.clz32(bit);
        const earlier = set ^ bit;
        const leads = (endHeld: number) =>
          allowed.has(earlier, bend, endHeld) && this.isWide(earlier, bend, endHeld, leastMm);
        if (!wide.has(earlier) && (leads(0) || leads(1))) wide.add(earlier);
      }
    }
    return true;
  }

  private isWide(set: number, bend: number, endHeld: number, leastMm: number): boolean {
    if (this.clearance.fromBrake(set, bend, endHeld) < leastMm) return false;
    return this.clearance.fromSelf(set, bend, endHeld, leastMm) >= leastMm;
  }
}
