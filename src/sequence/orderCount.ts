/**
 * In how many orders each set of bends is reached. Exact: carried in two parts, low 2^48 and the rest, good up to 2^101
 * (20!·2^20 is under 2^82).
 */

const LOW = 2 ** 48;

export class OrderCount {
  private readonly low: Float64Array;
  private readonly high: Float64Array;

  /** Of so many sets; the empty one is reached in one order. */
  constructor(sets: number) {
    this.low = new Float64Array(sets);
    this.high = new Float64Array(sets);
    this.low[0] = 1;
  }

  /** Counts each order that reaches `from` as `ways` orders that reach `set`. */
  add(set: number, from: number, ways: number): void {
    const { low, high } = this;
    low[set] = low[set]! + ways * low[from]!;
    high[set] = high[set]! + ways * high[from]!;
    if (low[set]! < LOW) return;
    const carry = Math.floor(low[set]! / LOW);
    high[set] = high[set]! + carry;
    low[set] = low[set]! - carry * LOW;
  }

  of(set: number): bigint {
    return BigInt(this.high[set]!) * BigInt(LOW) + BigInt(this.low[set]!);
  }
}
