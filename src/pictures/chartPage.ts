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
import type { LengthUnit } from "../units/length.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { FlangeChart } from "../ways/flangeChart.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { limitWords } from "../words/flangeLimitWords.ts";
import { angleWords } from "../words/stepWords.ts";
import { drawFlangeChart } from "./flangeChart.ts";

const WORDS_MM: Mm = 3;
/** The picture takes no more of the page's height than this share, so that the table stands under it. */
const PICTURE_SHARE = 0.45;

/** One page, or two where the table is long. */
export function chartPages(chart: FlangeChart, units: LengthUnit, size: PageSize): readonly Page[] {
  const widthMm = flowWidth(size);
  const columns = [
    { heading: `Web, ${units}`, widthMm: widthMm / 4 },
    ...chart.curves.map(({ angle }) => ({
      heading: `Flange at ${angleWords(angle)}, ${units}`,
      widthMm: (0.75 * widthMm) / chart.curves.length,
    })),
  ];
  const rows = chart.webs.map((web, i) => [
    formatLength(web, units),
    ...chart.curves.map(({ row }) => limitWords(row[i] ?? null, chart.mostFlange, units)),
  ]);
  const words =
    "Web and flange measured outside, two equal flanges, rounded down. What lies under its line folds, what lies above it hits.";
  return flowBlocks(
    [
      picture(drawFlangeChart(chart, units), widthMm, PICTURE_SHARE * size.heightMm),
      paragraph(words, WORDS_MM, widthMm),
      pageTable(columns, rows),
    ],
    size,
    `Return flanges on ${chart.brake}`,
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
