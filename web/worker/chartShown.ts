/**
 * The return flange chart of a job's brake and sheet, as the page shows and prints it.
 */

import { paperFor } from "../../src/drawing/pageSize.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { chartPages } from "../../src/pictures/chartPage.ts";
import { drawFlangeChart } from "../../src/pictures/flangeChart.ts";
import { flangeChart } from "../../src/ways/flangeChart.ts";
import { CHART_MEASURE, chartSheetWords, chartTable, ownChannels } from "../../src/words/chartWords.ts";
import type { ChartShown } from "./messages.ts";
import { paperPages } from "./paperPages.ts";

const ENLARGEMENT = 2;

/** Chart, table and pages for one job. */
export function chartShown(job: Job): ChartShown {
  const { units } = job;
  const chart = flangeChart(job);
  const drawing = drawFlangeChart(chart, units);
  const [heads = [], ...rows] = chartTable(chart, units);
  return {
    sheet: `${chartSheetWords(chart, units)}. ${CHART_MEASURE}`,
    heads,
    rows,
    own: ownChannels(chart, units),
    sentence: drawing.sentence,
    svg: writeSvg(drawing, { title: `Return flange chart of ${chart.brake}`, enlargement: ENLARGEMENT }),
    pages: paperPages(chartPages(chart, units, paperFor(units))),
  };
}
