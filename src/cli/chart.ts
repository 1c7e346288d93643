/**
 * `noseroom chart JOB`: the longest return flange for every web on the job's brake, as a table and a picture.
 */
import { CAUTIONS } from "../drawing/cautions.ts";
import { drawFlangeChart } from "../drawing/flangeChart.ts";
import { lengthWords } from "../drawing/lengthWords.ts";
import { angleWords } from "../drawing/stepWords.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import { CHART_ANGLES, type FlangeChart, flangeChart } from "../job/flangeChart.ts";
import { formatLength, type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { type Ink, inkFor } from "./ink.ts";
import { openJob } from "./openJob.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { writeOut } from "./writeOut.ts";

export interface ChartOptions {
  /** Angles apart by commas. */
  readonly angles?: string;
  readonly json?: boolean;
  readonly svg?: string;
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
  if (options.json) {
    process.stdout.write(`${JSON.stringify(chart, null, 2)}\n`);
    return 0;
  }
  const lines = chartLines(chart, job.units, inkFor(process.stdout, process.env));
  if (options.svg !== undefined) lines.push("", `Drawn at twice its size: ${options.svg}`);
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}

/** The chart as text, one string a line. */
export function chartLines(chart: FlangeChart, units: LengthUnit, ink: Ink): string[] {
  const headings = [`web, ${units}`, ...chart.curves.map(({ angle }) => `at ${angleWords(angle)}`)];
  const rows = chart.webs.map((web, i) => [
    formatLength(web, units),
    ...chart.curves.map(({ row }) => limitText(row[i] ?? null, chart.mostFlange, units)),
  ]);
  const own = chart.part.map(
    ({ flat, web, flange, angle }) =>
      `Flat ${flat} of the part: web ${lengthWords(web, units)}, return flange ${lengthWords(flange, units)}, ${angleWords(angle)}.`,
  );
  return [
    ink.strong(`Longest return flange on ${chart.brake}`),
    `${chart.metal}, ${lengthWords(chart.thickness, units)} thick, inside radius ${lengthWords(chart.insideRadius, units)}; web and flange measured outside, two equal flanges, rounded down.`,
    "",
    ...table(
      [headings, ...rows],
      headings.map(() => "right" as const),
    ),
    ...(own.length > 0 ? ["", ...own] : []),
    "",
    ink.faint(CAUTIONS),
  ];
}

/** Rounded down, so that the figure can be bent: a 64th, or a tenth of a millimetre. */
function limitText(flange: Mm | null, most: Mm, units: LengthUnit): string {
  if (flange === null) return "none";
  if (flange >= most) return "any";
  const grain = units === "in" ? MM_PER_INCH / 64 : 0.1;
  return formatLength(Math.floor(flange / grain + 1e-9) * grain, units);
}

function anglesOf(written: string | undefined): readonly number[] {
  if (written === undefined) return CHART_ANGLES;
  const angles = written.split(",").map(Number);
  if (angles.some((angle) => !(angle > 0 && angle < 180))) {
    throw new Refusal(`--angles is "${written}"; it may be angles between 0 and 180, such as 60,90.`);
  }
  return angles;
}
