/**
 * Ways begun, the one to be gone on from first: the widest, of equal ones the one with most bends, of these the cheapest.
 */
import type { BendSet, Held } from "./judge.ts";

/** A way as far as it goes. */
export interface Label<S extends Held> {
  readonly set: BendSet;
  readonly bends: number;
  readonly cost: number;
  /** Least clearance; of a last stroke that is not measured yet, what the way had before. */
  readonly widthMm: number;
  readonly measured: boolean;
  readonly by?: S;
  readonly before?: Label<S>;
}

/** A heap. */
export class Labels<S extends Held> {
  private readonly heap: Label<S>[] = [];

  get size(): number {
    return this.heap.length;
  }

  get first(): Label<S> | undefined {
    return this.heap[0];
  }

  put(label: Label<S>): void {
    const { heap } = this;
    let at = heap.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!goesFirst(label, heap[above]!)) break;
      heap[at] = heap[above]!;
      at = above;
    }
    heap[at] = label;
  }

  take(): Label<S> {
    const { heap } = this;
    const first = heap[0]!;
    const last = heap.pop()!;
    if (heap.length === 0) return first;
    let at = 0;
    for (let below = 1; below < heap.length; below = 2 * at + 1) {
      if (below + 1 < heap.length && goesFirst(heap[below + 1]!, heap[below]!)) below++;
      if (!goesFirst(heap[below]!, last)) break;
      heap[at] = heap[below]!;
      at = below;
    }
    heap[at] = last;
    return first;
  }
}

function goesFirst<S extends Held>(a: Label<S>, b: Label<S>): boolean {
  if (a.widthMm !== b.widthMm) return a.widthMm > b.widthMm;
  if (a.bends !== b.bends) return a.bends > b.bends;
  return a.cost < b.cost;
}
