/**
 * Long sentences broken between words for a terminal; through a pipe a sentence stays one line, so it can be searched.
 */

/** Wider lines are hard to read back to their beginning. */
const MOST_COLUMNS = 100;

/** How many columns a sentence may take on a stream. */
export function columnsOf(stream: { readonly isTTY?: boolean; readonly columns?: number }): number {
  if (stream.isTTY !== true) return Number.POSITIVE_INFINITY;
  return Math.min(MOST_COLUMNS, Math.max(20, stream.columns ?? 80));
}

/**
 * The lines of a sentence, each begun with `indent` and, after the first, two more spaces.
 * A word longer than the line is left whole.
 * @example wrap("one two three", 9, "") // ["one two", "  three"]
 */
export function wrap(sentence: string, columns: number, indent: string): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of sentence.split(" ")) {
    const empty = line.trim() === "";
    if (!empty && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = `${indent}  ${word}`;
    } else {
      line += empty ? word : ` ${word}`;
    }
  }
  return [...lines, line];
}
