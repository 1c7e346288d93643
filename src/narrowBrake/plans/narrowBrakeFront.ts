/**
 * Front view of a narrow brake, as the operator sees it: leaf before the bed, bar and holder over it, hinges, bolts, tongue.
 * Heights are those of the section beside it; lengths run along the bend, the middle of the bed being the middle of all.
 * Outlines of what is seen, no hatch; what stands behind the leaf is left out.
 */

import type { Mark } from "../../drawing/model.ts";
import type { Mm } from "../../units/quantity.ts";
import { envelope } from "../memberPlan.ts";
import { boltTopY, measured, type NarrowBrakeLayout } from "./narrowBrakeLayout.ts";
import { circle, rectangleLines } from "./stockView.ts";

/** Ends of a piece of this length, middle on the middle of the bed. */
export function endsOf(layout: NarrowBrakeLayout, lengthMm: Mm): readonly [left: Mm, right: Mm] {
  const middle = layout.frontX + layout.plan.bed.lengthMm / 2;
  return [middle - lengthMm / 2, middle + lengthMm / 2];
}

/** The front view with its dimensions. */
export function frontView(layout: NarrowBrakeLayout): Mark[] {
  const { plan, sheetMm, holderTopY, bedBottomY, tongueBottomY } = layout;
  const { bar, holder, bed, leaf, pin, tongue } = plan;
  const barTopY = sheetMm + bar.thicknessMm;
  const [bedLeft, bedRight] = endsOf(layout, bed.lengthMm);
  const [holderLeft, holderRight] = endsOf(layout, holder.lengthMm);
  const [barLeft, barRight] = endsOf(layout, bar.lengthMm);
  const [leafLeft, leafRight] = endsOf(layout, leaf.lengthMm);
  const [boltLeft, boltRight] = endsOf(layout, holder.bolts.spacingMm);
  const [tongueLeft, tongueRight] = endsOf(layout, tongue.widthMm);
  const headMm = holder.bolts.thread.diameterMm;
  // On an angle the heads sit behind its standing leg.
  const headsShow = boltTopY(layout) === holderTopY;
  const earMm = pin.earMm;
  const earDownMm = Math.max(leaf.standingMm, 2 * pin.diameterMm);
  return [
    ...rectangleLines("bed", bedLeft, bedBottomY, bedRight, 0),
    ...rectangleLines("bed", tongueLeft, tongueBottomY, tongueRight, bedBottomY),
    ...rectangleLines("leaf", leafLeft, -leaf.standingMm, leafRight, 0),
    ...rectangleLines("clamp", barLeft, sheetMm, barRight, barTopY),
    ...rectangleLines("clamp", holderLeft, barTopY, holderRight, holderTopY),
    ...[leafLeft - earMm, leafRight].flatMap((x) =>
      rectangleLines("frame", x, -earDownMm, x + earMm, pin.diameterMm),
    ),
    ...[bedLeft, bedRight - earMm].flatMap((x) =>
      rectangleLines("frame", x, -earDownMm, x + earMm, pin.diameterMm),
    ),
    ...[boltLeft, boltRight].flatMap((x): Mark[] => [
      ...(headsShow
        ? rectangleLines("frame", x - headMm, holderTopY, x + headMm, holderTopY + 0.7 * headMm)
        : []),
      {
        kind: "line",
        layer: "note",
        from: { x, y: holderTopY + 2 * headMm },
        to: { x, y: bedBottomY - headMm },
      },
    ]),
    // The pivot line runs through both hinges.
    { kind: "line", layer: "note", from: { x: bedLeft - earMm, y: 0 }, to: { x: bedRight + earMm, y: 0 } },
    measured(layout, { x: boltLeft, y: holderTopY }, { x: boltRight, y: holderTopY }, 2),
    measured(layout, { x: barLeft, y: holderTopY }, { x: barRight, y: holderTopY }, 3),
    measured(layout, { x: leafRight, y: tongueBottomY }, { x: leafLeft, y: tongueBottomY }, 2),
    measured(layout, { x: bedRight, y: tongueBottomY }, { x: bedLeft, y: tongueBottomY }, 3),
    measured(layout, { x: tongueRight, y: tongueBottomY }, { x: tongueLeft, y: tongueBottomY }, 1),
  ];
}

/** Top view over the front view: bed, bar, holder, bolts, rail with its screws, leaf at rest, handles' roots. */
export function topView(layout: NarrowBrakeLayout): Mark[] {
  const { plan, topY, noseSetbackMm } = layout;
  const { bar, holder, bed, leaf, rail, screws, handle } = plan;
  const bedBox = envelope(bed.shape);
  const holderW = envelope(holder.shape).widthMm;
  // What lies x behind the front edge of the bed in the section stands x above it here.
  const back = (sectionX: Mm) => topY - sectionX;
  const [bedLeft, bedRight] = endsOf(layout, bed.lengthMm);
  const [holderLeft, holderRight] = endsOf(layout, holder.lengthMm);
  const [barLeft, barRight] = endsOf(layout, bar.lengthMm);
  const [leafLeft, leafRight] = endsOf(layout, leaf.lengthMm);
  const [boltLeft, boltRight] = endsOf(layout, holder.bolts.spacingMm);
  const noseY = back(-noseSetbackMm);
  const holderFrontY = back(-noseSetbackMm - bar.overhangMm);
  const barBackY = back(-noseSetbackMm - bar.depthMm);
  const railY = back(-bedBox.widthMm);
  const boltY = back(-noseSetbackMm - holder.bolts.behindNoseMm);
  const handleMm = envelope(handle.stock.shape).widthMm;
  const leafFrontY = topY - leaf.faceMm;
  const stubY = leafFrontY - 1.5 * layout.rowMm;
  const screwXs = Array.from(
    { length: screws.count },
    (_, i) => barLeft + screws.fromEndMm + i * screws.spacingMm,
  );
  return [
    ...rectangleLines("bed", bedLeft, topY, bedRight, railY),
    ...rectangleLines("clamp", barLeft, noseY, barRight, barBackY),
    ...rectangleLines("clamp", holderLeft, holderFrontY, holderRight, holderFrontY + holderW),
    ...rectangleLines("leaf", leafLeft, leafFrontY, leafRight, topY),
    ...rectangleLines("frame", barLeft, railY, barRight, railY + rail.thicknessMm),
    ...[boltLeft, boltRight].flatMap((x): Mark[] => [
      circle("frame", { x, y: boltY }, holder.bolts.thread.diameterMm / 2),
      circle("frame", { x, y: boltY }, holder.bolts.thread.diameterMm),
    ]),
    ...screwXs.flatMap((x) =>
      rectangleLines(
        "frame",
        x - screws.thread.diameterMm / 2,
        barBackY,
        x + screws.thread.diameterMm / 2,
        railY + rail.thicknessMm + 3 * screws.thread.diameterMm,
      ),
    ),
    ...[leafLeft + handleMm, leafRight - 2 * handleMm].flatMap((x) =>
      rectangleLines("leaf", x, stubY, x + handleMm, leafFrontY),
    ),
    measured(layout, { x: bedRight, y: topY }, { x: bedRight, y: boltY }, -1),
    measured(layout, { x: bedRight, y: topY }, { x: bedRight, y: railY }, -2),
    measured(layout, { x: bedRight, y: topY }, { x: bedRight, y: leafFrontY }, 1),
    measured(layout, { x: screwXs[0]!, y: railY }, { x: screwXs[1]!, y: railY }, 2),
    measured(layout, { x: barLeft, y: railY }, { x: screwXs[0]!, y: railY }, 3),
  ];
}
