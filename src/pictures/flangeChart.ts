/**
 * The return flange chart as a drawing, to print and hang beside the brake: web along, longest return flange up,
 * one curve an angle, the job's own channels as dots. One millimetre of the drawing is one millimetre of metal.
 * Bound: the curve's own (ways/flangeCurve.ts).
 */

import type { Drawing, Mark } from "../drawing/model.ts";
import type { ChartCurve, ChartPoint, FlangeChart } from "../jobFile/flangeChart.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import { formatLength, type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import { chartSheetWords, chartTitle } from "../words/chartWords.ts";
import { lengthWords } from "../words/lengthWords.ts";

const TEXT_MM: Mm = 1.7;
/** A line of the grid for every one of these. */
const GRID: Readonly<Record<LengthUnit, Mm>> = { in: MM_PER_INCH / 4, mm: 5 };
const LEFT_MM: Mm = 9;
const UNDER_MM: Mm = 8;
const OVER_MM: Mm = 9;
const RIGHT_MM: Mm = 8;
const DOT_MM: Mm = 0.7;

/** The chart; `units` are the reader's. */
export function drawFlangeChart(chart: FlangeChart, units: LengthUnit): Drawing {
  const widest = Math.max(
    0,
    ...chart.webs,
    ...chart.curves.flatMap(({ points }) => points.map(({ web }) => web)),
  );
  const tallest = heightOf(chart, widest);
  const marks: Mark[] = [
    ...grid(widest, tallest, units),
    ...headings(chart, widest, tallest, units),
    ...chart.curves.flatMap((curve) => curveMarks(curve, tallest)),
    ...chart.part.flatMap((point) => dot(point, tallest)),
  ];
  const window = { min: { x: -LEFT_MM, y: -UNDER_MM }, max: { x: widest + RIGHT_MM, y: tallest + OVER_MM } };
  return { sentence: sentenceOf(chart, units), window, marks };
}

/** Curves that run off the top are cut there: what is longer than the widest web is seldom asked. */
function heightOf({ curves, part, mostFlange }: FlangeChart, widest: Mm): Mm {
  const limits = curves.flatMap(({ points }) => points.map(({ flange }) => flange ?? 0));
  const highest = Math.max(
    0,
    ...limits.filter((flange) => flange < mostFlange),
    ...part.map(({ flange }) => flange),
  );
  return Math.min(widest, Math.max(highest * 1.1, widest / 3));
}

function grid(widest: Mm, tallest: Mm, units: LengthUnit): Mark[] {
  const step = GRID[units];
  const marks: Mark[] = [];
  for (let i = 0; i * step <= widest + 1e-6; i++) {
    const x = i * step;
    marks.push({
      kind: "line",
      layer: i === 0 ? "cut" : "dimension",
      from: { x, y: 0 },
      to: { x, y: tallest },
    });
    if (i % 2 === 0) marks.push(text({ x, y: -1.4 * TEXT_MM }, formatLength(x, units), "middle"));
  }
  for (let i = 0; i * step <= tallest + 1e-6; i++) {
    const y = i * step;
    marks.push({
      kind: "line",
      layer: i === 0 ? "cut" : "dimension",
      from: { x: 0, y },
      to: { x: widest, y },
    });
    if (i % 2 === 0 && i > 0) {
      marks.push(text({ x: -0.6 * TEXT_MM, y: y - 0.35 * TEXT_MM }, formatLength(y, units), "end"));
    }
  }
  return marks;
}

function headings(chart: FlangeChart, widest: Mm, tallest: Mm, units: LengthUnit): Mark[] {
  const lines: Mark[] = [
    text({ x: 0, y: tallest + 3.6 * TEXT_MM }, chartTitle(chart), "start"),
    text({ x: 0, y: tallest + 1.8 * TEXT_MM }, chartSheetWords(chart, units), "start"),
    text({ x: widest / 2, y: -3.6 * TEXT_MM }, `web, outside, ${units}`, "middle"),
  ];
  const upright = { x: -LEFT_MM + 1.5 * TEXT_MM, y: tallest / 2 };
  return [
    ...lines,
    { ...text(upright, `return flange, outside, ${units}`, "middle"), angleRad: Math.PI / 2 },
  ];
}

function curveMarks({ angle, points }: ChartCurve, tallest: Mm): Mark[] {
  const marks: Mark[] = [];
  points.forEach((point, i) => {
    const next = points[i + 1];
    if (next === undefined || point.flange === null || next.flange === null) return;
    const part = below({ x: point.web, y: point.flange }, { x: next.web, y: next.flange }, tallest);
    if (part) marks.push({ kind: "line", layer: "cut", from: part[0], to: part[1] });
  });
  const last = points.findLast(({ flange }) => flange !== null && flange <= tallest);
  if (last?.flange != null) {
    const at = { x: last.web + 0.4 * TEXT_MM, y: last.flange - 0.35 * TEXT_MM };
    marks.push(text(at, angleWords(angle), "start"));
  }
  return marks;
}

/** The part of a line that stays under the top of the chart; undefined where none does. */
function below(a: Point, b: Point, top: Mm): readonly [Point, Point] | undefined {
  if (a.y > top && b.y > top) return undefined;
  if (a.y <= top && b.y <= top) return [a, b];
  const cut = { x: a.x + ((b.x - a.x) * (top - a.y)) / (b.y - a.y), y: top };
  return a.y <= top ? [a, cut] : [cut, b];
}

function dot({ flat, web, flange }: ChartPoint, tallest: Mm): Mark[] {
  if (flange > tallest) return [];
  const center = { x: web, y: flange };
  const words = `flat ${flat}`;
  return [
    { kind: "outline", layer: "part", outline: disc(center), caption: words },
    text({ x: web + 1.6 * DOT_MM, y: flange + 0.6 * TEXT_MM }, words, "start"),
  ];
}

function disc(center: Point): Outline {
  const from = { x: center.x + DOT_MM, y: center.y };
  const arc = {
    kind: "arc",
    from,
    to: from,
    center,
    radius: DOT_MM,
    startRad: 0,
    sweepRad: 2 * Math.PI,
  } as const;
  return { edges: [arc] };
}

function text(at: Point, words: string, anchor: "start" | "middle" | "end"): Extract<Mark, { kind: "text" }> {
  return { kind: "text", layer: "note", at, words, heightMm: TEXT_MM, anchor };
}

function sentenceOf({ brake, curves, part }: FlangeChart, units: LengthUnit): string {
  const angles = curves.map(({ angle }) => angleWords(angle)).join(", ");
  const own = part
    .map(
      ({ flat, web, flange }) =>
        `flat ${flat}, web ${lengthWords(web, units)} with flange ${lengthWords(flange, units)}`,
    )
    .join("; ");
  const dots = own === "" ? "" : ` The part's own: ${own}.`;
  return `Longest return flange for every web on ${brake} at ${angles}.${dots}`;
}
