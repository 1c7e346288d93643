/**
 * The best ways from the flat blank to a goal: first all that is wished, the dearest wish first; then the least cost; then the
 * larger least clearance, measured only where the rank can depend on it. Exact over all orders, since what may follow a set
 * depends on the set and the last hold alone.
 */
import type { BendSet, Held, Judge } from "./judge.ts";
import type { Ways } from "./reach.ts";

/** Clearances nearer than this are of equal rank. */
const SAME_MM = 1e-6;

/** A best way to one of the goals. */
export interface Way<S extends Held> {
  readonly goal: BendSet;
  readonly strokes: readonly S[];
}

/**
 * The best ways to any of the `goals` (sets of equally many bends), one to each goal where ranks are equal; none where no goal is
 * reached.
 */
export function bestWays<S extends Held>(
  judge: Judge<S>,
  ways: Ways<S>,
  goals: ReadonlySet<BendSet>,
): Way<S>[] {
  // What is best of all and has all that is wished can't be beaten.
  const any = new Ranking(judge, ways, goals, 0).best();
  const all = 2 ** judge.wishes - 1;
  if (any.every(({ strokes }) => strokesFrom(strokes).every(([set, by]) => isGranted(judge, all, set, by))))
    return any;
  for (let wished = all; wished > 0; wished--) {
    const best = new Ranking(judge, ways, goals, wished).best();
    if (best.length > 0) return best;
  }
  return any;
}

/** Each stroke with the set that it is made after. */
function strokesFrom<S extends Held>(strokes: readonly S[]): (readonly [set: BendSet, by: S])[] {
  let set = 0;
  return strokes.map((by) => {
    const before = set;
    set |= by.makes;
    return [before, by];
  });
}

/** `wished`: the dearest wish in the highest bit. */
function isGranted<S extends Held>(judge: Judge<S>, wished: number, set: BendSet, by: S): boolean {
  for (let wish = 0; wish < judge.wishes; wish++)
    if ((wished >>> (judge.wishes - 1 - wish)) & 1 && !judge.grants(wish, set, by)) return false;
  return true;
}

/** What leads on from a set to a goal: strokes, what each costs with all that follows, the cheapest of each hold by place. */
interface Onward<S extends Held> {
  readonly strokes: S[];
  readonly costs: number[];
  readonly cheapest: number[];
}

class Ranking<S extends Held> {
  private readonly onward = new Map<BendSet, Onward<S>>();
  private holds = 1;

  constructor(
    private readonly judge: Judge<S>,
    ways: Ways<S>,
    private readonly goals: ReadonlySet<BendSet>,
    wished: number,
  ) {
    for (const goal of goals) this.onward.set(goal, { strokes: [], costs: [], cheapest: [] });
    for (const [set, strokes] of [...ways].reverse()) {
      if (goals.has(set)) continue;
      const on: Onward<S> = { strokes: [], costs: [], cheapest: [] };
      for (const by of strokes) {
        const next = this.onward.get(set | by.makes);
        if (next && (wished === 0 || isGranted(judge, wished, set, by)))
          this.take(on, by, by.cost + this.costAfter(next, by));
      }
      if (on.strokes.length > 0) this.onward.set(set, on);
    }
  }

  /** The best way is widened until none is wider; ways to other goals are as good if they are as wide. */
  best(): Way<S>[] {
    const first = this.onward.get(0);
    if (!first) return [];
    const rank = this.rankOf(first.costs.length > 0 ? Math.min(...first.costs) : 0);
    const most = this.mostMm();
    const dead = new Map<number, number>();
    let widest: S[] = [];
    let leastMm = 0;
    for (let mm = -1; mm < most; leastMm = mm + SAME_MM) {
      const wider = this.wayFrom({ rank, leastMm, within: -1, dead }, 0, undefined, 0);
      if (!wider) break;
      widest = wider;
      mm = Math.min(most, ...strokesFrom(wider).map(([set, by]) => this.judge.clearanceMm(set, by, most)));
    }
    const goalOf = (strokes: readonly S[]) => strokes.reduce((set, { makes }) => set | makes, 0);
    if (this.goals.size === 1) return [{ goal: goalOf(widest), strokes: widest }];
    const least = leastMm - 2 * SAME_MM;
    return [...this.goals].flatMap((goal) => {
      const search = { rank, leastMm: least, within: goal, dead: new Map<number, number>() };
      const strokes = this.wayFrom(search, 0, undefined, 0);
      return strokes ? [{ goal, strokes }] : [];
    });
  }

  private take({ strokes, costs, cheapest }: Onward<S>, by: S, cost: number): void {
    const place = cheapest.findIndex((i) => strokes[i]!.hold === by.hold);
    if (place < 0) cheapest.push(strokes.length);
    else if (cost < costs[cheapest[place]!]!) cheapest[place] = strokes.length;
    strokes.push(by);
    costs.push(cost);
    this.holds = Math.max(this.holds, by.hold + 1);
  }

  private costAfter({ strokes, costs, cheapest }: Onward<S>, held: S): number {
    let least = cheapest.length === 0 ? 0 : Number.POSITIVE_INFINITY;
    for (const i of cheapest) {
      const cost = this.judge.between(held, strokes[i]!) + costs[i]!;
      if (cost < least) least = cost;
    }
    return least;
  }

  private rankOf(cost: number): number {
    return Math.floor(cost / this.judge.costGrain + 0.5);
  }

  /** The strokes of a way on to a goal, depth first; undefined where there is none from this set, hold and cost so far. */
  private wayFrom(search: Search, set: BendSet, before: S | undefined, sofar: number): S[] | undefined {
    const { judge } = this;
    const { strokes, costs } = this.onward.get(set)!;
    if (strokes.length === 0) return [];
    const at = set * this.holds + (before?.hold ?? 0);
    if (sofar >= (search.dead.get(at) ?? Number.POSITIVE_INFINITY)) return undefined;
    for (let i = 0; i < strokes.length; i++) {
      const by = strokes[i]!;
      const next = set | by.makes;
      const cost = sofar + (before ? judge.between(before, by) : 0);
      if ((next & ~search.within) !== 0 || this.rankOf(cost + costs[i]!) > search.rank) continue;
      if (judge.clearanceMm(set, by, search.leastMm) < search.leastMm) continue;
      const rest = this.wayFrom(search, next, by, cost + by.cost);
      if (rest) return [by, ...rest];
    }
    search.dead.set(at, sofar);
    return undefined;
  }

  /** No way is wider than the widest last stroke. */
  private mostMm(): number {
    let most = 0;
    for (const [set, { strokes }] of this.onward) {
      for (const by of strokes)
        if (this.goals.has(set | by.makes))
          most = Math.max(most, this.judge.clearanceMm(set, by, Number.POSITIVE_INFINITY));
    }
    return most;
  }
}

/** Ways of a rank, as wide as said, through subsets of a set; `dead`: by set and hold the least cost from which none leads on. */
interface Search {
  readonly rank: number;
  readonly leastMm: number;
  readonly within: BendSet;
  readonly dead: Map<number, number>;
}
