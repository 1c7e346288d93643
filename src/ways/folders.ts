/**
 * Parts tried again and again on brakes that change a little: whether each folds, its last order tried first.
 * Exact as findOrder.ts; where the work that may be done runs out, no part is said to fold any more.
 */
import type { Trial } from "../jobFile/change.ts";
import { findOrder } from "./findOrder.ts";
import { Machines } from "./machines.ts";
import type { Work } from "./work.ts";

export class Folders {
  private readonly machines = new Machines();
  private readonly passed: (readonly number[])[] = [];

  constructor(private readonly work: Work) {}

  /** Whether part number `place` folds, as it is tried now. */
  fold(place: number, trial: Trial): boolean {
    if (this.work.isDone) return false;
    const hint = this.passed[place];
    const { machines, work } = this;
    const found = findOrder(trial, {
      leastMm: 0,
      machines,
      mostStates: work.left,
      ...(hint && { hint }),
    });
    work.spend(found.states + trial.part.bends.length ** 2);
    if (found.kind === "order") this.passed[place] = found.bends;
    return found.kind === "order";
  }
}
