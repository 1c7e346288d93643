/**
 * Printed pages as pictures, for the page to lay on paper: the same drawings as those of the command's PDF files.
 */
import type { Page, Placed } from "../../src/drawing/page.ts";
import { HEADING_MM, wordsWidth } from "../../src/drawing/printWords.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import type { PaperPage, PaperPicture } from "./messages.ts";

/** Each page with its pictures, in the order in which they are laid down. */
export function paperPages(pages: readonly Page[]): readonly PaperPage[] {
  return pages.map(paperPage);
}

function paperPage({ size, placed }: Page): PaperPage {
  const { name, widthMm, heightMm } = size;
  // The words of the page lie on a ground of the whole sheet, so they go under the pictures.
  const pictures = placed.toReversed().map((one) => pictureOf(one, heightMm));
  return { paper: name, widthMm, heightMm, pictures };
}

/** Words as the layout of the sheet reckoned with them. */
function printed(words: string, heightMm: number) {
  return { widthMm: wordsWidth(words, heightMm), bold: heightMm >= HEADING_MM };
}

function pictureOf({ drawing, at, scale }: Placed, pageHeightMm: number): PaperPicture {
  const { min, max } = drawing.window;
  const heightMm = (max.y - min.y) * scale;
  return {
    svg: writeSvg(drawing, { enlargement: scale, onPaper: printed }),
    words: drawing.sentence,
    leftMm: at.x,
    topMm: pageHeightMm - at.y - heightMm,
    widthMm: (max.x - min.x) * scale,
    heightMm,
  };
}
