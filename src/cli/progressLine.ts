/**
 * One line that says how far a long search is, on a terminal only, and leaves no trace.
 */

/** A search shorter than this shows nothing. */
const PATIENCE_MS = 1000;

export interface ProgressLine {
  show(fraction: number): void;
  clear(): void;
}

/** A progress line on `stream`, which stays silent where it is no terminal. */
export function progressLine(stream: NodeJS.WriteStream): ProgressLine {
  const start = Date.now();
  let shown = false;
  return {
    show(fraction) {
      if (!stream.isTTY || Date.now() - start < PATIENCE_MS) return;
      shown = true;
      const percent = Math.min(99, Math.floor(fraction * 100));
      stream.write(`\rTrying the orders: ${percent} %. Ctrl-C stops.\u001b[K`);
    },
    clear() {
      if (shown) stream.write("\r\u001b[K");
      shown = false;
    },
  };
}
