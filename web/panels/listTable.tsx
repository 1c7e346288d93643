/**
 * A list of things as a table with a heading to each column, scrolled where the screen is narrower.
 */

export function ListTable({
  caption,
  heads,
  rows,
  wordy = false,
}: {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Cells hold sentences, which need their width. */
  readonly wordy?: boolean;
}) {
  if (rows.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone must be scrolled with the keys too
    <section class="scroll list" tabIndex={0} aria-label={caption}>
      <table class={wordy ? "wordy" : ""}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.join("|")}>
              {row.map((cell, i) => (
                <td key={heads[i]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
