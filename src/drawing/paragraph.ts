/**
 * Words set in lines as a block of a page. The first line's letters hang under the block's top edge.
 */
import type { Mm } from "../units/quantity.ts";
import type { Block } from "./block.ts";
import { wrapWords } from "./printWords.ts";

/** Line to line, in heights of the type. */
const LEADING = 1.35;

/** Words broken into lines of at most `widthMm`, at the left, `indentMm` from the margin. */
export function paragraph(words: string, heightMm: Mm, widthMm: Mm, indentMm: Mm = 0): Block {
  const lines = wrapWords(words, heightMm, widthMm - indentMm);
  return {
    heightMm: lines.length * heightMm * LEADING,
    put: (leftMm, topMm) => ({
      marks: lines.map((line, i) => ({
        kind: "text",
        layer: "note",
        at: { x: leftMm + indentMm, y: topMm - heightMm - i * heightMm * LEADING },
        words: line,
        heightMm,
        anchor: "start",
      })),
    }),
  };
}

/** Blocks one under the other as one block that stays together. */
export function stack(blocks: readonly Block[], gapMm: Mm = 0): Block {
  const gaps = Math.max(0, blocks.length - 1) * gapMm;
  return {
    heightMm: blocks.reduce((sum, block) => sum + block.heightMm, gaps),
    put: (leftMm, topMm) => {
      let at = topMm;
      const put = blocks.map((block) => {
        const done = block.put(leftMm, at);
        at -= block.heightMm + gapMm;
        return done;
      });
      return { marks: put.flatMap((one) => one.marks), placed: put.flatMap((one) => one.placed ?? []) };
    },
  };
}
