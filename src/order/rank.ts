/**
 * The best ways from the flat blank to a goal: first all that is wished, the dearest wish first; then the least cost; then the
 * larger least clearance, measured only where the rank can depend on it. Exact over all orders, since what may follow a set
 * depends on the set and the last hold alone.
 */
import { type BendSet, countOf, type Held, type Judge } from "./judge.ts";
import type { Ways } from "./reach.ts";

/** Clearances nearer than this are of equal rank. */
const SAME_MM = 1e-6;

/** A best way to one of the goals. */
export interface Way<S extends Held> {
  readonly goal: BendSet;
  readonly strokes: readonly S[];
}

/**
 * The best ways to any of the `goals` (sets of equally many bends), one to each goal where ranks are equal, lower goals first;
 * none where no goal is reached.
 */
export function bestWays<S extends Held>(
  judge: Judge<S>,
  ways: Ways<S>,
  goals: ReadonlySet<BendSet>,
): Way<S>[] {
  if (goals.has(0)) return [{ goal: 0, strokes: [] }];
  // What is best of all and has all that is wished can't be beaten.
  const any = new Ranking(judge, ways, goals, 0).best();
  const all = 2 ** judge.wishes - 1;
  if (any.every(({ strokes }) => hasWishes(judge, strokes, all))) return any;
  for (let wished = all; wished > 0; wished--) {
    const best = new Ranking(judge, ways, goals, wished).best();
    if (best.length > 0) return best;
  }
  return any;
}

function hasWishes<S extends Held>(judge: Judge<S>, strokes: readonly S[], wished: number): boolean {
  let set = 0;
  return strokes.every((by) => {
    const grants = isGranted(judge, wished, set, by);
    set |= by.makes;
    return grants;
  });
}

/** `wished`: the dearest wish in the highest bit. */
function isGranted<S extends Held>(judge: Judge<S>, wished: number, set: BendSet, by: S): boolean {
  for (let wish = 0; wish < judge.wishes; wish++) {
    if ((wished >>> (judge.wishes - 1 - wish)) & 1 && !judge.grants(wish, set, by)) return false;
  }
  return true;
}

/** A way as far as it goes. */
interface Label<S extends Held> {
  readonly set: BendSet;
  readonly bends: number;
  readonly cost: number;
  /** Least clearance. */
  readonly widthMm: number;
  readonly by?: S;
  readonly before?: Label<S>;
}

/** Keeps what is to be gone on from first at the end: the widest way, of equal ones that with most bends, then the cheapest. */
function putInto<S extends Held>(labels: Label<S>[], label: Label<S>): void {
  let [from, to] = [0, labels.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    const other = labels[middle]!;
    const goesFirst =
      label.widthMm - other.widthMm || label.bends - other.bends || other.cost - label.cost || 1;
    if (goesFirst > 0) from = middle + 1;
    else to = middle;
  }
  labels.splice(from, 0, label);
}

/** What leads on from a set to a goal. */
interface Onward<S extends Held> {
  readonly isGoal: boolean;
  readonly strokes: S[];
  /** What each costs with all that follows. */
  readonly costs: number[];
  /** Of the strokes of one hold the cheapest, by their places. */
  readonly cheapest: number[];
}

class Ranking<S extends Held> {
  private readonly onward = new Map<BendSet, Onward<S>>();

  constructor(
    private readonly judge: Judge<S>,
    ways: Ways<S>,
    private readonly goals: ReadonlySet<BendSet>,
    wished: number,
  ) {
    for (const goal of goals) this.onward.set(goal, { isGoal: true, strokes: [], costs: [], cheapest: [] });
    for (const [set, strokes] of [...ways].reverse()) {
      if (goals.has(set)) continue;
      const on: Onward<S> = { isGoal: false, strokes: [], costs: [], cheapest: [] };
      for (const by of strokes) {
        const next = this.onward.get(set | by.makes);
        if (next && (wished === 0 || isGranted(judge, wished, set, by)))
          take(on, by, by.cost + this.costAfter(next, by));
      }
      if (on.strokes.length > 0) this.onward.set(set, on);
    }
  }

