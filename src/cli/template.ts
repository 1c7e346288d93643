/**
 * The blank as files to cut by: a full-size template on pages of paper, and DXF for a cutter.
 */

import { toDxf } from "../drawing/dxfPen.ts";
import { writePdf } from "../drawing/pdfPen.ts";
import { templatePages } from "../drawing/template.ts";
import { checkSquareMm } from "../drawing/templateFoot.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { drawBlank } from "../pictures/blankDrawing.ts";
import { paperOption } from "./paper.ts";
import { writeOut } from "./writeOut.ts";

export interface TemplateOptions {
  readonly pdf?: string;
  readonly dxf?: string;
  readonly paper?: string;
}

/**
 * Writes what was asked for and gives a line for each file.
 * @throws Refusal for an unknown paper, or a file that cannot be written
 */
export async function writeTemplates(job: Job, answer: Answer, options: TemplateOptions): Promise<string[]> {
  const lines: string[] = [];
  const drawing = drawBlank(job, answer);
  if (options.pdf !== undefined) {
    const size = paperOption(options.paper, job.units);
    const title = `Blank of ${job.part.name}`;
    const pages = templatePages(drawing, size, title, job.units);
    await writeOut(options.pdf, await writePdf(pages, title));
    const count = pages.length === 1 ? "one page" : `${pages.length} pages`;
    const square = job.units === "in" ? "2 in" : `${checkSquareMm("mm")} mm`;
    lines.push(`Full-size template, ${count} of ${size.name}: ${options.pdf}`);
    lines.push(`Print it at 100 % and measure the check square: ${square} both ways.`);
  }
  if (options.dxf !== undefined) {
    await writeOut(options.dxf, toDxf(drawing));
    lines.push(`DXF in millimetres, layers CUT, BEND_UP, BEND_DOWN, SIGHT_LINE and others: ${options.dxf}`);
  }
  return lines;
}
