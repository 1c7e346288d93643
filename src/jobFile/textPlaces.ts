/**
 * Places in a text as a person counts them: lines and columns from 1, and how far in the line begins.
 * Line ends are found once; each place is then looked up by halving.
 */
export interface Place {
  readonly text: string;
  readonly at: number;
  readonly line: number;
  readonly column: number;
  /** Blanks in front of the first sign of the line. */
  readonly indent: number;
  /** Whether nothing but blanks stands before it on its line. */
  readonly firstOnLine: boolean;
}

/** The places of one text. @example new TextPlaces("a\n  b").at(4).line // 2 */
export class TextPlaces {
  private readonly starts: number[] = [0];

  constructor(private readonly text: string) {
    for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) this.starts.push(end + 1);
  }

  at(at: number): Place {
    let [low, high] = [0, this.starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.starts[middle]! <= at) low = middle;
      else high = middle - 1;
    }
    const start = this.starts[low]!;
    let indent = 0;
    while (/[^\S\n]/u.test(this.text[start + indent] ?? "x")) indent++;
    const column = at - start + 1;
    return { text: this.text, at, line: low + 1, column, indent, firstOnLine: start + indent === at };
  }
}