  best(): Way<S>[] {
    const first = this.onward.get(0);
    if (!first) return [];
    const rank = this.rankOf(Math.min(...first.costs));
    const labels: Label<S>[] = [];
    const known = new Map<BendSet, Label<S>[]>();
    const found = new Map<BendSet, Label<S>>();
    let leastMm = 0;
    this.goOn({ set: 0, bends: 0, cost: 0, widthMm: this.mostMm() }, rank, known, labels);
    for (let label = labels.pop(); label && label.widthMm >= leastMm; label = labels.pop()) {
      if (!this.onward.get(label.set)!.isGoal) this.goOn(label, rank, known, labels);
      else if (!found.has(label.set)) {
        if (found.size === 0) leastMm = label.widthMm - SAME_MM;
        found.set(label.set, label);
        if (found.size === this.goals.size) break;
      }
    }
    return [...found].sort(([a], [b]) => a - b).map(([goal, label]) => ({ goal, strokes: strokesOf(label) }));
  }

  private costAfter(set: Onward<S>, held: S): number {
    if (set.isGoal) return 0;
    let least = Number.POSITIVE_INFINITY;
    for (const i of set.cheapest) {
      const cost = this.judge.between(held, set.strokes[i]!) + set.costs[i]!;
      if (cost < least) least = cost;
    }
    return least;
  }

  private rankOf(cost: number): number {
    return Math.floor(cost / this.judge.costGrain + 0.5);
  }

  /** Puts on all ways that go on from one, may still be of the least cost, and are wider or cheaper than those known. */
  private goOn(before: Label<S>, rank: number, known: Map<BendSet, Label<S>[]>, labels: Label<S>[]): void {
    const { judge } = this;
    const { strokes, costs } = this.onward.get(before.set)!;
    for (let i = 0; i < strokes.length; i++) {
      const by = strokes[i]!;
      const sofar = before.cost + (before.by ? judge.between(before.by, by) : 0);
      if (this.rankOf(sofar + costs[i]!) > rank) continue;
      const set = before.set | by.makes;
      const others = known.get(set);
      const cost = sofar + by.cost;
      const isBeaten = (mm: number) =>
        others?.some((one) => one.by!.hold === by.hold && one.widthMm >= mm && one.cost <= cost);
      if (isBeaten(before.widthMm)) continue;
      const widthMm = Math.min(before.widthMm, judge.clearanceMm(before.set, by, before.widthMm));
      if (isBeaten(widthMm)) continue;
      const label = { set, bends: before.bends + countOf(by.makes), cost, widthMm, by, before };
      if (others) others.push(label);
      else known.set(set, [label]);
      putInto(labels, label);
    }
  }

  /** No way is wider than the widest last stroke: past that all are alike, and the widest first dives for the goal. */
  private mostMm(): number {
    let most = 0;
    for (const [set, { strokes }] of this.onward) {
      for (const by of strokes) {
        if (this.onward.get(set | by.makes)!.isGoal)
          most = Math.max(most, this.judge.clearanceMm(set, by, Number.POSITIVE_INFINITY));
      }
    }
    return most;
  }
}

function take<S extends Held>({ strokes, costs, cheapest }: Onward<S>, by: S, cost: number): void {
  const place = cheapest.findIndex((i) => strokes[i]!.hold === by.hold);
  if (place < 0) cheapest.push(strokes.length);
  else if (cost < costs[cheapest[place]!]!) cheapest[place] = strokes.length;
  strokes.push(by);
  costs.push(cost);
}

function strokesOf<S extends Held>(label: Label<S>): S[] {
  const strokes: S[] = [];
  for (let at: Label<S> | undefined = label; at?.by; at = at.before) strokes.unshift(at.by);
  return strokes;
}
