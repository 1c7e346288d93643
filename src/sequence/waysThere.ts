/**
 * By set of bends and hold: the widest way there found so far, and how it ends.
 */
import type { Hold, Move } from "./moves.ts";
import type { WidestBack } from "./widestBack.ts";

export class WaysThere {
  /** Least clearance on the way; −1 where none is known. */
  readonly width: Float32Array;
  private readonly from: Uint8Array;
  private readonly lastBend: Uint8Array;

  /** Numbers 4·set + hold, so many of them. */
  constructor(states: number) {
    this.width = new Float32Array(states).fill(-1);
    this.from = new Uint8Array(states);
    this.lastBend = new Uint8Array(states);
  }

  /** Keeps that the way to a set and hold comes through `bend` from the hold before. */
  keep(at: number, mm: number, before: Hold, bend: number): void {
    this.width[at] = mm;
    this.from[at] = before;
    this.lastBend[at] = bend;
  }

  /** Keeps the way that was found from the goals back; gives its last set and hold. */
  keepAll(back: WidestBack, mm: number): number {
    let before = 0;
    for (const { at, bend } of back.way()) {
      this.keep(at, mm, before & 3, bend);
      before = at;
    }
    return before;
  }

  movesTo(at: number): Move[] {
    const moves: Move[] = [];
    let [set, hold] = [at >> 2, at & 3];
    while (set !== 0) {
      const bend = this.lastBend[4 * set + hold]!;
      moves.push({ bend, clamped: hold & 1 ? "end" : "start" });
      hold = this.from[4 * set + hold]!;
      set &= ~(1 << bend);
    }
    return moves.reverse();
  }
}
