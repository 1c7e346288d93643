/**
 * Judgements told bend by bend, the most telling bend first, and shared by all sets that agree in the bends that decide: what the
 * first few bends tell is worked out once for all sets that begin alike.
 */
import type { BendSet } from "./judge.ts";

interface Beginning<T> {
  readonly told: T;
  made?: Beginning<T>;
  left?: Beginning<T>;
}

export class Shared<T> {
  private readonly begun: Beginning<T>;

  /** `bends` in the order in which they are looked at; `next` goes on from what is told before one of them. */
  constructor(
    private readonly bends: readonly number[],
    first: T,
    private readonly next: (before: T, made: boolean) => T,
  ) {
    this.begun = { told: first };
  }

  /** What is told of a set once that `decides`, at the latest when all bends have been looked at. */
  of(set: BendSet, decides: (told: T) => boolean): T {
    let at = this.begun;
    for (let i = 0; i < this.bends.length && !decides(at.told); i++) {
      if ((set >>> this.bends[i]!) & 1) at = at.made ??= { told: this.next(at.told, true) };
      else at = at.left ??= { told: this.next(at.told, false) };
    }
    return at.told;
  }
}
