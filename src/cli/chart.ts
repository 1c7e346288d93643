/**
 * `noseroom chart JOB`: the longest return flange for every web on the job's brake, as a table and a picture.
 */

import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import type { FlangeChart } from "../jobFile/flangeChart.ts";
import { chartPages } from "../pictures/chartPage.ts";
import { drawFlangeChart } from "../pictures/flangeChart.ts";
import type { LengthUnit } from "../units/length.ts";
import { CHART_ANGLES, flangeChart } from "../ways/flangeChart.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { CHART_MEASURE, chartSheetWords, chartTable, chartTitle, ownChannels } from "../words/chartWords.ts";
import { type DrawnFiles, paperOption } from "./drawnFiles.ts";
import { type Ink, inkFor } from "./ink.ts";
import { openJob } from "./openJob.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { writeOut } from "./writeOut.ts";

const OTHER_JOB =
  "A chart is of return flanges on a brake: give it a job of the same brake with flats and bends.";

export interface ChartOptions extends Omit<DrawnFiles, "dxf"> {
  /** Angles apart by commas. */
  readonly angles?: string;
  readonly json?: boolean;
}

/**
 * Runs the command and gives its exit status.
 * @throws Refusal for input that cannot be worked with
 */
export async function runChart(path: string, options: ChartOptions): Promise<number> {
  const job = await openJob(path, OTHER_JOB);
  const chart = flangeChart(job, anglesOf(options.angles));
  const title = `Return flange chart of ${chart.brake}`;
  if (options.svg !== undefined) {
    await writeOut(
      options.svg,
      writeSvg(drawFlangeChart(chart, job.units), { title, enlargement: 2 }),
      options,
    );
  }
  if (options.pdf !== undefined) {
    const pages = chartPages(chart, job.units, paperOption(options.paper, job.units));
    await writeOut(options.pdf, await writePdf(pages, title), options);
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
function chartLines(
  chart: FlangeChart,
  units: LengthUnit,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const rows = chartTable(chart, units);
  const own = ownChannels(chart, units);
  return [
    ink.strong(chartTitle(chart)),
    ...wrap(`${chartSheetWords(chart, units)}. ${CHART_MEASURE}`, columns, ""),
    "",
    ...table(
      rows,
      (rows[0] ?? []).map(() => "right" as const),
    ),
    ...(own.length > 0 ? ["", ...own.flatMap((line) => wrap(line, columns, ""))] : []),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}

function anglesOf(written: string | undefined): readonly number[] {
  if (written === undefined) return CHART_ANGLES;
  const angles = written.split(",").map(Number);
  if (angles.some((angle) => !(angle > 0 && angle < 180))) {
    throw new Refusal(`--angles is "${written}"; it may be angles between 0 and 180, such as 60,90.`);
  }
  return angles;
}
