/**
 * What is known of every beginning of one side, by its path (sidePath.ts): a byte each, side by side, since far more is asked of
 * it than of anything else.
 */

/** 0 is not known. */
export const FREE = 1;
/** It meets the brake, or leaves no way in or out. */
export const BARRED = 2;
/** Free, and so is whatever comes beyond. */
export const FREE_ON = 3;

const STATE_BITS = 3;
/** Beside the state: what comes beyond can't lower the clearance. */
const CLEAR_ON = 4;

export class Beginnings {
  private readonly known: Uint8Array;

  constructor(joints: number) {
    this.known = new Uint8Array(2 << joints);
  }

  /** 0 where it is not known. */
  state(path: number): number {
    return this.known[path]! & STATE_BITS;
  }

  keepState(path: number, state: number): void {
    this.known[path] = this.known[path]! | state;
  }

  /** Whether what comes beyond is known not to lower the clearance. */
  isClearOn(path: number): boolean {
    return (this.known[path]! & CLEAR_ON) !== 0;
  }

  keepClearOn(path: number): void {
    this.known[path] = this.known[path]! | CLEAR_ON;
  }
}
