/**
 * Judgements told bend by bend, the most telling bend first, and shared by all sets that agree in the bends that decide: what the
 * first few bends tell is worked out once for all sets that begin alike.
 */
import type { BendSet } from "./judge.ts";

/** What is told once the first few bends are known to be made or not. */
export abstract class Told<T extends Told<T>> {
  /** Whether the bends after these change nothing. */
  abstract readonly decides: boolean;
  private ifMade: T | undefined;
  private ifLeft: T | undefined;

  /** What is told once the next bend is known as well. */
  protected abstract next(made: boolean): T;

  on(made: boolean): T {
    if (made) {
      this.ifMade ??= this.next(true);
      return this.ifMade;
    }
    this.ifLeft ??= this.next(false);
    return this.ifLeft;
  }
}

/** Up to so many bends what decides is kept for each set of them. */
const MOST_KEPT = 13;

export class Shared<T extends Told<T>> {
  private readonly lowest: number;
  private readonly mask: BendSet;
  private readonly kept: (T | undefined)[] | undefined;

  /** `bends` in the order in which they are looked at. */
  constructor(
    private readonly bends: readonly number[],
    private readonly first: T,
  ) {
    this.lowest = bends.length === 0 ? 0 : Math.min(...bends);
    this.mask = bends.reduce((mask, bend) => mask | (1 << bend), 0);
    if (this.mask >>> this.lowest < 2 ** MOST_KEPT) this.kept = [];
  }

  /** What decides for a set. */
  of(set: BendSet): T {
    const at = (set & this.mask) >>> this.lowest;
    const known = this.kept?.[at];
    if (known) return known;
    const told = this.upTo(set, ({ decides }) => decides);
    if (this.kept) this.kept[at] = told;
    return told;
  }

  /** What is told of a set once `enough` is told, at the latest when all bends have been looked at. */
  upTo(set: BendSet, enough: (told: T) => boolean): T {
    const { bends } = this;
    let told = this.first;
    for (let i = 0; i < bends.length && !enough(told); i++) told = told.on(((set >>> bends[i]!) & 1) === 1);
    return told;
  }
}
