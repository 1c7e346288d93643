/**
 * Blocks set one under the other and carried over to as many pages as they need; a block is never torn.
 * Each page gets the same foot and its number. Page millimetres.
 */
import type { Mm } from "../units/quantity.ts";
import type { Block } from "./block.ts";
import { onPaper, type Page } from "./page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "./pageSize.ts";
import { paragraph } from "./paragraph.ts";

/** Room between blocks. */
const GAP_MM: Mm = 3;
const FOOT_WORDS_MM: Mm = 2.8;
/** A longer name is cut at the foot; it stands in full at the head. */
const MOST_NAME = 60;

/** Width between the margins. @example flowWidth(A4) // 190 */
export function flowWidth(size: PageSize): Mm {
  return size.widthMm - 2 * PRINTER_MARGIN_MM;
}

/** Blocks of marks on pages of one size. `name` stands at each foot with the page's number, before `foot`. */
export function flowBlocks(
  blocks: readonly Block[],
  size: PageSize,
  name: string,
  foot: string,
): readonly Page[] {
  const shown = name.length > MOST_NAME ? `${name.slice(0, MOST_NAME - 1)}…` : name;
  const footAt = (words: string) => paragraph(words, FOOT_WORDS_MM, flowWidth(size));
  const footHeight = footAt(`${shown}, page 00 of 00. ${foot}`).heightMm;
  const top = size.heightMm - PRINTER_MARGIN_MM;
  const bottom = PRINTER_MARGIN_MM + footHeight + GAP_MM;
  const pages: Block[][] = [[]];
  let reached = top;
  for (const block of blocks) {
    if (reached - block.heightMm < bottom && pages.at(-1)?.length !== 0) {
      pages.push([]);
      reached = top;
    }
    pages.at(-1)?.push(block);
    reached -= block.heightMm + GAP_MM;
  }
  return pages.map((page, index) => {
    let at = top;
    const put = page.map((block) => {
      const done = block.put(PRINTER_MARGIN_MM, at);
      at -= block.heightMm + GAP_MM;
      return done;
    });
    const words = `${shown}, page ${index + 1} of ${pages.length}. ${foot}`;
    const footMarks = footAt(words).put(PRINTER_MARGIN_MM, PRINTER_MARGIN_MM + footHeight).marks;
    const marks = [...put.flatMap((one) => one.marks), ...footMarks];
    const placed = put.flatMap((one) => one.placed ?? []);
    return { size, placed: [...placed, onPaper(size, `${name}, page ${index + 1}.`, marks)] };
  });
}
