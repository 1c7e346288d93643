/**
 * Whether the bends can be made in any order at all, and in which, for parts of many bends and for questions asked again and
 * again. Sets of bends from the flat blank forward and from the finished part back, the smaller front first, until they meet or
 * one of them is empty. Exact, unless the strokes that may be judged run out.
 */
import { Front } from "./front.ts";
import { type BendSet, countOf, type Held, type Judge, SearchStopped, type Watch } from "./judge.ts";
import { bestWays } from "./rank.ts";
import type { Ways } from "./reach.ts";

/** `unknown`: the strokes that may be judged ran out before there was an answer. */
export type Finding =
  /** The sets of bends made, from none to all. */
  | { readonly kind: "order"; readonly sets: readonly BendSet[]; readonly judged: number }
  | { readonly kind: "none" | "unknown"; readonly judged: number };

export interface FindOptions {
  /** The first so many of the judge's wishes are asked of every stroke. */
  readonly wishes?: number;
  /** Orders of sets of bends tried first, held in any way. */
  readonly hints?: readonly (readonly BendSet[])[];
  readonly mostJudged?: number;
  readonly watch?: Watch;
}

/** A dive may judge so many strokes, and the fronts so many before it, in multiples of n²: a straight dive takes n²/2. */
const DIVE = 1;
/** The watcher is asked after so many strokes. */
const STROKES_A_LOOK = 1024;

/** Looks for an order. Throws SearchStopped when the watcher says so. */
export function findOrder<S extends Held>(judge: Judge<S>, options: FindOptions = {}): Finding {
  const finder = new OrderFinder(judge, options);
  const sets = finder.run();
  if (sets === "none" || sets === "unknown") return { kind: sets, judged: finder.judged };
  return { kind: "order", sets, judged: finder.judged };
}

/** The best strokes from set to set, the first `wishes` wishes granted by each. */
export function bestThrough<S extends Held>(
  judge: Judge<S>,
  sets: readonly BendSet[],
  wishes = 0,
): readonly S[] {
  const asked = new Asked(judge, { wishes });
  const ways: Ways<S> = new Map(sets.slice(0, -1).map((set, i) => [set, asked.all(set, set ^ sets[i + 1]!)]));
  return bestWays(judge, ways, new Set([sets.at(-1)!]))[0]!.strokes;
}

/** Strokes asked for one by one, and counted. */
export class Asked<S extends Held> {
  judged = 0;
  /** Each thing that a stroke can make, once. */
  readonly makes: readonly BendSet[];

  constructor(
    readonly judge: Judge<S>,
    private readonly options: Pick<FindOptions, "wishes" | "watch">,
  ) {
    this.makes = [...new Set(judge.strokes)];
  }

  /** All ways to make just these bends next that grant what is wished. */
  all(set: BendSet, makes: BendSet): S[] {
    return this.judge.strokes.flatMap((made, stroke) =>
      made === makes ? this.judge.held(set, stroke).filter((by) => this.isGranted(set, by)) : [],
    );
  }

  /** Whether just these bends can be made next. */
  can(set: BendSet, makes: BendSet): boolean {
    const { strokes } = this.judge;
    const { watch } = this.options;
    for (let stroke = 0; stroke < strokes.length; stroke++) {
      if (strokes[stroke] !== makes) continue;
      this.judged++;
      if (watch && this.judged % STROKES_A_LOOK === 0 && watch.stopped()) throw new SearchStopped();
      if (this.judge.held(set, stroke).some((by) => this.isGranted(set, by))) return true;
    }
    return false;
  }

  private isGranted(set: BendSet, by: S): boolean {
    for (let wish = 0; wish < (this.options.wishes ?? 0); wish++)
      if (!this.judge.grants(wish, set, by)) return false;
    return true;
  }

  /** Depth first from the flat blank, to the finished part or until nothing is left or `most` have been judged. */
  dive(most: number): Front {
    const front = new Front(0, 0, this.judge.bends);
    const whole = 2 ** this.judge.bends - 1;
    while (!front.isEmpty && !front.from.has(whole) && this.judged < most) {
      const set = front.take();
      if (set === undefined) {
        front.level--;
        continue;
      }
      for (const makes of this.makes) {
        const next = set | makes;
        if ((set & makes) !== 0 || front.from.has(next) || !this.can(set, makes)) continue;
        front.put(next, set);
        front.level = Math.max(front.level, countOf(next));
      }
    }
    return front;
  }
}

class OrderFinder<S extends Held> {
  private readonly asked: Asked<S>;
  private readonly whole: BendSet;
  private readonly most: number;
  private readonly fore: Front;
  private readonly aft: Front;

  constructor(
    private readonly judge: Judge<S>,
    private readonly options: FindOptions,
  ) {
    this.asked = new Asked(judge, options);
    this.whole = 2 ** judge.bends - 1;
    this.most = options.mostJudged ?? Number.POSITIVE_INFINITY;
    this.fore = new Front(0, 0, judge.bends);
    this.aft = new Front(this.whole, judge.bends, judge.bends);
  }

  get judged(): number {
    return this.asked.judged;
  }

  /** The sets of an order, from the flat blank to the finished part. */
  run(): BendSet[] | "none" | "unknown" {
    for (const hint of this.options.hints ?? []) {
      const sets = this.along(hint);
      if (sets) return sets;
    }
    // Most parts that fail do so within a bend or two of either end; most that fold do so in many orders.
    const dive = DIVE * this.judge.bends ** 2;
    const soon = this.meet(Math.min(this.most, this.judged + dive));
    if (soon !== "unknown") return soon;
    const front = this.asked.dive(Math.min(this.most, this.judged + dive));
    return front.from.has(this.whole) ? front.back(this.whole).reverse() : this.meet(this.most);
  }

  private along(hint: readonly BendSet[]): BendSet[] | undefined {
    const sets = [0];
    for (const makes of hint) {
      const set = sets.at(-1)!;
      if ((set & makes) !== 0 || !this.asked.can(set, makes)) return undefined;
      sets.push(set | makes);
    }
    return sets.at(-1) === this.whole ? sets : undefined;
  }

  /** Goes on from all sets of as many bends of the smaller front, again and again, until they meet or one has nothing left. */
  private meet(most: number): BendSet[] | "none" | "unknown" {
    const { fore, aft } = this;
    while (fore.level < aft.level) {
      const forward = fore.size < aft.size;
      const front = forward ? fore : aft;
      for (let set = front.take(); set !== undefined; set = front.take()) {
        const met = forward ? this.goOn(set) : this.goBack(set);
        if (met !== undefined) return [...fore.back(met).reverse(), ...aft.back(met).slice(1)];
        if (this.judged >= most) return "unknown";
      }
      front.level += forward ? 1 : -1;
      if (front.isEmpty) return "none";
    }
    return "none";
  }

  /** A set that both fronts have come to, one stroke on from `set`. */
  private goOn(set: BendSet): BendSet | undefined {
    for (const makes of this.asked.makes) {
      const next = set | makes;
      if ((set & makes) !== 0 || this.fore.from.has(next) || !this.asked.can(set, makes)) continue;
      this.fore.put(next, set);
      if (this.aft.from.has(next)) return next;
    }
    return undefined;
  }

  /** A set that both fronts have come to, one stroke back from `set`. */
  private goBack(set: BendSet): BendSet | undefined {
    for (const makes of this.asked.makes) {
      const before = set & ~makes;
      if ((set & makes) !== makes || this.aft.from.has(before) || !this.asked.can(before, makes)) continue;
      this.aft.put(before, set);
      if (this.fore.from.has(before)) return before;
    }
    return undefined;
  }
}
