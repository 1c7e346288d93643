/**
 * Rows of words set in columns, two spaces apart, no rules, no wider than a terminal of old: words of a cell that is
 * too wide run on beneath it.
 */
import { wrap } from "./wrap.ts";

/** Which way a column leans: figures to the right. */
export type Lean = "left" | "right";

export const TABLE_COLUMNS = 80;
/** No column of words gets narrower. */
const NARROWEST = 8;
const APART = "  ";

/**
 * The table's lines, without trailing spaces. Widths count code points: enough for this program's own words.
 * @example table([["a", "10"], ["bb", "9"]], ["left", "right"]) // ["a   10", "bb   9"]
 * @example table([["a", "one two three"]], ["left", "left"], 11) // ["a  one two", "   three"]
 */
export function table(
  rows: readonly (readonly string[])[],
  leans: readonly Lean[],
  columns = TABLE_COLUMNS,
): string[] {
  const widths = leans.map((_, column) => Math.max(0, ...rows.map((row) => widthOf(row[column] ?? ""))));
  const least = leans.map((_, column) => leastWidth(rows.map((row) => row[column] ?? "")));
  for (let over = total(widths) - columns; over > 0; over = total(widths) - columns) {
    const widest = widths.reduce(
      (most, width, i) => (width > least[i]! && (most < 0 || width > widths[most]!) ? i : most),
      -1,
    );
    if (widest < 0) break;
    widths[widest] = widths[widest]! - 1;
  }
  return rows.flatMap((row) => {
    const cells = leans.map((_, i) => cellLines(row[i] ?? "", widths[i]!));
    const high = Math.max(...cells.map((lines) => lines.length));
    return Array.from({ length: high }, (_, line) =>
      cells
        .map((lines, i) => padded(lines[line] ?? "", widths[i]!, leans[i]!))
        .join(APART)
        .trimEnd(),
    );
  });
}

function total(widths: readonly number[]): number {
  return widths.reduce((sum, width) => sum + width, 0) + APART.length * (widths.length - 1);
}

/** As wide as the longest word. */
function leastWidth(cells: readonly string[]): number {
  return Math.max(NARROWEST, ...cells.flatMap((cell) => cell.split(" ").map(widthOf)));
}

function cellLines(cell: string, width: number): string[] {
  return widthOf(cell) <= width ? [cell] : wrap(cell, width, "").map((line) => line.trim());
}

function padded(text: string, width: number, lean: Lean): string {
  const space = " ".repeat(Math.max(0, width - widthOf(text)));
  return lean === "right" ? space + text : text + space;
}

function widthOf(text: string): number {
  return [...text].length;
}
