/**
 * The smallest change that lets a verdict pass: nearest passing point of a widening scan, then halving between the last
 * that fails and the first that passes. A verdict need not be monotone, so the answer is tried again one step smaller.
 * Bound: the limit is met to `tolerance`; a passing gap narrower than the scan's own steps may be missed, never invented.
 */

export interface LimitSearch {
  /** Whether the job passes with a change of this size. Size 0, no change, is known to fail. */
  readonly passes: (amount: number) => boolean;
  /** Largest change worth trying. */
  readonly most: number;
  /** First step of the scan, which then widens; where the largest is asked for, every step. */
  readonly first: number;
  /** The answer passes and this much less does not. */
  readonly step: number;
  readonly tolerance: number;
  /** A larger change never harms: try the largest first, and give up if that fails. */
  readonly monotone?: boolean;
}

/** Each step of the scan is so much wider than the one before. */
const WIDENING = 2;

/**
 * Size of the smallest passing change found, or undefined.
 * @example smallestPassing({ passes: (a) => a > 3, most: 50, first: 0.25, step: 0.05, tolerance: 0.001 }) // 3.00
 */
export function smallestPassing(search: LimitSearch): number | undefined {
  const { passes, most, first, monotone } = search;
  if (!(most > 0) || (monotone && !passes(most))) return undefined;
  let fails = 0;
  let found: number | undefined;
  for (let amount = Math.min(first, most); ; amount = Math.min(most, amount * WIDENING)) {
    if (passes(amount)) {
      found = amount;
      break;
    }
    fails = amount;
    if (amount >= most) return undefined;
  }
  return closeIn(search, fails, found);
}

/**
 * The smallest size that passes between one that fails and a larger one that passes; one step less is tried again.
 * @example closeIn({ passes: (a) => a > 3, step: 0.05, tolerance: 0.001 }, 2, 4) // 3.00
 */
export function closeIn(
  search: Pick<LimitSearch, "passes" | "step" | "tolerance">,
  fails: number,
  found: number,
): number {
  const { passes, step } = search;
  let limit = between(search, fails, found);
  // A passing gap just below: walk down through it until a step fails, and close in on its lower end.
  while (limit > step && passes(limit - step)) {
    let passed = limit - step;
    while (passed > step && passes(passed - step)) passed -= step;
    limit = between(search, Math.max(0, passed - step), passed);
  }
  return limit;
}

/**
 * Size up to which everything tried passes, from 0, which is known to pass; `most` where nothing fails.
 * @example largestPassing({ passes: (a) => a < 3, most: 50, first: 0.5, tolerance: 0.001 }) // 3.00
 */
export function largestPassing(search: Omit<LimitSearch, "monotone" | "step">): number {
  const { passes, most, tolerance } = search;
  let good = 0;
  for (let amount = Math.min(search.first, most); ; amount = Math.min(most, amount + search.first)) {
    if (!passes(amount)) {
      let [low, high] = [good, amount];
      while (high - low > tolerance) {
        const middle = (low + high) / 2;
        if (passes(middle)) low = middle;
        else high = middle;
      }
      return low;
    }
    good = amount;
    if (amount >= most) return most;
  }
}

/** Closes in from a size that fails and a larger one that passes; gives one that passes. */
function between(
  { passes, tolerance }: Pick<LimitSearch, "passes" | "tolerance">,
  fails: number,
  found: number,
): number {
  let [low, high] = [fails, found];
  while (high - low > tolerance) {
    const middle = (low + high) / 2;
    if (passes(middle)) high = middle;
    else low = middle;
  }
  return high;
}
