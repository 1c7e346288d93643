/**
 * `noseroom chart JOB`: the longest return flange for every web on the job's brake, as a table and a picture.
 */

import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import { chartPages } from "../pictures/chartPage.ts";
import { drawFlangeChart } from "../pictures/flangeChart.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import { CHART_ANGLES, type ChartPoint, type FlangeChart, flangeChart } from "../ways/flangeChart.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { limitWords } from "../words/flangeLimitWords.ts";
import { lengthWords } from "../words/lengthWords.ts";
import { angleWords } from "../words/stepWords.ts";
import { lengthIn } from "../words/wayWords.ts";
import { type Ink, inkFor } from "./ink.ts";
import { openJob } from "./openJob.ts";
import { paperOption } from "./paper.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { writeOut } from "./writeOut.ts";

export interface ChartOptions {
  /** Angles apart by commas. */
  readonly angles?: string;
  readonly json?: boolean;
  readonly svg?: string;
  readonly pdf?: string;
  readonly paper?: string;
}

/**
 * Runs the command and gives its exit status.
 * @throws Refusal for input that cannot be worked with
 */
export async function runChart(path: string, options: ChartOptions): Promise<number> {
  const job = await openJob(path);
  const chart = flangeChart(job, anglesOf(options.angles));
  if (options.svg !== undefined) {
    const title = `Return flange chart of ${chart.brake}`;
    await writeOut(options.svg, writeSvg(drawFlangeChart(chart, job.units), { title, enlargement: 2 }));
  }
  if (options.pdf !== undefined) {
    const pages = chartPages(chart, job.units, paperOption(options.paper, job.units));
    await writeOut(options.pdf, await writePdf(pages, `Return flange chart of ${chart.brake}`));
  }
  if (options.json) {
    process.stdout.write(`${JSON.stringify(chart, null, 2)}\n`);
    return 0;
  }
  const ink = inkFor(process.stdout, process.env);
  const lines = chartLines(chart, job.units, ink, columnsOf(process.stdout));
  if (options.svg !== undefined) lines.push("", `Drawn at twice its size: ${options.svg}`);
  if (options.pdf !== undefined) lines.push("", `To print and hang up: ${options.pdf}`);
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}

/** The chart as text, one string a line; sentences no wider than `columns`. */
export function chartLines(
  chart: FlangeChart,
  units: LengthUnit,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const headings = [`web, ${units}`, ...chart.curves.map(({ angle }) => `at ${angleWords(angle)}`)];
  const rows = chart.webs.map((web, i) => [
    formatLength(web, units),
    ...chart.curves.map(({ row }) => limitWords(row[i] ?? null, chart.mostFlange, units)),
  ]);
  const own = chart.part.map((point) => ownWords(point, chart.mostFlange, units));
  return [
    ink.strong(`Longest return flange on ${chart.brake}`),
    ...wrap(
      `${chart.metal}, ${lengthWords(chart.thickness, units)} thick, inside radius ${lengthWords(chart.insideRadius, units)}; web and flange measured outside, two equal flanges, rounded down.`,
      columns,
      "",
    ),
    "",
    ...table(
      [headings, ...rows],
      headings.map(() => "right" as const),
    ),
    ...(own.length > 0 ? ["", ...own.flatMap((line) => wrap(line, columns, ""))] : []),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}

/** The part's own channel and how it stands to the limit. */
function ownWords(
  { flat, web, flange, angle, longest }: ChartPoint,
  most: number,
  units: LengthUnit,
): string {
  const size = `Flat ${flat} of the part: web ${lengthIn(web, units)}, return flange ${lengthIn(flange, units)}, ${angleWords(angle)}`;
  if (longest === null) return `${size}. No return flange can be made there.`;
  if (longest >= most) return `${size}. Any return flange can be made there.`;
  const verdict = flange > longest ? "too long" : "short enough";
  return `${size}. That is ${verdict}: the longest there is ${limitWords(longest, most, units)} ${units}.`;
}

function anglesOf(written: string | undefined): readonly number[] {
  if (written === undefined) return CHART_ANGLES;
  const angles = written.split(",").map(Number);
  if (angles.some((angle) => !(angle > 0 && angle < 180))) {
    throw new Refusal(`--angles is "${written}"; it may be angles between 0 and 180, such as 60,90.`);
  }
  return angles;
}
