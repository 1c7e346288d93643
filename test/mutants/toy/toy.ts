/**
 * A few lines whose mutants are known beforehand, to try the mutation run itself on (tool.test.ts).
 * No part of the engine.
 */
const SIX = 2 * 3;

export function six(): number {
  return SIX;
}

/** Counts up to n; without its step it never ends. */
export function countTo(n: number): number {
  let i = 0;
  while (i < n) i += 1;
  return i;
}

/** Two numbers, the larger first: of equals either may be. */
export function ordered(a: number, b: number): readonly [number, number] {
  return a > b ? [a, b] : [b, a];
}

/** Nobody asks for this. */
export function unasked(a: number): number {
  return a + 1;
}
