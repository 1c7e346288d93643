/**
 * The widest way among those with fewest changes, looked for from the goals back to the flat blank: part-made sheets near the
 * end of an order are the ones most in the way, so few sets and holds are as wide as the best way, seen from there.
 * Gone on from the widest first, as in rank.ts, with which it agrees on how wide the best way is.
 */
import { countOf } from "./bendSets.ts";
import { changesBetween, type Frugal, type Hold, type Moves } from "./moves.ts";
import type { StateClearance } from "./stateClearance.ts";
import { WidestFirst } from "./widestFirst.ts";

/** Deeper than any set is far from its goal. */
const MOST_BENDS = 32;

export class WidestBack {
  /** By set and hold: the widest way on from there to a goal, and its next move. */
  private readonly width: Float32Array;
  private readonly nextBend: Uint8Array;
  private readonly nextHold: Uint8Array;
  private readonly goneOn: Uint8Array;
  private readonly queue = new WidestFirst();

  constructor(
    private readonly moves: Moves,
    private readonly clearance: StateClearance,
    private readonly frugal: Frugal,
    mostMm: number,
  ) {
    const states = 4 * moves.sets;
    this.width = new Float32Array(states).fill(-1);
    this.nextBend = new Uint8Array(states);
    this.nextHold = new Uint8Array(states);
    this.goneOn = new Uint8Array(states);
    for (const goal of moves.goals) {
      for (let at = 4 * goal; at < 4 * goal + 4; at++) {
        if (frugal.changes[at] === frugal.fewest) this.put(at, mostMm);
      }
    }
  }

  /** No way is wider than this. */
  get mostMm(): number {
    return this.queue.size > 0 ? this.queue.first.width : -1;
  }

  /** Takes one step back, with nothing counted wider than `mostMm`; whether the flat blank is reached, and how wide the way is. */
  stepBack(mostMm: number): number | undefined {
    if (this.queue.size === 0) return undefined;
    const at = this.queue.take();
    if (this.goneOn[at]) return undefined;
    this.goneOn[at] = 1;
    if (at === 0) return this.width[0]!;
    this.goBack(at >> 2, at & 3, Math.min(mostMm, this.width[at]!));
    return undefined;
  }

  /** The sets and holds on the way found, from the first bend made on, each with the bend that leads there. */
  way(): { readonly at: number; readonly bend: number }[] {
    const steps: { at: number; bend: number }[] = [];
    let [set, hold] = [0, 0];
    while (!this.moves.goals.includes(set)) {
      const at = 4 * set + hold;
      const bend = this.nextBend[at]!;
      hold = this.nextHold[at]!;
      set |= 1 << bend;
      steps.push({ at: 4 * set + hold, bend });
    }
    return steps;
  }

  private goBack(set: number, hold: Hold, mm: number): void {
    const { moves, clearance, width } = this;
    const { allowed } = this.frugal;
    const endHeld = hold & 1;
    for (let rest = set; rest !== 0; rest &= rest - 1) {
      const bit = rest & -rest;
      const bend = 31 - Math.clz32(bit);
      const earlier = set ^ bit;
      if (moves.faces[bend] !== (hold & 2)) continue;
      let least = Number.POSITIVE_INFINITY;
      for (let before = 0; before < 4; before++) {
        if (this.leadsOn(earlier, before, set, hold)) least = Math.min(least, width[4 * earlier + before]!);
      }
      if (least >= mm || !allowed.has(earlier, bend, endHeld)) continue;
      let through = Math.min(mm, clearance.fromBrake(earlier, bend, endHeld));
      if (through > least)
        through = Math.min(through, clearance.fromSelf(earlier, bend, endHeld, mm, through));
      for (let before = 0; before < 4; before++) {
        const at = 4 * earlier + before;
        if (through <= width[at]! || !this.leadsOn(earlier, before, set, hold)) continue;
        this.nextBend[at] = bend;
        this.nextHold[at] = hold;
        this.put(at, through);
      }
    }
  }

  /** Whether a move from an earlier set and hold to this one keeps to fewest changes; the flat blank has been held in none. */
  private leadsOn(earlier: number, before: Hold, set: number, hold: Hold): boolean {
    const { changes } = this.frugal;
    if (earlier === 0) return before === 0 && changes[4 * set + hold] === 0;
    return changes[4 * earlier + before]! + changesBetween(before, hold) === changes[4 * set + hold];
  }

  private put(at: number, mm: number): void {
    this.width[at] = mm;
    this.queue.put(at, mm, MOST_BENDS - countOf(at >> 2));
  }
}
