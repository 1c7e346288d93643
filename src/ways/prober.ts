/**
 * Runs changed jobs for the search for ways out: does it fold now, in which order, and how does it come out?
 * Remembers the order that passed last, which is tried first, and counts the work.
 * Exact, up to MOST_STATES a job: beyond, no order found is not yet proof that there is none.
 */

import type { Change, OrderedBend, Trial, Tryout } from "../jobFile/change.ts";
import type { Way, WayKind } from "../jobFile/way.ts";
import { MOST_RANKED } from "../section/searchSection.ts";
import type { Mm } from "../units/quantity.ts";
import { type Finding, findOrder } from "./findOrder.ts";
import { type Outcome, outcomeOf } from "./folds.ts";
import { type Goal, reaches } from "./handling.ts";
import type { Machines } from "./machines.ts";
import type { Work } from "./work.ts";

export interface ProberSetting {
  readonly trial: Trial;
  /** The user's own order, where the job gives one. */
  readonly own?: readonly OrderedBend[];
  /** The order that the check of the job came to, as far as it got. */
  readonly reached: readonly OrderedBend[];
  readonly goal: Goal;
  readonly tryout: Tryout;
  readonly machines: Machines;
  readonly work: Work;
}

/** A whole way, but for what it costs. */
export type ProvedWay = Omit<Way, "cost"> & { readonly verdict: "clear" | "tight" };

/** One changed job may take so many states before it is given up. */
const MOST_STATES = 60_000;

export class Prober {
  private readonly bends: number;
  /** Bends in the order that passed last, from 1. */
  private passed: readonly number[];

  constructor(private readonly setting: ProberSetting) {
    this.bends = setting.trial.part.bends.length;
    this.passed = wholeOrder(setting.reached, this.bends);
  }

  get isDone(): boolean {
    return this.setting.work.isDone;
  }

  /** Whether the job folds with these changes. A job that cannot be is none. */
  passes(changes: readonly Change[], leastMm: Mm = this.setting.goal.leastMm): boolean {
    return this.find(changes, leastMm).kind === "order";
  }

  /** Whether it is proved that no order folds the job with these changes. */
  fails(changes: readonly Change[]): boolean {
    return this.find(changes, this.setting.goal.leastMm).kind === "none";
  }

  /** The way that these changes make, run again whole; undefined where it falls short of the goal. */
  prove(kind: WayKind, changes: readonly Change[]): ProvedWay | undefined {
    const trial = this.setting.tryout(changes);
    const outcome = trial && this.outcome(trial);
    if (!outcome || !reaches(outcome, this.setting.goal)) return undefined;
    const { verdict, clearanceMm, order } = outcome;
    return { kind, changes: this.completed(changes, order), verdict, clearanceMm, order };
  }

  /**
   * A user's own order that failed must not stay in the changed job. Where not all orders are ranked, the one that
   * was found goes with it.
   */
  completed(changes: readonly Change[], order?: readonly OrderedBend[]): Change[] {
    if (this.bends > MOST_RANKED && order) return [...changes, { kind: "order", order }];
    return this.setting.own ? [...changes, { kind: "order", order: null }] : [...changes];
  }

  private find(changes: readonly Change[], leastMm: Mm): Finding {
    const trial = this.setting.tryout(changes);
    return trial ? this.findIn(trial, leastMm) : { kind: "none", states: 0 };
  }

  private findIn(trial: Trial, leastMm: Mm): Finding {
    const { work, machines } = this.setting;
    const found = findOrder(trial, { leastMm, hint: this.passed, mostStates: MOST_STATES, machines });
    // Laying out what each bend needs costs as much as judging some states.
    work.spend(found.states + this.bends ** 2);
    if (found.kind === "order") this.passed = found.bends;
    return found;
  }

  private outcome(trial: Trial): Outcome | undefined {
    const { marginMm, leastMm } = this.setting.goal;
    if (this.bends <= MOST_RANKED) return outcomeOf(trial, marginMm);
    for (const mm of leastMm < marginMm ? [marginMm, leastMm] : [leastMm]) {
      const found = this.findIn(trial, mm);
      if (found.kind === "order") return outcomeOf(trial, marginMm, found.order());
    }
    return undefined;
  }
}

/** An order as far as it got, with the bends that it never came to at its end. */
function wholeOrder(reached: readonly OrderedBend[], bends: number): number[] {
  const all = Array.from({ length: bends }, (_, i) => i + 1);
  return [...new Set([...reached.map(({ bend }) => bend), ...all])];
}
