/**
 * Something kept for every beginning of one side (its first k joints, formed or flat), in pages that are made when first
 * touched. A page holds beginnings whose nearest joints are alike, so that whatever is decided by these takes no room.
 */

const PAGE_BITS = 9;

export class Pages<Page> {
  private readonly levels: (Page | undefined)[][] = [];

  /** `make` gives a page for so many beginnings. */
  constructor(private readonly make: (beginnings: number) => Page) {}

  /** The page of the first `k` joints formed as in `formed`, which has no joint beyond them. */
  of(k: number, formed: number): Page {
    this.levels[k] ??= [];
    const level = this.levels[k];
    const number = formed & ((1 << beyond(k)) - 1);
    level[number] ??= this.make(1 << (k - beyond(k)));
    return level[number];
  }

  /** Which of the beginnings on that page it is. */
  at(k: number, formed: number): number {
    return formed >>> beyond(k);
  }
}

/** How many of `k` joints tell pages apart. */
function beyond(k: number): number {
  return Math.max(0, k - PAGE_BITS);
}
