/**
 * Section through a narrow brake, square to the bend: bed, bar, holder, leaf at rest, tongue, rail, bolt, screw, sheet.
 * Section frame as everywhere: front top edge of the bed at (0, 0).
 * Exact outlines; the bolt and screw are shown by their axes and outsides.
 */

import type { Mark } from "../../drawing/model.ts";
import { polygon, rectangle } from "../../drawing/polygon.ts";
import { filletedOutline } from "../../plane/fillet.ts";
import { movedOutline } from "../../plane/move.ts";
import type { Outline } from "../../plane/outline.ts";
import { type Mm, toRad } from "../../units/quantity.ts";
import { leafProfile } from "../madeBrake.ts";
import { envelope } from "../memberPlan.ts";
import type { Shape } from "../strength/section.ts";
import { boltTopY, measured, type NarrowBrakeLayout } from "./narrowBrakeLayout.ts";
import { rectangleLines, tubeOutline } from "./stockView.ts";

/** The section view with its dimensions. */
export function sectionView(layout: NarrowBrakeLayout): Mark[] {
  return [...bodies(layout), ...fastenings(layout), ...dimensions(layout)];
}

function bodies(layout: NarrowBrakeLayout): Mark[] {
  const { plan, sheetMm, noseSetbackMm, bedBottomY, tongueBottomY } = layout;
  const { bar, holder, bed, leaf, tongue, rail } = plan;
  const bedBox = envelope(bed.shape);
  const barTopY = sheetMm + bar.thicknessMm;
  const holderFrontX = -noseSetbackMm - bar.overhangMm;
  const longestFlat = Math.max(bar.overhangMm, leaf.faceMm / 3);
  const tongueX = -bedBox.widthMm / 2;
  const leafOutline =
    leaf.shape.kind === "tube"
      ? tubeOutline(0, -leaf.standingMm, leaf.faceMm, 0, leaf.thicknessMm)
      : polygon(leafProfile(plan).map(([x, y]) => ({ x, y })));
  return [
    { kind: "outline", layer: "bed", outline: placed(bed.shape, 0, bedBottomY), caption: "bed" },
    {
      kind: "outline",
      layer: "bed",
      outline: rectangle(
        { x: tongueX - tongue.thicknessMm / 2, y: tongueBottomY },
        { x: tongueX + tongue.thicknessMm / 2, y: bedBottomY },
      ),
      caption: "tongue for the vise",
    },
    {
      kind: "outline",
      layer: "frame",
      outline: rectangle(
        { x: -bedBox.widthMm - rail.thicknessMm, y: barTopY - rail.heightMm },
        { x: -bedBox.widthMm, y: barTopY },
      ),
      caption: "screw rail",
    },
    { kind: "outline", layer: "clamp", outline: barOutline(layout), caption: "clamp bar" },
    {
      kind: "outline",
      layer: "clamp",
      outline: placed(holder.shape, holderFrontX, barTopY),
      caption: "holder",
    },
    { kind: "outline", layer: "leaf", outline: leafOutline, caption: "leaf at rest" },
    {
      kind: "outline",
      layer: "part",
      outline: rectangle({ x: -Math.min(bar.depthMm, longestFlat), y: 0 }, { x: longestFlat, y: sheetMm }),
      caption: "sheet",
    },
    {
      kind: "outline",
      layer: "frame",
      outline: rectangle(
        { x: -noseSetbackMm - bar.depthMm, y: 0 },
        { x: -noseSetbackMm - bar.depthMm + bar.depthMm / 5, y: sheetMm },
      ),
      caption: "heel strip",
    },
  ];
}

/** A stock shape with its front at `frontX` and its underside at `underY`; an angle's standing leg is in front. */
function placed(shape: Shape, frontX: Mm, underY: Mm): Outline {
  const { widthMm: w, heightMm: h } = envelope(shape);
  if (shape.kind === "tube") return tubeOutline(frontX - w, underY, frontX, underY + h, shape.wallMm);
  if (shape.kind !== "angle") return rectangle({ x: frontX - w, y: underY }, { x: frontX, y: underY + h });
  const t = shape.thicknessMm;
  return polygon([
    { x: frontX, y: underY },
    { x: frontX, y: underY + h },
    { x: frontX - t, y: underY + h },
    { x: frontX - t, y: underY + t },
    { x: frontX - w, y: underY + t },
    { x: frontX - w, y: underY },
  ]);
}

