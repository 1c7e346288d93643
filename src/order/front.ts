/**
 * A front of the search: sets of bends come to from one end, the flat blank or the finished part.
 */
import { type BendSet, countOf } from "./judge.ts";

/** Sets that were come to, each with the set that it was come to from, and those still to be gone on from by their bends. */
export class Front {
  readonly from = new Map<BendSet, BendSet>();
  private readonly waiting: BendSet[][];

  /** `level`: the bends of the sets to be gone on from first. */
  constructor(
    start: BendSet,
    public level: number,
    most: number,
  ) {
    this.waiting = Array.from({ length: most + 1 }, () => []);
    this.put(start, start);
  }

  get size(): number {
    return this.waiting[this.level]!.length;
  }

  /** Whether nothing is left to go on from. */
  get isEmpty(): boolean {
    return this.waiting.every((sets) => sets.length === 0);
  }

  put(set: BendSet, from: BendSet): void {
    this.from.set(set, from);
    this.waiting[countOf(set)]!.push(set);
  }

  take(): BendSet | undefined {
    return this.waiting[this.level]!.pop();
  }

  /** The sets from one back to where the front started. */
  back(set: BendSet): BendSet[] {
    const sets = [set];
    for (let at = set; this.from.get(at) !== at; ) {
      at = this.from.get(at)!;
      sets.push(at);
    }
    return sets;
  }
}
