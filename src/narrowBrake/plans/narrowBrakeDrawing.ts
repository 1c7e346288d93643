/**
 * The drawing of a shop-made narrow brake: section, front and top view with their dimensions, stock, torque, cautions.
 * Third-angle projection, all in true millimetres; figures in the user's unit, named once.
 * Exact to the plan; thread, welds and springs are words, not lines.
 */

import type { Drawing, Mark } from "../../drawing/model.ts";
import { formatLength } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { torqueWords } from "../forceWords.ts";
import type { NarrowBrake, NarrowBrakePlan } from "../narrowBrake.ts";
import { frontView, topView } from "./narrowBrakeFront.ts";
import { layoutOf, type NarrowBrakeLayout, note } from "./narrowBrakeLayout.ts";
import { sectionView } from "./narrowBrakeSection.ts";

/**
 * Draws the plan.
 * @throws RangeError where there is no plan
 */
export function drawNarrowBrake(brake: NarrowBrake): Drawing {
  const { plan } = brake;
  if (plan === null) throw new RangeError("there is no plan to draw");
  const layout = layoutOf(brake, plan);
  const views = [...sectionView(layout), ...frontView(layout), ...topView(layout)];
  const { min, max } = reachOf(views, layout);
  const lines = stockLines(brake, plan, layout);
  const titleY = max.y + 3 * layout.textMm;
  const sentence = `Shop-made narrow brake in section, from the front and from the top: bar ${plan.bar.stock.name} ${layout.units}, ${formatLength(plan.bar.lengthMm, layout.units)} ${layout.units} long.`;
  const words: Mark[] = [
    note(
      layout,
      { x: min.x, y: titleY },
      `Shop-made narrow brake · lengths in ${layout.units === "in" ? "inches" : "mm"}`,
      1.5,
    ),
    note(
      layout,
      { x: -plan.bed.section.centroidXMm * 2, y: layout.bedBottomY - 2 * layout.textMm },
      "section",
    ),
    note(layout, { x: layout.frontX, y: layout.tongueBottomY }, "front"),
    note(layout, { x: layout.frontX, y: layout.topY - layout.plan.leaf.faceMm - layout.textMm * 2 }, "top"),
    ...lines.map((line, i) => note(layout, { x: min.x, y: min.y - layout.textMm * (2 + 1.6 * i) }, line)),
  ];
  const margin = 2 * layout.textMm;
  return {
    sentence,
    window: {
      min: { x: min.x - margin, y: min.y - layout.textMm * (2 + 1.6 * lines.length) - margin },
      max: { x: max.x + margin, y: titleY + 2 * layout.textMm + margin },
    },
    marks: [...views, ...words],
  };
}

function stockLines(brake: NarrowBrake, plan: NarrowBrakePlan, { units }: NarrowBrakeLayout): string[] {
  const { bar, holder, bed, leaf, pin, handle, screws, rail, tongue } = plan;
  const words = (mm: Mm) => formatLength(mm, units);
  const { bolts } = holder;
  return [
    `Bar ${bar.stock.name}, nose radius ${words(bar.noseRadiusMm)}${bar.frontBevelDeg > 0 ? `, front leans back ${bar.frontBevelDeg}°` : ""}. Holder ${holder.stock.name}. Bed ${bed.stock.name}. Leaf ${leaf.stock.name}${leaf.faceCutBack ? `, face leg cut back to ${words(leaf.faceMm)}` : ""}. Rail ${rail.stock.name}. Tongue ${tongue.stock.name}.`,
    `Two bolts ${bolts.thread.name} ${bolts.gradeName}, ${torqueWords(bolts.torqueNm, units)}, never past ${torqueWords(bolts.largestTorqueNm, units)}. ${screws.count} setback screws ${screws.thread.name}, travel ${words(screws.travelMm)}, each with a lock nut.`,
    `Hinge pins ${pin.stock.name}, ears ${pin.ear.name}; pivot on the front top edge of the bed. Two handles ${handle.stock.name}, ${words(handle.reachMm)} from pivot to hand.`,
    ...brake.problems.map((problem) => `Not yet right: ${problem}`),
    `${brake.limits[0]} ${brake.limits[1]}`,
    ...brake.cautions.slice(0, 2),
  ];
}

/** What the views reach, dimension lines included. */
function reachOf(marks: readonly Mark[], { rowMm }: NarrowBrakeLayout): Drawing["window"] {
  const points = marks.flatMap((mark) => {
    switch (mark.kind) {
      case "outline":
        return mark.outline.edges.flatMap(({ from, to }) => [from, to]);
      case "line":
      case "dimension":
        return [mark.from, mark.to];
      case "arc":
        return [mark.center];
      default:
        return [mark.at];
    }
  });
  const rows = Math.max(
    ...marks.map((mark) => (mark.kind === "dimension" ? Math.abs(mark.offsetMm) / rowMm : 0)),
  );
  const spare = (rows + 0.8) * rowMm;
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    min: { x: Math.min(...xs) - spare, y: Math.min(...ys) - spare },
    max: { x: Math.max(...xs) + spare, y: Math.max(...ys) + spare },
  };
}
