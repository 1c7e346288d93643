/**
 * What a thread that tries mutants is told, and what it says; both sides read this file.
 * Numbers of mutants are from 0 within the changed file, numbers of truths from 0 in the order collected.
 */

/** Places in the shared `at`: the mutant's and the truth's number, and a count that grows with each truth begun. */
export const AT = { mutant: 0, truth: 1, begun: 2 } as const;

/** Verdicts in the shared `verdicts`, by mutant; a number from 0 is the truth that noticed it. */
export const VERDICT = { unknown: -3, timedOut: -2, survived: -1 } as const;

export interface LearnTask {
  readonly kind: "learn";
  readonly at: Int32Array;
}

export interface Learned {
  readonly name: string;
  readonly ms: number;
  readonly passed: readonly number[];
  readonly missed: string | undefined;
}

export interface TryTask {
  readonly kind: "try";
  readonly first?: number;
  /** For each mutant to try, its number and the truths that pass its place. */
  readonly mutants: readonly { readonly number: number; readonly truths: readonly number[] }[];
  readonly ms: readonly number[];
  /** A mutant that truths of so much time together did not notice is left. */
  readonly mostMs: number;
  readonly at: Int32Array;
  readonly verdicts: Int32Array;
  /** Mutants noticed so far, by truth. */
  readonly noticed: Int32Array;
}
