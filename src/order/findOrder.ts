/**
 * Whether the bends can be made in any order at all, for parts of many bends and for questions asked again and again. Sets of bends
 * from the flat blank forward and from the goal back, the smaller front first, until they meet or one of them is empty.
 * Exact, unless the strokes that may be judged run out.
 */
import { type BendSet, countOf, type Held, type Judge, SearchStopped, type Watch } from "./judge.ts";
import { bestWays } from "./rank.ts";

/** `unknown`: the strokes that may be judged ran out before there was an answer. */
export type Finding =
  /** The sets of bends made, from none to the goal. */
  | { readonly kind: "order"; readonly sets: readonly BendSet[]; readonly judged: number }
  | { readonly kind: "none" | "unknown"; readonly judged: number };

export interface FindOptions {
  /** The first so many of the judge's wishes are asked of every stroke. */
  readonly wishes?: number;
  /** An order tried first, held in any way: what is made stroke by stroke. */
  readonly hint?: readonly BendSet[];
  /** At least so many bends are to be made, whichever they are; all where it is not said. */
  readonly bends?: number;
  readonly mostJudged?: number;
  readonly watch?: Watch;
}

/** The watcher is asked after so many strokes. */
const STROKES_A_LOOK = 1024;

/** Looks for an order. Throws SearchStopped when the watcher says so. */
export function findOrder<S extends Held>(judge: Judge<S>, options: FindOptions = {}): Finding {
  return new OrderFinder(judge, options).run();
}

/** The best strokes from set to set, the first `wishes` wishes granted by each. */
export function bestThrough<S extends Held>(
  judge: Judge<S>,
  sets: readonly BendSet[],
  wishes = 0,
): readonly S[] {
  const next = (set: BendSet, makes: BendSet) =>
    judge.strokes
      .flatMap((made, stroke) => (made === makes ? judge.held(set, stroke) : []))
      .filter((by) => isWished(judge, wishes, set, by));
  const ways = new Map(sets.slice(1).map((set, i) => [sets[i]!, next(sets[i]!, set ^ sets[i]!)]));
  return bestWays(judge, ways, new Set([sets.at(-1)!]))[0]!.strokes;
}

function isWished<S extends Held>(judge: Judge<S>, wishes: number, set: BendSet, by: S): boolean {
  for (let wish = 0; wish < wishes; wish++) if (!judge.grants(wish, set, by)) return false;
  return true;
}

/** Sets come to from one end, each with the set that it was come to from, and those still to be gone on from by their bends. */
class Front {
  readonly from = new Map<BendSet, BendSet>();
  readonly waiting: BendSet[][];

  /** `level`: the bends of the sets to be gone on from first. */
  constructor(
    starts: Iterable<BendSet>,
    public level: number,
    bends: number,
  ) {
    this.waiting = Array.from({ length: bends + 1 }, () => []);
    for (const start of starts) this.put(start, start);
  }

  put(set: BendSet, from: BendSet): void {
    this.from.set(set, from);
    this.waiting[countOf(set)]!.push(set);
  }

  get size(): number {
    return this.waiting[this.level]!.length;
  }

  take(): BendSet | undefined {
    return this.waiting[this.level]!.pop();
  }

  get isEmpty(): boolean {
    return this.waiting.every((sets) => sets.length === 0);
  }

  /** The sets from one back to where the front started. */
  back(set: BendSet): BendSet[] {
    const sets = [set];
    for (let at = set, from = this.from.get(at)!; from !== at; from = this.from.get(at)!) {
      at = from;
      sets.push(at);
    }
    return sets;
  }
}

export class OrderFinder<S extends Held> {
  judged = 0;
  /** Each thing that a stroke can make, once. */
  private readonly makes: readonly BendSet[];
  private readonly goal: number;
  private readonly most: number;

  constructor(
    private readonly judge: Judge<S>,
    private readonly options: FindOptions,
  ) {
    this.makes = [...new Set(judge.strokes)];
    this.goal = options.bends ?? judge.bends;
    this.most = options.mostJudged ?? Number.POSITIVE_INFINITY;
  }

