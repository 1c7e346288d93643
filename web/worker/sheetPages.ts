/**
 * The shop sheet as pages of pictures, for the page to lay on paper: the same drawings as the command's PDF.
 */
import type { Page, Placed } from "../../src/drawing/page.ts";
import { paperFor } from "../../src/drawing/pageSize.ts";
import { HEADING_MM, wordsWidth } from "../../src/drawing/printWords.ts";
import { shopSheet } from "../../src/drawing/shopSheet.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import type { Answer } from "../../src/job/answer.ts";
import type { Job } from "../../src/job/job.ts";
import type { JobFile } from "../../src/job/schema.ts";
import { waysOut } from "../../src/job/waysOut.ts";
import { doubted } from "./doubted.ts";
import type { PaperPage, PaperPicture } from "./messages.ts";

/** Pages of the sheet, with its ways out and, for a copied sample, what its doubtful readings mean. */
export function sheetPages(
  { job, file }: { readonly job: Job; readonly file: JobFile },
  answer: Answer,
  doubtsMm: readonly number[] | null,
): readonly PaperPage[] {
  const sure = doubtsMm === null ? [] : doubted(job, answer, doubtsMm).sentences;
  const full = { ...answer, remedies: waysOut(file, job, answer), warnings: [...sure, ...answer.warnings] };
  return shopSheet(job, full, paperFor(job.units)).map(paperPage);
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
