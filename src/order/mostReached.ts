/**
 * Most bends that can be made of a part of many bends that can't be finished. A set is reached where some of its bends can be made
 * last and the rest is reached: where the last bends fail that is soon seen from the whole part back, where the first ones do from
 * the flat blank. Exact, unless the strokes that may be judged run out: then the furthest that was seen.
 */
import { Asked } from "./findOrder.ts";
import { mostBends } from "./furthest.ts";
import type { BendSet, Held, Judge, Watch } from "./judge.ts";

export interface MostReached {
  /** The sets on the way, from the flat blank to one of most bends. */
  readonly sets: readonly BendSet[];
  readonly judged: number;
}

/** From the whole part back only such a share is judged before it is tried from the flat blank. */
const BACK_SHARE = 1 / 8;

export function mostReached<S extends Held>(judge: Judge<S>, mostJudged: number, watch?: Watch): MostReached {
  const asked = new Asked(judge, { ...(watch && { watch }) });
  const seen = new Back(asked, mostJudged * BACK_SHARE).most();
  if (seen) return { sets: seen, judged: asked.judged };
  const front = asked.dive(asked.judged + mostJudged);
  const [furthest] = mostBends(front.from.keys());
  return { sets: front.back(furthest!).reverse(), judged: asked.judged };
}

class Back<S extends Held> {
  /** By set: the set it is reached from, or that it is not reached. */
  private readonly known = new Map<BendSet, BendSet | "no">([[0, 0]]);

  constructor(
    private readonly asked: Asked<S>,
    private readonly mostJudged: number,
  ) {}

  /** The sets on the way to one of most bends; undefined where too many strokes would have to be judged. */
  most(): BendSet[] | undefined {
    const { bends } = this.asked.judge;
    const whole = 2 ** bends - 1;
    for (let made = bends - 1; made >= 0; made--) {
      for (const set of setsOf(made, whole)) {
        if (this.isReached(set)) return this.wayTo(set);
        if (this.asked.judged > this.mostJudged) return undefined;
      }
    }
    return undefined;
  }

  private isReached(set: BendSet): boolean {
    const known = this.known.get(set);
    if (known !== undefined) return known !== "no";
    for (const makes of this.asked.makes) {
      const before = set & ~makes;
      if ((set & makes) !== makes || this.known.get(before) === "no") continue;
      if (this.asked.judged > this.mostJudged) return false;
      if (!this.asked.can(before, makes) || !this.isReached(before)) continue;
      this.known.set(set, before);
      return true;
    }
    // Where it was given up nothing is known.
    if (this.asked.judged <= this.mostJudged) this.known.set(set, "no");
    return false;
  }

  private wayTo(set: BendSet): BendSet[] {
    const sets = [set];
    for (let at = set; at !== 0; sets.unshift(at)) at = this.known.get(at) as BendSet;
    return sets;
  }
}

/** All sets of so many bends of the whole, lower ones first. */
function* setsOf(bends: number, whole: BendSet): Generator<BendSet> {
  if (bends === 0) {
    yield 0;
    return;
  }
  for (let set = 2 ** bends - 1; set <= whole; ) {
    yield set;
    const lowest = set & -set;
    const carried = set + lowest;
    set = carried | (((set ^ carried) >>> 2) / lowest);
  }
}
