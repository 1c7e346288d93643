/**
 * Whether a part folds on a brake in any order at all, and in which: asked again and again while a limit is closed in on.
 * Sets of bends from the flat blank forward and from the finished part back, the smaller front first, until they meet or
 * one of them is empty: the same yes or no as sequence/search.ts, exact unless the states that may be judged run out.
 */

import type { OrderedBend, Trial } from "../jobFile/change.ts";
import type { Mm } from "../units/quantity.ts";
import { Machines } from "./machines.ts";
import { ENDS, WholeStrokes } from "./wholeStrokes.ts";

/** `unknown`: the states that may be judged ran out before there was an answer. */
export type Finding =
  | { readonly kind: "order"; readonly order: readonly OrderedBend[]; readonly states: number }
  | { readonly kind: "none" | "unknown"; readonly states: number };

export interface OrderSearch {
  /** Every clearance at least this; 0 asks for no contact only. */
  readonly leastMm: Mm;
  /** Orders tried first, with either end. */
  readonly hints?: readonly (readonly OrderedBend[])[];
  readonly mostStates?: number;
  readonly machines?: Machines;
}

/** A dive may judge so many states, and the fronts so many before it, in multiples of n²: a straight dive takes n²/2. */
const DIVE = 1;

/** @example findOrder({ part: trough, brake: bar }, { leastMm: 0 }).kind // "order" */
export function findOrder(trial: Trial, search: OrderSearch): Finding {
  const finder = new OrderFinder(trial, search);
  const order = finder.run();
  if (order === "none" || order === "unknown") return { kind: order, states: finder.states };
  return { kind: "order", order, states: finder.states };
}

class OrderFinder {
  states = 0;
  private readonly n: number;
  private readonly whole: number;
  private readonly most: number;
  private readonly strokes: WholeStrokes;
  /** By which move each set was come to from the flat blank, and by which it goes on to the finished part. */
  private readonly cameBy = new Map<number, number>([[0, 0]]);
  private readonly goesBy: Map<number, number>;
  private fore = [0];
  private aft: number[];
  private levelsBetween: number;

  constructor(
    trial: Trial,
    private readonly search: OrderSearch,
  ) {
    this.n = trial.part.bends.length;
    this.whole = 2 ** this.n - 1;
    this.most = search.mostStates ?? Number.POSITIVE_INFINITY;
    const machine = (search.machines ?? new Machines()).of(trial.brake, trial.part.thicknessMm);
    this.strokes = new WholeStrokes(trial.part, machine, search.leastMm);
    this.goesBy = new Map([[this.whole, 0]]);
    this.aft = [this.whole];
    this.levelsBetween = this.n;
  }

  run(): OrderedBend[] | "none" | "unknown" {
    for (const hint of this.search.hints ?? []) {
      const order = this.along(hint);
      if (order) return order;
    }
    // Most parts that fail do so within a bend or two of either end; most that fold do so in many orders.
    const soon = this.meet(Math.min(this.most, this.states + DIVE * this.n ** 2));
    if (soon !== "unknown") return soon;
    return this.dive() ?? this.meet(this.most);
  }

  /** The clamped end, 1 for start and 2 for end, with which the bend can be made after the others; 0 for neither. */
  private can(set: number, bend: number): 0 | 1 | 2 {
    for (const end of [0, 1] as const) {
      this.states++;
      if (this.strokes.passes(set, bend, end)) return end === 0 ? 1 : 2;
    }
    return 0;
  }

  /** The hint with whichever ends pass; undefined where a bend of it passes with neither. */
  private along(hint: readonly OrderedBend[]): OrderedBend[] | undefined {
    const order: OrderedBend[] = [];
    let set = 0;
    for (const { bend } of hint) {
      const end = this.can(set, bend - 1);
      if (end === 0) return undefined;
      order.push({ bend, clamped: ENDS[end - 1]! });
      set |= 1 << (bend - 1);
    }
    return set === this.whole ? order : undefined;
  }

  /** Depth first, soon given up: most parts that fold do so in many orders. */
  private dive(): OrderedBend[] | undefined {
    const { n, whole } = this;
    const most = Math.min(this.most, this.states + DIVE * n * n);
    const cameBy = new Map<number, number>([[0, 0]]);
    const waiting = [0];
    while (waiting.length > 0) {
      const set = waiting.pop()!;
      if (set === whole) return this.orderTo(set, cameBy);
      for (let bend = 0; bend < n; bend++) {
        const next = set | (1 << bend);
        if (next === set || cameBy.has(next)) continue;
        if (this.states >= most) return undefined;
        const end = this.can(set, bend);
        if (end === 0) continue;
        cameBy.set(next, 2 * bend + end - 1);
        waiting.push(next);
      }
    }
    return undefined;
  }

  /** Takes the smaller front one bend on, again and again, until they meet, one is empty or the states run out. */
  private meet(mostStates: number): OrderedBend[] | "none" | "unknown" {
    while (this.levelsBetween > 0) {
      const forward = this.fore.length < this.aft.length;
      const reached = this.next(forward, mostStates);
      if (reached === undefined) return "unknown";
      if (reached.length === 0) return "none";
      if (forward) this.fore = reached;
      else this.aft = reached;
      this.levelsBetween--;
    }
    const meeting = this.fore.find((set) => this.goesBy.has(set));
    if (meeting === undefined) return "none";
    return [...this.orderTo(meeting, this.cameBy), ...this.orderFrom(meeting)];
  }

  /** All sets one bend on from the front, or one bend back; undefined where the states run out on the way. */
  private next(forward: boolean, mostStates: number): number[] | undefined {
    const known = forward ? this.cameBy : this.goesBy;
    const reached: number[] = [];
    for (const set of forward ? this.fore : this.aft) {
      if (this.states >= mostStates) {
        for (const begun of reached) known.delete(begun);
        return undefined;
      }
      for (let bend = 0; bend < this.n; bend++) {
        const next = set ^ (1 << bend);
        if (forward !== next > set || known.has(next)) continue;
        const end = this.can(Math.min(set, next), bend);
        if (end === 0) continue;
        known.set(next, 2 * bend + end - 1);
        reached.push(next);
      }
    }
    return reached;
  }

  private orderTo(set: number, cameBy: ReadonlyMap<number, number>): OrderedBend[] {
    const order: OrderedBend[] = [];
    for (let at = set; at !== 0; ) {
      const move = cameBy.get(at)!;
      order.unshift({ bend: (move >> 1) + 1, clamped: ENDS[move & 1]! });
      at ^= 1 << (move >> 1);
    }
    return order;
  }

  private orderFrom(set: number): OrderedBend[] {
    const order: OrderedBend[] = [];
    for (let at = set; at !== this.whole; ) {
      const move = this.goesBy.get(at)!;
      order.push({ bend: (move >> 1) + 1, clamped: ENDS[move & 1]! });
      at |= 1 << (move >> 1);
    }
    return order;
  }
}
