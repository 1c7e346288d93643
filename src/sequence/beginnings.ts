/**
 * What is known of every beginning of one side, its first k joints formed or flat: a byte each, side by side, since far more is
 * asked of it than of anything else.
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
  /** By joints formed, with one more bit set past the last of the k. */
  private readonly known: Uint8Array;

  constructor(joints: number) {
    this.known = new Uint8Array(2 << joints);
  }

  /** State of the first `k` joints formed as in `formed`, which has no joint beyond them; 0 where it is not known. */
  state(k: number, formed: number): number {
    return this.known[(1 << k) | formed]! & STATE_BITS;
  }

  keepState(k: number, formed: number, state: number): void {
    const at = (1 << k) | formed;
    this.known[at] = this.known[at]! | state;
  }

  /** Whether what comes beyond is known not to lower the clearance. */
  isClearOn(k: number, formed: number): boolean {
    return (this.known[(1 << k) | formed]! & CLEAR_ON) !== 0;
  }

  keepClearOn(k: number, formed: number): void {
    const at = (1 << k) | formed;
    this.known[at] = this.known[at]! | CLEAR_ON;
  }
}
