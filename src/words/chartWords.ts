/**
 * The return flange chart in words: what it holds for, its table, and how the part's own channels stand to it.
 * A longest flange is rounded down so that it can be bent, to a 64th or a tenth of a mm.
 */
import type { ChartPoint, FlangeChart } from "../jobFile/flangeChart.ts";
import { formatLength, type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { lengthIn } from "./wayWords.ts";

/** What the chart is for. @example chartTitle(chart) // "Longest return flange on 24 in finger brake" */
export function chartTitle({ brake }: FlangeChart): string {
  return `Longest return flange on ${brake}`;
}

/** The sheet that it holds for. */
export function chartSheetWords({ metal, thickness, insideRadius }: FlangeChart, units: LengthUnit): string {
  return `${metal}, ${lengthWords(thickness, units)} thick, inside radius ${lengthWords(insideRadius, units)}`;
}

/** How to read it. */
export const CHART_MEASURE = "Web and flange measured outside, two equal flanges, rounded down.";

/** Headings and rows of the table: a web, then the longest flange at each angle. */
export function chartTable({ webs, curves, mostFlange }: FlangeChart, units: LengthUnit): string[][] {
  return [
    [`web, ${units}`, ...curves.map(({ angle }) => `at ${angleWords(angle)}`)],
    ...webs.map((web, i) => [
      formatLength(web, units),
      ...curves.map(({ row }) => flangeLimit(row[i] ?? null, mostFlange, units)),
    ]),
  ];
}

/** The part's own channels, a sentence each. */
export function ownChannels({ part, mostFlange }: FlangeChart, units: LengthUnit): string[] {
  return part.map((point) => ownChannel(point, mostFlange, units));
}

function ownChannel(
  { flat, web, flange, angle, longest }: ChartPoint,
  mostMm: Mm,
  units: LengthUnit,
): string {
  const size = `Flat ${flat} of the part: web ${lengthIn(web, units)}, return flange ${lengthIn(flange, units)}, ${angleWords(angle)}`;
  if (longest === null) return `${size}. No return flange can be made there.`;
  if (longest >= mostMm) return `${size}. Any return flange can be made there.`;
  const verdict = flange > longest ? "too long" : "short enough";
  return `${size}. That is ${verdict}: the longest there is ${flangeLimit(longest, mostMm, units)} ${units}.`;
}

/** @example flangeLimit(7.6, 60, "in") // "19/64" */
export function flangeLimit(flangeMm: Mm | null, mostMm: Mm, units: LengthUnit): string {
  if (flangeMm === null) return "none";
  if (flangeMm >= mostMm) return "any";
  const grain = units === "in" ? MM_PER_INCH / 64 : 0.1;
  return formatLength(Math.floor(flangeMm / grain + 1e-9) * grain, units);
}
