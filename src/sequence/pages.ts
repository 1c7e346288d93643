/**
 * Something kept for every beginning of one side, by its path (sidePath.ts), in pages that are made when first touched. A page
 * holds beginnings whose nearest joints are alike, so that whatever is decided by these takes no room.
 */

const MOST_BITS = 9;

export class Pages<Page> {
  private readonly pages: (Page | undefined)[] = [];
  private readonly bits: number;

  /** Of a side with so many joints; `make` gives a page for so many beginnings. */
  constructor(
    joints: number,
    private readonly make: (beginnings: number) => Page,
  ) {
    this.bits = Math.min(MOST_BITS, joints + 1);
  }

  /** The page of a beginning. */
  of(path: number): Page {
    const number = path >>> this.bits;
    this.pages[number] ??= this.make(1 << this.bits);
    return this.pages[number];
  }

  /** Which of the beginnings on that page it is. */
  at(path: number): number {
    return path & ((1 << this.bits) - 1);
  }
}
