/**
 * A drawing as one SVG document in true millimetres: width and height in mm, user units are drawing millimetres.
 * SVG 2 (W3C): arcs are written as arcs, layers as groups with a class, looks in one style block.
 * Error bound: coordinates are rounded to 1e-4 mm.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { dimensionStrokes } from "./dimensionStrokes.ts";
import { hatchOf } from "./hatch.ts";
import { MADE_BY } from "./madeBy.ts";
import type { Drawing, Mark } from "./model.ts";
import { arcTo, outlinePath, shortNumber, svgPoint } from "./pathData.ts";
import { strokesOf } from "./stroke.ts";
import { hatchName, hatchPatterns, styleRules } from "./svgStyle.ts";
import { escapeText } from "./svgText.ts";

/** How words run on the printed page. */
export interface PrintedWords {
  readonly widthMm: Mm;
  readonly bold: boolean;
}

export interface SvgOptions {
  /** The first words a listener hears and the name of the picture's window; the drawing's sentence follows. */
  readonly title?: string;
  /** Page millimetres to a drawing millimetre: 1 is true size, 5 is five times as large. */
  readonly enlargement?: number;
  /**
   * For printing only: ink on white by day and night, no dye (a picture inside a page is not told that it is printed),
   * and words as wide as this says, so that they fill what the page was laid out for whatever fonts are at hand.
   */
  readonly onPaper?: (words: string, heightMm: Mm) => PrintedWords;
}

/** What every mark needs: millimetres of the drawing to one of the page, and how words are set on paper. */
interface Pen {
  readonly pageMm: number;
  readonly onPaper: SvgOptions["onPaper"];
}

function textElement(text: Extract<Mark, { kind: "text" }>, { pageMm, onPaper }: Pen): string {
  const set = onPaper?.(text.words, text.heightMm / pageMm);
  const width =
    set && set.widthMm > 0
      ? ` textLength="${shortNumber(set.widthMm * pageMm)}" lengthAdjust="spacingAndGlyphs"`
      : "";
  const weight = set?.bold ? ' class="bold"' : "";
  const turn = text.angleRad
    ? ` transform="rotate(${shortNumber((-text.angleRad * 180) / Math.PI)} ${svgPoint(text.at)})"`
    : "";
  return `<text x="${shortNumber(text.at.x)}" y="${shortNumber(-text.at.y)}" font-size="${shortNumber(text.heightMm)}" text-anchor="${text.anchor}"${weight}${width}${turn}>${escapeText(text.words)}</text>`;
}

function outlineElement(mark: Extract<Mark, { kind: "outline" }>): string {
  const d = outlinePath(mark.outline);
  const caption = mark.caption === undefined ? "" : `<title>${escapeText(mark.caption)}</title>`;
  const hatch = hatchOf(mark.layer, mark.outline);
  const fill = hatch ? ` style="fill:url(#${hatchName(mark.layer, hatch.angleDeg)})"` : "";
  const face =
    caption === ""
      ? `<path class="face"${fill} d="${d}"/>`
      : `<path class="face"${fill} d="${d}">${caption}</path>`;
  // The hatch has gaps: a plain ground under it keeps what lies behind from showing through.
  const hatched =
    mark.layer === "bed" || mark.layer === "clamp" || mark.layer === "leaf" || mark.layer === "frame";
  return hatched ? `<path class="body" d="${d}"/>${face}` : face;
}

function arcElement(arc: Extract<Mark, { kind: "arc" }>): string {
  const { center, radius, startRad, sweepRad } = arc;
  const from = { x: center.x + radius * Math.cos(startRad), y: center.y + radius * Math.sin(startRad) };
  return `<path d="M${svgPoint(from)}${arcTo(center, radius, startRad, sweepRad)}"/>`;
}

function dimensionElement(mark: Extract<Mark, { kind: "dimension" }>, pen: Pen): string {
  const { lines, heads, words } = dimensionStrokes(mark, pen.pageMm);
  const run = (points: readonly Point[]) => `M${points.map(svgPoint).join("L")}`;
  const figure = textElement({ kind: "text", layer: mark.layer, words: mark.words, ...words }, pen);
  return `<path d="${lines.map(run).join("")}"/><path class="head" d="${heads.map((head) => `${run(head)}Z`).join("")}"/>${figure}`;
}

function markElement(mark: Mark, pen: Pen): string {
  switch (mark.kind) {
    case "outline":
      return outlineElement(mark);
    case "line":
      return `<path d="M${svgPoint(mark.from)}L${svgPoint(mark.to)}"/>`;
    case "arc":
      return arcElement(mark);
    case "text":
      return textElement(mark, pen);
    case "cross":
      return strokesOf(mark, pen.pageMm)
        .map((stroke) => markElement(stroke, pen))
        .join("");
    case "dimension":
      return dimensionElement(mark, pen);
  }
}

/** Marks in the order of the drawing, neighbours of one layer gathered into one group. */
function groups(marks: readonly Mark[], pen: Pen): string[] {
  const lines: string[] = [];
  let open: string | undefined;
  for (const mark of marks) {
    if (mark.layer !== open) {
      if (open !== undefined) lines.push("</g>");
      lines.push(`<g class="${mark.layer}">`);
      open = mark.layer;
    }
    lines.push(markElement(mark, pen));
  }
  if (open !== undefined) lines.push("</g>");
  return lines;
}

/**
 * The SVG text of a drawing. Marks outside its window are cut off; words are escaped, so they never become markup.
 * @example writeSvg({ sentence: "Nothing yet.", window: { min: { x: 0, y: 0 }, max: { x: 10, y: 5 } }, marks: [] }).includes('width="10mm"') // true
 */
export function writeSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const enlargement = options.enlargement ?? 1;
  const pageMm = 1 / enlargement;
  const { min, max } = drawing.window;
  const width = max.x - min.x;
  const height = max.y - min.y;
  const box = `${shortNumber(min.x)} ${shortNumber(-max.y)} ${shortNumber(width)} ${shortNumber(height)}`;
  const ground = `M${svgPoint(min)}H${shortNumber(max.x)}V${shortNumber(-max.y)}H${shortNumber(min.x)}Z`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${shortNumber(width * enlargement)}mm" height="${shortNumber(height * enlargement)}mm" viewBox="${box}" role="img" aria-labelledby="picture-title picture-sentence">`,
    `<!-- ${MADE_BY} -->`,
    `<title id="picture-title">${escapeText(options.title ?? drawing.sentence)}</title>`,
    `<desc id="picture-sentence">${escapeText(drawing.sentence)}</desc>`,
    `<style>\n${styleRules(pageMm, options.onPaper !== undefined)}\n</style>`,
    `<defs>\n${hatchPatterns(drawing.marks, pageMm)}\n</defs>`,
    `<path class="paper" d="${ground}"/>`,
    ...groups(drawing.marks, { pageMm, onPaper: options.onPaper }),
    "</svg>",
    "",
  ].join("\n");
}
