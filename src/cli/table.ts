/**
 * Rows of words set in columns, two spaces apart, no rules: readable aloud and through `cut`.
 */

/** Which way a column leans: figures to the right. */
export type Lean = "left" | "right";

/**
 * The table's lines, without trailing spaces. Widths count code points: enough for this program's own words.
 * @example table([["a", "10"], ["bb", "9"]], ["left", "right"]) // ["a   10", "bb   9"]
 */
export function table(rows: readonly (readonly string[])[], leans: readonly Lean[]): string[] {
  const width = (text: string) => [...text].length;
  const widths = leans.map((_, column) => Math.max(0, ...rows.map((row) => width(row[column] ?? ""))));
  return rows.map((row) =>
    row
      .map((cell, column) => {
        const space = " ".repeat((widths[column] ?? 0) - width(cell));
        return leans[column] === "right" ? space + cell : cell + space;
      })
      .join("  ")
      .trimEnd(),
  );
}