/** The bar, nose rounded and front leaning back, closed on the sheet. */
function barOutline({ plan, sheetMm, noseSetbackMm }: NarrowBrakeLayout): Outline {
  const { bar } = plan;
  const noseAngleRad = toRad(90 - bar.frontBevelDeg);
  const v = bar.noseRadiusMm / Math.tan(noseAngleRad / 2) - bar.noseRadiusMm;
  const result = filletedOutline([
    { x: v, y: 0, radius: bar.noseRadiusMm },
    { x: v - bar.thicknessMm / Math.tan(noseAngleRad), y: bar.thicknessMm },
    { x: -bar.depthMm, y: bar.thicknessMm },
    { x: -bar.depthMm, y: 0 },
  ]);
  // The window keeps the bar thick enough for its rounding, so that there is always an outline.
  if (!result.ok) throw new RangeError("the bar is too thin for its nose radius");
  return movedOutline(result.outline, -noseSetbackMm, sheetMm);
}

function fastenings(layout: NarrowBrakeLayout): Mark[] {
  const { plan, sheetMm, noseSetbackMm, bedBottomY } = layout;
  const topY = boltTopY(layout);
  const { bar, holder, screws, bed, rail, pin } = plan;
  const boltX = -noseSetbackMm - holder.bolts.behindNoseMm;
  const half = holder.bolts.thread.diameterMm / 2;
  const screwY = sheetMm + bar.thicknessMm / 2;
  const backX = -noseSetbackMm - bar.depthMm;
  const railX = -envelope(bed.shape).widthMm - rail.thicknessMm;
  const screwEndX = railX - 4 * screws.thread.diameterMm;
  return [
    ...rectangleLines("frame", boltX - half, bedBottomY - 2 * half, boltX + half, topY + 2 * half),
    {
      kind: "line",
      layer: "note",
      from: { x: boltX, y: bedBottomY - 4 * half },
      to: { x: boltX, y: topY + 4 * half },
    },
    { kind: "line", layer: "note", from: { x: screwEndX, y: screwY }, to: { x: backX, y: screwY } },
    ...rectangleLines(
      "frame",
      screwEndX,
      screwY - screws.thread.diameterMm / 2,
      backX,
      screwY + screws.thread.diameterMm / 2,
    ),
    {
      kind: "arc",
      layer: "frame",
      center: { x: 0, y: 0 },
      radius: pin.diameterMm / 2,
      startRad: 0,
      sweepRad: 2 * Math.PI,
    },
    { kind: "cross", layer: "note", at: { x: 0, y: 0 } },
  ];
}

function dimensions(layout: NarrowBrakeLayout): Mark[] {
  const { plan, sheetMm, noseSetbackMm, holderTopY, bedBottomY, tongueBottomY } = layout;
  const { bar, holder, bed, leaf, tongue } = plan;
  const bedW = envelope(bed.shape).widthMm;
  const holderW = envelope(holder.shape).widthMm;
  const noseX = -noseSetbackMm;
  const barTopY = sheetMm + bar.thicknessMm;
  const holderFront = { x: noseX - bar.overhangMm, y: holderTopY };
  const boltX = noseX - holder.bolts.behindNoseMm;
  const rightX = leaf.faceMm;
  return [
    measured(layout, holderFront, { x: noseX, y: holderTopY }, 1),
    measured(layout, { x: boltX, y: holderTopY }, holderFront, 3),
    measured(layout, { x: noseX - bar.depthMm, y: holderTopY }, { x: noseX, y: holderTopY }, 4),
    measured(layout, { x: noseX - bar.overhangMm - holderW, y: holderTopY }, holderFront, 2),
    measured(layout, { x: rightX, y: barTopY }, { x: rightX, y: sheetMm }, 3),
    measured(layout, { x: rightX, y: barTopY }, { x: rightX, y: holderTopY }, -2),
    measured(layout, { x: rightX, y: -leaf.standingMm }, { x: rightX, y: 0 }, -1),
    measured(layout, { x: 0, y: -leaf.standingMm }, { x: leaf.faceMm, y: -leaf.standingMm }, -1),
    measured(layout, { x: -bedW, y: 0 }, { x: -bedW, y: bedBottomY }, -2),
    measured(layout, { x: -bedW, y: bedBottomY }, { x: -bedW, y: tongueBottomY }, -2),
    measured(layout, { x: 0, y: tongueBottomY }, { x: -bedW, y: tongueBottomY }, 1),
    measured(
      layout,
      { x: -bedW / 2 + tongue.thicknessMm / 2, y: tongueBottomY },
      { x: -bedW / 2 - tongue.thicknessMm / 2, y: tongueBottomY },
      2,
    ),
  ];
}
