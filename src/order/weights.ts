/**
 * Costs of several kinds as one whole number, the dearest kind in the highest place: sums add up kind by kind, and the smaller
 * number is the better rank. Exact as long as no total passes what it was said to be at most.
 */

export class Weights {
  private readonly weight: readonly number[];

  /**
   * `most`: the largest total of each kind, dearest first, in whole units.
   * @throws RangeError where they don't fit into one exact number
   */
  constructor(private readonly most: readonly number[]) {
    const weight = most.map(() => 1);
    for (let i = most.length - 2; i >= 0; i--) weight[i] = weight[i + 1]! * (most[i + 1]! + 1);
    if (weight[0]! * (most[0]! + 1) > Number.MAX_SAFE_INTEGER) throw new RangeError("costs are too large");
    this.weight = weight;
  }

  /** One number of one whole number a kind. @example new Weights([9, 99]).cost(2, 30) // 230 */
  cost(...kinds: readonly number[]): number {
    return kinds.reduce((sum, kind, i) => sum + kind * this.weight[i]!, 0);
  }

  /** What `cost` was made of. @example new Weights([9, 99]).kinds(230) // [2, 30] */
  kinds(cost: number): number[] {
    return this.weight.map((weight, i) => Math.floor(cost / weight) % (this.most[i]! + 1));
  }
}
