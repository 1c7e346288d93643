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
    const level = this.levels[k] ?? this.begin(k);
    const number = k > PAGE_BITS ? formed & ((1 << (k - PAGE_BITS)) - 1) : 0;
    return level[number] ?? this.turnTo(level, k, number);
  }

  /** Which of the beginnings on that page it is. */
  at(k: number, formed: number): number {
    return k > PAGE_BITS ? formed >>> (k - PAGE_BITS) : formed;
  }

  private begin(k: number): (Page | undefined)[] {
    const level = new Array<Page | undefined>(1 << Math.max(0, k - PAGE_BITS));
    this.levels[k] = level;
    return level;
  }

  private turnTo(level: (Page | undefined)[], k: number, number: number): Page {
    const page = this.make(1 << Math.min(k, PAGE_BITS));
    level[number] = page;
    return page;
  }
}
