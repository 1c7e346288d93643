/**
 * The blank of a pan as files: SVG at true size, a full-size template on paper, DXF.
 */
import type { PanBlank } from "../blank/pan.ts";
import { toDxf } from "../drawing/dxfPen.ts";
import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import { templatePages } from "../drawing/template.ts";
import { drawPan } from "../pictures/panDrawing.ts";
import { paperOption } from "./paper.ts";
import { writeOut } from "./writeOut.ts";

export interface PanFiles {
  readonly svg?: string;
  readonly pdf?: string;
  readonly dxf?: string;
  readonly paper?: string;
}

/**
 * Writes what was asked for and gives a line for each file.
 * @throws Refusal for an unknown paper, or a file that cannot be written
 */
export async function writePanFiles(blank: PanBlank, units: "mm" | "in", files: PanFiles): Promise<string[]> {
  const drawing = drawPan(blank, units);
  const title = "Blank of a pan";
  const lines: string[] = [];
  if (files.svg !== undefined) {
    await writeOut(files.svg, writeSvg(drawing, { title }));
    lines.push(`Drawn at true size: ${files.svg}`);
  }
  if (files.pdf !== undefined) {
    const size = paperOption(files.paper, units);
    const pages = templatePages(drawing, size, title, units);
    await writeOut(files.pdf, await writePdf(pages, title));
    const count = pages.length === 1 ? "one page" : `${pages.length} pages`;
    lines.push(`Full-size template, ${count} of ${size.name}: ${files.pdf}. Print it at 100 %.`);
  }
  if (files.dxf !== undefined) {
    await writeOut(files.dxf, toDxf(drawing));
    lines.push(`DXF in millimetres: ${files.dxf}`);
  }
  return lines;
}