  run(): Finding {
    const { bends } = this.judge;
    const fore = new Front([0], 0, bends);
    const past = Math.min(bends, this.goal + Math.max(...this.makes.map(countOf)) - 1);
    const aft = new Front(setsOf(this.goal, past, bends), past, bends);
    // Most parts that fail do so within a bend or two of either end; most that fold do so in many orders: a straight dive
    // judges n²/2 strokes.
    const soon = () => Math.min(this.most, this.judged + bends ** 2);
    const isFar = (sets: readonly BendSet[]) => countOf(sets.at(-1)!) >= this.goal;
    let sets: readonly BendSet[] | "none" | undefined = this.along(this.options.hint ?? []);
    if (!isFar(sets)) sets = this.meet(fore, aft, soon());
    if (sets === undefined) {
      const dived = this.dive(soon());
      sets = isFar(dived) ? dived : this.meet(fore, aft, this.most);
    }
    const { judged } = this;
    return typeof sets === "object" ? { kind: "order", sets, judged } : { kind: sets ?? "unknown", judged };
  }

  /** Depth first from the flat blank: the sets on the way to the most bends made. */
  dive(most: number): readonly BendSet[] {
    const front = new Front([0], 0, this.judge.bends);
    let deepest = 0;
    while (!front.isEmpty && this.judged < most && countOf(deepest) < this.goal) {
      front.level = front.waiting.findLastIndex((sets) => sets.length > 0);
      for (const next of this.goOn(front, front.take()!, true))
        if (countOf(next) > countOf(deepest)) deepest = next;
    }
    return front.back(deepest).reverse();
  }

  /** As far as an order goes, held in any way. */
  private along(order: readonly BendSet[]): readonly BendSet[] {
    const sets = [0];
    for (const makes of order) {
      const set = sets.at(-1)!;
      if ((set & makes) !== 0 || !this.can(set, makes)) break;
      sets.push(set | makes);
    }
    return sets;
  }

  /** Goes on from all sets of as many bends of the smaller front, again and again; undefined where too much is judged. */
  private meet(fore: Front, aft: Front, most: number): readonly BendSet[] | "none" | undefined {
    while (fore.level < aft.level) {
      const forward = fore.size < aft.size;
      const [front, other] = forward ? [fore, aft] : [aft, fore];
      for (let set = front.take(); set !== undefined; set = front.take()) {
        const met = this.goOn(front, set, forward).find((next) => other.from.has(next));
        if (met !== undefined) return [...fore.back(met).reverse(), ...aft.back(met).slice(1)];
        if (this.judged >= most) return undefined;
      }
      front.level += forward ? 1 : -1;
      if (front.isEmpty) return "none";
    }
    return "none";
  }

  /** Takes in all sets one stroke on or back from `set`; which are new. */
  private goOn(front: Front, set: BendSet, forward: boolean): BendSet[] {
    return this.makes
      .filter((makes) => {
        const next = set ^ makes;
        if ((set & makes) !== (forward ? 0 : makes) || front.from.has(next)) return false;
        if (!this.can(Math.min(set, next), makes)) return false;
        front.put(next, set);
        return true;
      })
      .map((makes) => set ^ makes);
  }

  /** Whether just these bends can be made next. */
  private can(set: BendSet, makes: BendSet): boolean {
    const { judge, options } = this;
    for (let stroke = 0; stroke < judge.strokes.length; stroke++) {
      if (judge.strokes[stroke] !== makes) continue;
      this.judged++;
      if (options.watch && this.judged % STROKES_A_LOOK === 0) {
        options.watch.progress(Math.min(1, this.judged / this.most));
        if (options.watch.stopped()) throw new SearchStopped();
      }
      if (judge.held(set, stroke).some((by) => isWished(judge, options.wishes ?? 0, set, by))) return true;
    }
    return false;
  }
}

/** All sets of at least and at most so many bends. */
function* setsOf(least: number, most: number, bends: number): Generator<BendSet> {
  for (let set = 0; set < 2 ** bends; set++) {
    const count = countOf(set);
    if (count >= least && count <= most) yield set;
  }
}
