/**
 * A drawing as the files that were asked for: SVG at true size, a full-size template on pages of paper, DXF for a cutter.
 */
import { toDxf } from "../drawing/dxfPen.ts";
import type { Drawing } from "../drawing/model.ts";
import type { Page } from "../drawing/page.ts";
import { A4, LETTER, type PageSize, paperFor } from "../drawing/pageSize.ts";
import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import { templatePages } from "../drawing/template.ts";
import { checkSquareMm } from "../drawing/templateFoot.ts";
import { withCheckSquare } from "../drawing/trueSize.ts";
import type { LengthUnit } from "../units/length.ts";
import { Refusal } from "./refusal.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface DrawnFiles extends WriteOptions {
  readonly svg?: string;
  readonly pdf?: string;
  readonly dxf?: string;
  readonly paper?: string;
}

/**
 * Writes what was asked for and gives a line for each file.
 * @throws Refusal for an unknown paper, or a file that cannot be written
 */
export async function writeDrawn(
  drawing: Drawing,
  title: string,
  units: LengthUnit,
  files: DrawnFiles,
): Promise<string[]> {
  const lines: string[] = [];
  if (files.svg !== undefined) {
    await writeOut(files.svg, writeSvg(withCheckSquare(drawing, units), { title }), files);
    lines.push(`Drawn at true size: ${files.svg}`);
  }
  if (files.pdf !== undefined) {
    const size = paperOption(files.paper, units);
    const pages = templatePages(drawing, size, title, units);
    await writeOut(files.pdf, await writePdf(pages, title), files);
    lines.push(
      `Full-size template, ${pagesWords(pages, size)}: ${files.pdf}`,
      `Print it at 100 % and measure the check square: ${units === "in" ? "2 in" : `${checkSquareMm("mm")} mm`} both ways.`,
    );
  }
  if (files.dxf !== undefined) {
    await writeOut(files.dxf, toDxf(drawing), files);
    lines.push(`DXF in millimetres, one layer for each kind of line: ${files.dxf}`);
  }
  return lines;
}

/** @example pagesWords([{}, {}], { name: "A4" }) // "2 pages of A4" */
export function pagesWords(pages: readonly Page[], { name }: Pick<PageSize, "name">): string {
  return `${pages.length === 1 ? "one page" : `${pages.length} pages`} of ${name}`;
}

/** A4 or letter; left out, what the shop has by its unit. @throws Refusal for any other word */
export function paperOption(asked: string | undefined, units: LengthUnit): PageSize {
  if (asked === undefined) return paperFor(units);
  const word = asked.trim().toLowerCase();
  if (word === "a4") return A4;
  if (word === "letter") return LETTER;
  throw new Refusal(`--paper is "${asked}"; it may be a4 or letter.`);
}
