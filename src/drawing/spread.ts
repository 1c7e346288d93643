/**
 * Moves labels along a line just so far that none overlap: in order, at least `gapMm` apart, and as near as can be
 * (least squares) to where they belong. Labels that push each other share their shift: pooled neighbours.
 */

/**
 * Places for labels that belong at `wantedMm`, which must rise.
 * @example spread([0, 1, 20], 4) // [-1.5, 2.5, 20]
 */
export function spread(wantedMm: readonly number[], gapMm: number): number[] {
  // With i·gap taken off, "at least a gap apart" reads "not falling", which pooling neighbours solves exactly.
  const pools: { sum: number; count: number }[] = [];
  wantedMm.forEach((wanted, i) => {
    let pool = { sum: wanted - i * gapMm, count: 1 };
    let before = pools.at(-1);
    while (before !== undefined && before.sum / before.count > pool.sum / pool.count) {
      pool = { sum: before.sum + pool.sum, count: before.count + pool.count };
      pools.pop();
      before = pools.at(-1);
    }
    pools.push(pool);
  });
  return pools
    .flatMap(({ sum, count }) => Array<number>(count).fill(sum / count))
    .map((at, i) => at + i * gapMm);
}
