/**
 * One placed drawing as PDF operators: cut off at its window, bodies hatched, words with a white rim so that lines
 * under them don't spoil them. Weights, dashes and hatches keep their size on the page whatever the scale.
 */
import {
  beginMarkedContent,
  beginText,
  clip,
  endMarkedContent,
  endPath,
  endText,
  fill,
  type PDFFont,
  type PDFOperator,
  popGraphicsState,
  pushGraphicsState,
  setFillingGrayscaleColor,
  setFontAndSize,
  setStrokingGrayscaleColor,
  setTextMatrix,
  setTextRenderingMode,
  showText,
  stroke,
  TextRenderingMode,
} from "pdf-lib";
import { dimensionStrokes } from "./dimensionStrokes.ts";
import { hatchOf } from "./hatch.ts";
import { inkOf } from "./ink.ts";
import type { Layer, Mark } from "./model.ts";
import { boxOf, type Placed, toPage } from "./page.ts";
import {
  arcPath,
  boxPath,
  hatchInside,
  type Onto,
  outlinePath,
  penSetting,
  points,
  runPath,
} from "./pdfPath.ts";
import { HEADING_MM, printable, wordsWidth } from "./printWords.ts";
import { type Stroke, strokesOf } from "./stroke.ts";

export interface Fonts {
  readonly plain: PDFFont;
  readonly bold: PDFFont;
}

type Words = Extract<Stroke, { kind: "text" }>;

interface Place {
  readonly placed: Placed;
  readonly onto: Onto;
  readonly fonts: Fonts;
  /** There are hatched bodies, so words need a rim. Without them words are set once only: copied text stays clean. */
  readonly hatched: boolean;
}

const RIM_MM = 0.6;

/** Operators of a placed drawing, marks in the drawing's own order, the later ones on top. */
export function placedOperators(placed: Placed, fonts: Fonts): PDFOperator[] {
  const { marks } = placed.drawing;
  const hatched = marks.some((mark) => mark.kind === "outline" && inkOf(mark.layer).hatch !== undefined);
  const place: Place = { placed, onto: (point) => toPage(placed, point), fonts, hatched };
  return [
    pushGraphicsState(),
    ...boxPath(boxOf(placed)),
    clip(),
    endPath(),
    ...marks.flatMap((mark) => markOperators(mark, place)),
    popGraphicsState(),
  ];
}

function markOperators(mark: Mark, place: Place): PDFOperator[] {
  const { placed, onto } = place;
  const pageMm = 1 / placed.scale;
  switch (mark.kind) {
    case "outline":
      return bodyOperators(mark, outlinePath(mark.outline, onto), placed);
    case "dimension": {
      const { lines, heads, words } = dimensionStrokes(mark, pageMm);
      const edges = heads.map((head) =>
        outlinePath(
          { edges: head.map((from, i) => ({ kind: "line", from, to: head[i + 1] ?? from })) },
          onto,
        ),
      );
      return [
        ...stroked(
          mark.layer,
          lines.flatMap((run) => runPath(run, onto)),
        ),
        setFillingGrayscaleColor(0),
        ...edges.flatMap((edge) => [...edge, fill()]),
        ...wordOperators({ kind: "text", layer: mark.layer, words: mark.words, ...words }, place),
      ];
    }
    default:
      return strokesOf(mark, pageMm).flatMap((one) => strokeOperators(one, place));
  }
}

function strokeOperators(one: Stroke, place: Place): PDFOperator[] {
  const { onto } = place;
  switch (one.kind) {
    case "line":
      return stroked(one.layer, runPath([one.from, one.to], onto));
    case "arc":
      return stroked(one.layer, arcPath(one.center, one.radius, one.startRad, one.sweepRad, onto));
    case "text":
      return wordOperators(one, place);
  }
}

function stroked(layer: Layer, path: readonly PDFOperator[]): PDFOperator[] {
  const { weightMm, dashMm } = inkOf(layer);
  return [setStrokingGrayscaleColor(0), ...penSetting(weightMm, dashMm), ...path, stroke()];
}

function bodyOperators(
  { layer, outline }: Extract<Mark, { kind: "outline" }>,
  path: readonly PDFOperator[],
  placed: Placed,
): PDFOperator[] {
  const { weightMm, ground } = inkOf(layer);
  const hatch = hatchOf(layer, outline);
  const operators: PDFOperator[] = [];
  if (ground !== undefined) operators.push(setFillingGrayscaleColor(ground), ...path, fill());
  if (hatch !== undefined) {
    operators.push(setStrokingGrayscaleColor(0), ...penSetting(0.13, []));
    operators.push(...hatchInside(path, boxOf(placed), hatch));
  }
  if (weightMm > 0) operators.push(...stroked(layer, path));
  return operators;
}

function wordOperators(one: Words, { placed, onto, fonts, hatched }: Place): PDFOperator[] {
  const heightMm = one.heightMm * placed.scale;
  const words = printable(one.words);
  if (words.trim() === "") return [];
  const bold = heightMm >= HEADING_MM;
  const font = bold ? fonts.bold : fonts.plain;
  const share = one.anchor === "start" ? 0 : one.anchor === "middle" ? 0.5 : 1;
  const back = wordsWidth(one.words, heightMm) * share;
  const cos = Math.cos(one.angleRad);
  const sin = Math.sin(one.angleRad);
  const at = onto(one.at);
  const text = [
    setFontAndSize(bold ? "Bold" : "Plain", points(heightMm)),
    setTextMatrix(cos, sin, -sin, cos, points(at.x - back * cos), points(at.y - back * sin)),
    showText(font.encodeText(words)),
  ];
  const rim = [
    beginMarkedContent("Artifact"),
    beginText(),
    setTextRenderingMode(TextRenderingMode.Outline),
    setStrokingGrayscaleColor(1),
    ...penSetting(RIM_MM, []),
    ...text,
    endText(),
    endMarkedContent(),
  ];
  return [
    ...(hatched ? rim : []),
    beginText(),
    setTextRenderingMode(TextRenderingMode.Fill),
    setFillingGrayscaleColor(0),
    ...text,
    endText(),
  ];
}
