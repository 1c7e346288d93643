/**
 * The best ways from the flat blank to a goal: first all that is wished, the dearest wish first; then the least cost; then the
 * larger least clearance, measured only where the rank can depend on it. Exact over all orders, since what may follow a set
 * depends on the set and the last hold alone.
 */
import { type BendSet, countOf, type Held, type Judge } from "./judge.ts";
import { type Label, Labels } from "./labels.ts";
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

/** A stroke that leads on to a goal, and what it costs from there on, itself included. */
interface Onward<S extends Held> {
  readonly by: S;
  readonly cost: number;
}

class Ranking<S extends Held> {
  /** By set, higher ones first: what leads on to a goal. */
  private readonly onward = new Map<BendSet, readonly Onward<S>[]>();
  /** By set: of the strokes of one hold the cheapest. */
  private readonly cheapest = new Map<BendSet, readonly Onward<S>[]>();

  constructor(
    private readonly judge: Judge<S>,
    ways: Ways<S>,
    private readonly goals: ReadonlySet<BendSet>,
    wished: number,
  ) {
    for (const [set, strokes] of [...ways].reverse()) {
      const leads = strokes.filter((by) => {
        const next = set | by.makes;
        return (goals.has(next) || this.onward.has(next)) && isGranted(judge, wished, set, by);
      });
      if (leads.length > 0) this.take(set, leads);
    }
  }

  best(): Way<S>[] {
    const first = this.cheapest.get(0);
    if (!first) return [];
    const { judge } = this;
    const rank = this.rankOf(Math.min(...first.map(({ cost }) => cost)));
    const labels = new Labels<S>();
    const settled = new Map<BendSet, Map<number, number>>();
    const found = new Map<BendSet, Label<S>>();
    let leastMm = 0;
    this.goOn({ set: 0, bends: 0, cost: 0, widthMm: this.mostMm(), measured: true }, rank, labels);
    while (labels.size > 0 && labels.first!.widthMm >= leastMm) {
      const label = labels.take();
      const { set, by, before } = label;
      if (!isNews(settled, label)) continue;
      if (!label.measured) {
        const widthMm = judge.clearanceMm(before!.set, by!, label.widthMm);
        if (widthMm < label.widthMm) {
          labels.put({ ...label, widthMm, measured: true });
          continue;
        }
      }
      settle(settled, label);
      if (!this.goals.has(set)) this.goOn(label, rank, labels);
      else if (!found.has(set)) {
        found.set(set, label);
        if (found.size === this.goals.size) break;
        if (found.size === 1) leastMm = label.widthMm - SAME_MM;
      }
    }
    return [...found].sort(([a], [b]) => a - b).map(([goal, label]) => ({ goal, strokes: strokesOf(label) }));
  }

  /** Keeps what leads on from a set, with the least that each stroke costs up to a goal. */
  private take(set: BendSet, leads: readonly S[]): void {
    const onward = leads.map((by) => ({ by, cost: by.cost + this.costAfter(set | by.makes, by) }));
    this.onward.set(set, onward);
    const byHold = new Map<number, Onward<S>>();
    for (const one of onward) {
      const known = byHold.get(one.by.hold);
      if (!known || one.cost < known.cost) byHold.set(one.by.hold, one);
    }
    this.cheapest.set(set, [...byHold.values()]);
  }

  private costAfter(set: BendSet, held: S): number {
    let least = Number.POSITIVE_INFINITY;
    for (const { by, cost } of this.cheapest.get(set) ?? [])
      least = Math.min(least, this.judge.between(held, by) + cost);
    return this.goals.has(set) ? 0 : least;
  }

  private rankOf(cost: number): number {
    return Math.floor(cost / this.judge.costGrain + 0.5);
  }

  /** Puts on all ways that go on from one and may still be of the least cost. */
  private goOn(before: Label<S>, rank: number, labels: Labels<S>): void {
    for (const { by, cost } of this.onward.get(before.set)!) {
      const sofar = before.cost + (before.by ? this.judge.between(before.by, by) : 0);
      if (this.rankOf(sofar + cost) > rank) continue;
      const set = before.set | by.makes;
      labels.put({
        set,
        bends: countOf(set),
        cost: sofar + by.cost,
        widthMm: before.widthMm,
        measured: false,
        by,
        before,
      });
    }
  }

  /** No way is wider than the widest last stroke: past that all are alike, and the widest first dives for the goal. */
  private mostMm(): number {
    let most = 0;
    for (const [set, onward] of this.onward) {
      for (const { by } of onward) {
        if (this.goals.has(set | by.makes))
          most = Math.max(most, this.judge.clearanceMm(set, by, Number.POSITIVE_INFINITY));
      }
    }
    return most;
  }
}

/** Whether no way as wide and as cheap has come to this set and hold. */
function isNews<S extends Held>(
  settled: ReadonlyMap<BendSet, ReadonlyMap<number, number>>,
  { set, by, cost }: Label<S>,
): boolean {
  const known = settled.get(set)?.get(by!.hold);
  return known === undefined || cost < known;
}

function settle<S extends Held>(
  settled: Map<BendSet, Map<number, number>>,
  { set, by, cost }: Label<S>,
): void {
  const known = settled.get(set);
  if (known) known.set(by!.hold, cost);
  else settled.set(set, new Map([[by!.hold, cost]]));
}

function strokesOf<S extends Held>(label: Label<S>): S[] {
  const strokes: S[] = [];
  for (let at: Label<S> | undefined = label; at?.by; at = at.before) strokes.unshift(at.by);
  return strokes;
}
