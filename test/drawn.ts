/**
 * How many cases a test draws, and from which seed, told by the environment: `SHARE=1 npm run test:deep` draws all of them,
 * a tenth unless told; `SEED=7` draws others.
 */
const SHARE = Number(process.env.SHARE ?? 0.1);
const SEED = Number(process.env.SEED ?? 0);

/** So many of `count`, 1 at least. */
export function shareOf(count: number): number {
  return Math.max(1, Math.round(SHARE * count));
}

/** For fast-check: the seed and the number of runs of a test that makes `count` where all are drawn. */
export function drawn(seed: number, count: number): { readonly seed: number; readonly numRuns: number } {
  return { seed: seed + SEED, numRuns: shareOf(count) };
}
