/**
 * What is worked out once and kept under a number, for figures that are asked for again and again.
 */
export class Kept<T> {
  private readonly all: (T | undefined)[] = [];

  /** What is kept under a number, worked out now where it was not yet. */
  of(number: number, work: (number: number) => T): T {
    const known = this.all[number];
    if (known !== undefined) return known;
    const found = work(number);
    this.all[number] = found;
    return found;
  }
}
