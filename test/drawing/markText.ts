/**
 * A drawing as short text, so that a test can show what is on it: one line a layer and kind, then its words in order.
 */
import type { Drawing } from "../../src/drawing/model.ts";

/** Lines such as "leaf outline ×1" in the order of first appearance, then "layer: words". */
export function markText(drawing: Drawing): string {
  const counts = new Map<string, number>();
  const words: string[] = [];
  for (const mark of drawing.marks) {
    const key = `${mark.layer} ${mark.kind}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
    if (mark.kind === "text" || mark.kind === "dimension") words.push(`${mark.layer}: ${mark.words}`);
  }
  return [...[...counts].map(([key, count]) => `${key} ×${count}`), ...words].join("\n");
}
