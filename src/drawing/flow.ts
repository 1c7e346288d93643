/**
 * Blocks set one under the other and carried over to as many pages as they need; a block is never torn.
 * Each page gets the same foot and its number. Page millimetres.
 */
import type { Mm } from "../units/quantity.ts";
import type { Block } from "./block.ts";
import { onPaper, type Page } from "./page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "./pageSize.ts";
import { paragraph } from "./paragraph.ts";

/** Room between blocks, where nothing else is asked. */
const GAP_MM: Mm = 3;
/** Eight points. */
const FOOT_WORDS_MM: Mm = 2.83;
/** A longer name is cut at the foot; it stands in full at the head. */
const MOST_NAME = 60;

/** Width between the margins. @example flowWidth(A4) // 190 */
export function flowWidth(size: PageSize): Mm {
  return size.widthMm - 2 * PRINTER_MARGIN_MM;
}

/** A block on a page, so far under what stands over it. */
interface Hung {
  readonly block: Block;
  readonly gapMm: Mm;
}

/** Blocks of marks on pages of one size. `name` stands at each foot with the page's number, before `foot`. */
export function flowBlocks(
  blocks: readonly Block[],
  size: PageSize,
  name: string,
  foot: string,
  gapMm: Mm = GAP_MM,
): readonly Page[] {
  const shown = shownName(name);
  const footAt = (words: string) => paragraph(words, FOOT_WORDS_MM, flowWidth(size));
  const footHeight = footHigh(size, name, foot);
  const top = size.heightMm - PRINTER_MARGIN_MM;
  const pages = brokenOver(blocks, roomOf(size, name, foot), gapMm);
  return pages.map((page, index) => {
    let at = top;
    const put = page.map((hung) => {
      const done = hung.block.put(PRINTER_MARGIN_MM, at - hung.gapMm);
      at -= hung.gapMm + hung.block.heightMm;
      return done;
    });
    const words = `${shown}, page ${index + 1} of ${pages.length}. ${foot}`;
    const footMarks = footAt(words).put(PRINTER_MARGIN_MM, PRINTER_MARGIN_MM + footHeight).marks;
    const marks = [...put.flatMap((one) => one.marks), ...footMarks];
    const placed = put.flatMap((one) => one.placed ?? []);
    return { size, placed: [...placed, onPaper(size, `${name}, page ${index + 1}.`, marks)] };
  });
}

/** How many pages `flowBlocks` would make of the same; nothing is drawn for it. */
export function flowCount(
  blocks: readonly Block[],
  size: PageSize,
  name: string,
  foot: string,
  gapMm: Mm = GAP_MM,
): number {
  return brokenOver(blocks, roomOf(size, name, foot), gapMm).length;
}

function shownName(name: string): string {
  return name.length > MOST_NAME ? `${name.slice(0, MOST_NAME - 1)}…` : name;
}

function footHigh(size: PageSize, name: string, foot: string): Mm {
  return paragraph(`${shownName(name)}, page 00 of 00. ${foot}`, FOOT_WORDS_MM, flowWidth(size)).heightMm;
}

function roomOf(size: PageSize, name: string, foot: string): Mm {
  return size.heightMm - 2 * PRINTER_MARGIN_MM - footHigh(size, name, foot) - GAP_MM;
}

/** Blocks page by page, heads among them; one that is higher than a page has a page for itself. */
function brokenOver(blocks: readonly Block[], roomMm: Mm, gapMm: Mm): readonly (readonly Hung[])[] {
  const pages: Hung[][] = [];
  let page: Hung[] = [];
  let leftMm = roomMm;
  for (const block of blocks) {
    let hung = hungAfter(page.at(-1)?.block, block, gapMm);
    if (page.length > 0 && heightOf(hung) > leftMm + 1e-6) {
      pages.push(page);
      page = [];
      leftMm = roomMm;
      hung = hungAfter(undefined, block, gapMm);
    }
    page.push(...hung);
    leftMm -= heightOf(hung);
  }
  return [...pages, page];
}

function hungAfter(before: Block | undefined, block: Block, gapMm: Mm): readonly Hung[] {
  const gap = before === undefined ? 0 : gapMm;
  if (block.head === undefined) return [{ block, gapMm: gap }];
  if (before?.head === block.head) return [{ block, gapMm: 0 }];
  return [
    { block: block.head, gapMm: gap },
    { block, gapMm: 0 },
  ];
}

function heightOf(hung: readonly Hung[]): Mm {
  return hung.reduce((sum, { block, gapMm }) => sum + gapMm + block.heightMm, 0);
}
