/**
 * Whether a part folds on a brake in any order at all, asked again and again while a limit is closed in on.
 * Depth first over sets of bends with the search's own tables, stopping at the first whole order: the same yes or no
 * as sequence/search.ts, exact, without its count and rank.
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import { judgeStep, type Step } from "../contact/step.ts";
import { seatFor } from "../motion/seat.ts";
import type { End } from "../part/part.ts";
import { formedToward, reversedSet } from "../sequence/bendSets.ts";
import { searchOrders } from "../sequence/search.ts";
import { SeatTable } from "../sequence/seatTable.ts";
import type { Mm } from "../units/quantity.ts";
import type { OrderedBend, Trial } from "./change.ts";

/** Keeps the brake made ready for the checks while only the part changes. */
export class Machines {
  private last: { readonly machine: Machine; readonly thicknessMm: Mm } | undefined;

  of(brake: Brake, thicknessMm: Mm): Machine {
    if (this.last?.machine.brake === brake && this.last.thicknessMm === thicknessMm) return this.last.machine;
    const machine = new Machine(brake, thicknessMm);
    this.last = { machine, thicknessMm };
    return machine;
  }
}

const ENDS: readonly End[] = ["start", "end"];

/** Whether there is an order with every clearance at least `leastMm`; 0 asks for no contact only. */
export function folds({ part, brake }: Trial, leastMm: Mm, machines = new Machines()): boolean {
  const n = part.bends.length;
  const machine = machines.of(brake, part.thicknessMm);
  const seats: (SeatTable | undefined)[] = [];
  const seatOf = (bend: number, end: 0 | 1): SeatTable => {
    const known = seats[2 * bend + end];
    if (known) return known;
    const made = new SeatTable(seatFor(part, brake, bend, ENDS[end]!), machine);
    seats[2 * bend + end] = made;
    return made;
  };
  const can = (set: number, bend: number): boolean => {
    const back = reversedSet(set, n);
    const toward = [formedToward("start", bend, set, back, n), formedToward("end", bend, set, back, n)];
    return ([0, 1] as const).some((end) => {
      const [moving, clamped] = [toward[1 - end]!, toward[end]!];
      const seat = seatOf(bend, end);
      if (!seat.canMake(moving, clamped)) return false;
      return leastMm <= 0 || seat.clearance(moving, clamped, leastMm) >= leastMm;
    });
  };
  const seen = new Uint8Array(1 << n);
  const whole = (1 << n) - 1;
  // Most parts fail at their last bend, whichever that is: looked at first, that saves the way there.
  const last = part.bends.map((_, bend) => can(whole & ~(1 << bend), bend));
  if (!last.includes(true)) return n === 0;
  const waiting = [0];
  while (waiting.length > 0) {
    const set = waiting.pop()!;
    for (let bend = 0; bend < n; bend++) {
      const next = set | (1 << bend);
      if (next === set || seen[next]) continue;
      if (next === whole ? !last[bend] : !can(set, bend)) continue;
      if (next === whole) return true;
      seen[next] = 1;
      waiting.push(next);
    }
  }
  return n === 0;
}

/** How a trial comes out in its best order. */
export interface Outcome {
  readonly verdict: Step["verdict"];
  /** Least clearance over all bends; null where nothing is left to measure. */
  readonly clearanceMm: Mm | null;
  readonly order: readonly OrderedBend[];
}

/** The best order of a trial and how it comes out, or the given order's outcome. */
export function outcomeOf(trial: Trial, marginMm: Mm, given?: readonly OrderedBend[]): Outcome {
  const { part, brake } = trial;
  const order =
    given ??
    searchOrders(part, brake, marginMm).order.map(({ bend, clamped }) => ({ bend: bend + 1, clamped }));
  const machine = new Machine(brake, part.thicknessMm);
  let [done, clearanceMm, tight, hits] = [0, Number.POSITIVE_INFINITY, false, false];
  for (const { bend, clamped } of order) {
    const step = judgeStep(part, brake, done, bend - 1, clamped, marginMm, machine);
    done |= 1 << (bend - 1);
    clearanceMm = Math.min(clearanceMm, step.clearanceMm ?? Number.POSITIVE_INFINITY);
    tight ||= step.verdict === "tight";
    hits ||= step.verdict === "hits";
  }
  return {
    verdict: hits ? "hits" : tight ? "tight" : "clear",
    clearanceMm: clearanceMm === Number.POSITIVE_INFINITY ? null : clearanceMm,
    order,
  };
}
