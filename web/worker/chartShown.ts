/**
 * The return flange chart of a job's brake and sheet, as the page shows and prints it.
 */

import { paperFor } from "../../src/drawing/pageSize.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { chartPages } from "../../src/pictures/chartPage.ts";
import { drawFlangeChart } from "../../src/pictures/flangeChart.ts";
import { formatLength } from "../../src/units/length.ts";
import { flangeChart } from "../../src/ways/flangeChart.ts";
import { limitWords } from "../../src/words/flangeLimitWords.ts";
import { lengthWords } from "../../src/words/lengthWords.ts";
import { angleWords } from "../../src/words/stepWords.ts";
import type { ChartShown } from "./messages.ts";
import { paperPages } from "./paperPages.ts";

const ENLARGEMENT = 2;

/** Chart, table and pages for one job. */
export function chartShown(job: Job): ChartShown {
  const { units } = job;
  const chart = flangeChart(job);
  const drawing = drawFlangeChart(chart, units);
  const said = (mm: number) => lengthWords(mm, units);
  return {
    sheet: `${chart.metal}, ${said(chart.thickness)} thick, inside radius ${said(chart.insideRadius)}. Web and flange are measured outside, two equal flanges, rounded down.`,
    heads: [`web, ${units}`, ...chart.curves.map(({ angle }) => `at ${angleWords(angle)}`)],
    rows: chart.webs.map((web, i) => [
      formatLength(web, units),
      ...chart.curves.map(({ row }) => limitWords(row[i] ?? null, chart.mostFlange, units)),
    ]),
    own: chart.part.map(
      ({ flat, web, flange, angle }) =>
        `The dot is flat ${flat} of this part: web ${said(web)}, return flange ${said(flange)}, ${angleWords(angle)}.`,
    ),
    sentence: drawing.sentence,
    svg: writeSvg(drawing, { title: `Return flange chart of ${chart.brake}`, enlargement: ENLARGEMENT }),
    pages: paperPages(chartPages(chart, units, paperFor(units))),
  };
}
