/**
 * The sets of most bends that can be reached, looked for from the whole part back: where its last bends can't be made, few of
 * all sets need be looked at to see it. A set is reached where a bend of it can be made last and the rest is reached.
 */
import { nextOfAsMany } from "./bendSets.ts";
import type { Allowed } from "./moves.ts";

/** Sets with as many bends that are looked into; beyond them the first found stand for the rest. */
export const MOST_SETS = 256;

export class MostReached {
  /** By set: whether it is reached. */
  private readonly known = new Map<number, boolean>([[0, true]]);

  /** Of n bends; `goOn` says whether to look further. */
  constructor(
    private readonly n: number,
    private readonly allowed: Allowed,
    private readonly goOn: () => boolean,
  ) {}

  /** The sets of most bends, lower ones first; none of them has all n bends. Undefined where it was not to be seen. */
  sets(): number[] | undefined {
    const { n } = this;
    for (let made = n; made > 0; made--) {
      const sets: number[] = [];
      const last = ((1 << made) - 1) << (n - made);
      for (let set = (1 << made) - 1; sets.length < MOST_SETS; set = nextOfAsMany(set)) {
        const reached = this.isReached(set);
        if (reached === undefined) return undefined;
        if (reached) sets.push(set);
        if (set === last) break;
      }
      if (sets.length > 0) return made === n ? undefined : sets;
    }
    return [0];
  }

  /** Undefined where it was given up. */
  private isReached(set: number): boolean | undefined {
    const known = this.known.get(set);
    if (known !== undefined) return known;
    if (!this.goOn()) return undefined;
    let reached: boolean | undefined = false;
    for (let rest = set; rest !== 0 && reached === false; rest &= rest - 1) {
      const bit = rest & -rest;
      const bend = 31 - Math.clz32(bit);
      const earlier = set ^ bit;
      if (this.known.get(earlier) === false) continue;
      if (this.allowed.has(earlier, bend, 0) || this.allowed.has(earlier, bend, 1))
        reached = this.isReached(earlier);
    }
    if (reached !== undefined) this.known.set(set, reached);
    return reached;
  }
}
