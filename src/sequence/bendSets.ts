/**
 * Sets of bends as bit masks, bend 1 in bit 0: run backwards, counted, one after the other of equally many bends.
 */

/** A mask of `count` bends run backwards: bend 1 in the last bit. */
export function reversedSet(mask: number, count: number): number {
  let back = 0;
  for (let b = 0; b < count; b++) back |= ((mask >>> b) & 1) << (count - 1 - b);
  return back;
}

/** Number of bends in a set. */
export function countOf(mask: number): number {
  let n = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) n++;
  return n;
}

/** The next larger set of as many bends; `mask` is not empty. */
export function nextOfAsMany(mask: number): number {
  const lowest = mask & -mask;
  const carried = mask + lowest;
  return carried | (((mask ^ carried) >>> 2) / lowest);
}
