/**
 * The return flange chart on paper, to hang beside the brake: the picture as wide as the page, the table under it.
 */

import type { Block } from "../drawing/block.ts";
import { flowBlocks, flowWidth } from "../drawing/flow.ts";
import type { Drawing } from "../drawing/model.ts";
import { type Page, placeInBox, spanOf } from "../drawing/page.ts";
import type { PageSize } from "../drawing/pageSize.ts";
import { pageTable } from "../drawing/pageTable.ts";
import { paragraph } from "../drawing/paragraph.ts";
import type { FlangeChart } from "../jobFile/flangeChart.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { CHART_MEASURE, chartTable, chartTitle } from "../words/chartWords.ts";
import { drawFlangeChart } from "./flangeChart.ts";

const WORDS_MM: Mm = 3;
/** The picture takes no more of the page's height than this share, so that the table stands under it. */
const PICTURE_SHARE = 0.45;

/** One page, or two where the table is long. */
export function chartPages(chart: FlangeChart, units: LengthUnit, size: PageSize): readonly Page[] {
  const widthMm = flowWidth(size);
  const [heads = [], ...rows] = chartTable(chart, units);
  const columns = heads.map((heading) => ({ heading, widthMm: widthMm / heads.length }));
  const words = `${CHART_MEASURE} What lies under its line folds, what lies above it hits.`;
  return flowBlocks(
    [
      picture(drawFlangeChart(chart, units), widthMm, PICTURE_SHARE * size.heightMm),
      paragraph(words, WORDS_MM, widthMm),
      pageTable(columns, rows),
    ],
    size,
    chartTitle(chart),
    CAUTIONS,
  );
}

function picture(drawing: Drawing, widthMm: Mm, mostHighMm: Mm): Block {
  const span = spanOf(drawing.window);
  const heightMm = Math.min(mostHighMm, (span.heightMm / span.widthMm) * widthMm);
  return {
    heightMm,
    put: (leftMm, topMm) => {
      const box = { min: { x: leftMm, y: topMm - heightMm }, max: { x: leftMm + widthMm, y: topMm } };
      return { marks: [], placed: [placeInBox(drawing, box)] };
    },
  };
}
