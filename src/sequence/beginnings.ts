/**
 * Figures kept for every beginning of one side: its first k joints, formed or flat. The figures, of four bytes each, lie side by
 * side, so that one look fetches them, in pages that are made when first touched: short trials touch few.
 */

const PAGE_BITS = 9;

/** Of the states of a beginning: it meets the brake, or leaves no way in or out. 0 is not known; the others are sideTable.ts's. */
export const BARRED = 2;
export const STATE_BITS = 3;
/** Beside the state: what comes beyond can't lower the clearance. */
export const CLEAR_ON = 4;

/** Where each figure of a beginning stands, counted from the first. */
export const STATE = 0;
export const ANGLE = 1;
export const NEAR = 2;
/** Direction in which a run of the other side is seen out at NEAR. */
export const RISE = 3;
/** Clearance so far; 0 not known, −1 for a clearance of 0. */
export const CLEAR = 4;
/** Of the last element alone: its distances from the pivot and its direction. */
export const LAST_NEAR = 5;
export const LAST_FAR = 6;
export const LAST_ANGLE = 7;
/** Only where heights matter. */
export const LOAD_ROOM = 8;
export const UNLOAD_ROOM = 9;

/** Figures of the beginnings on one page, as whole numbers and as fractions; all 0 at first. */
export interface Page {
  readonly whole: Int32Array;
  readonly real: Float32Array;
}

export class Beginnings {
  private readonly levels: (Page | undefined)[][] = [];
  private readonly figures: number;

  constructor(withRooms: boolean) {
    this.figures = withRooms ? UNLOAD_ROOM + 1 : LAST_ANGLE + 1;
  }

  /** The page of the first `k` joints formed as in `formed`. */
  page(k: number, formed: number): Page {
    const level = this.levels[k] ?? this.begin(k);
    return level[formed >>> PAGE_BITS] ?? this.turnTo(level, k, formed >>> PAGE_BITS);
  }

  /** Where its figures stand on that page. */
  at(formed: number): number {
    return this.figures * (formed & ((1 << PAGE_BITS) - 1));
  }

  private begin(k: number): (Page | undefined)[] {
    const level: (Page | undefined)[] = new Array(1 << Math.max(0, k - PAGE_BITS)).fill(undefined);
    this.levels[k] = level;
    return level;
  }

  private turnTo(level: (Page | undefined)[], k: number, number: number): Page {
    const store = new ArrayBuffer(4 * this.figures * (1 << Math.min(k, PAGE_BITS)));
    const page = { whole: new Int32Array(store), real: new Float32Array(store) };
    level[number] = page;
    return page;
  }
}
