/**
 * Where the three views of a narrow brake stand on their sheet: section left, front beside it, top over the front.
 * Third-angle projection (ISO 128, from memory): the views line up, so that a height or a length is found straight across.
 * True size in drawing millimetres; the page's scale is the pen's.
 */

import type { Mark } from "../../drawing/model.ts";
import type { Point } from "../../plane/point.ts";
import { formatLength, type LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { envelope } from "../memberPlan.ts";
import type { NarrowBrake, NarrowBrakePlan } from "../narrowBrake.ts";

export interface NarrowBrakeLayout {
  readonly plan: NarrowBrakePlan;
  readonly units: LengthUnit;
  /** Sheet thickness and nose setback as drawn. */
  readonly sheetMm: Mm;
  readonly noseSetbackMm: Mm;
  /** Front view: its left end, heights are the section's. */
  readonly frontX: Mm;
  /** Top view: height of the bed's front edge. */
  readonly topY: Mm;
  readonly holderTopY: Mm;
  readonly bedBottomY: Mm;
  readonly tongueBottomY: Mm;
  readonly textMm: Mm;
  /** From one dimension line to the next. */
  readonly rowMm: Mm;
}

/** Text height as a share of the sheet's width: about 3 mm on a page 280 mm wide. */
const TEXT_SHARE = 0.011;

/** The layout for a plan. */
export function layoutOf({ requirements }: NarrowBrake, plan: NarrowBrakePlan): NarrowBrakeLayout {
  const bed = envelope(plan.bed.shape);
  const holder = envelope(plan.holder.shape);
  const thinnest = requirements.parts.reduce((a, b) => (b.thicknessMm < a.thicknessMm ? b : a));
  const sheetMm = thinnest.thicknessMm;
  const widthMm = 1.5 * (bed.widthMm + plan.leaf.faceMm) + 1.25 * plan.bed.lengthMm;
  const textMm = widthMm * TEXT_SHARE;
  const rowMm = 3.2 * textMm;
  const holderTopY = sheetMm + plan.bar.thicknessMm + holder.heightMm;
  return {
    plan,
    units: requirements.units,
    sheetMm,
    noseSetbackMm: Math.min(...thinnest.noseSetbacksMm),
    frontX: plan.leaf.faceMm + 6 * rowMm,
    topY: holderTopY + plan.leaf.faceMm + 4 * rowMm,
    holderTopY,
    bedBottomY: -bed.heightMm,
    tongueBottomY: -bed.heightMm - plan.tongue.heightMm,
    textMm,
    rowMm,
  };
}

/** A measured distance, worded in the user's unit. Positive rows stand off to the left of from → to. */
export function measured(layout: NarrowBrakeLayout, from: Point, to: Point, rows: number, lead = ""): Mark {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return {
    kind: "dimension",
    layer: "dimension",
    from,
    to,
    words: `${lead}${formatLength(length, layout.units)}`,
    offsetMm: rows * layout.rowMm,
  };
}

/** A line of text. */
export function note(layout: NarrowBrakeLayout, at: Point, words: string, size = 1): Mark {
  return { kind: "text", layer: "note", at, words, heightMm: size * layout.textMm, anchor: "start" };
}

/** Where the bolt heads sit: on the foot of an angle, on top of a tube. */
export function boltTopY({ plan, sheetMm, holderTopY }: NarrowBrakeLayout): Mm {
  const { shape } = plan.holder;
  return shape.kind === "angle" ? sheetMm + plan.bar.thicknessMm + shape.thicknessMm : holderTopY;
}
