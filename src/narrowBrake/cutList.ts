/**
 * What to saw for a narrow brake: pieces, stock by name, lengths, weights, and the work on each.
 * Weight from the sharp-cornered section and 7850 kg/m³ (strength/weight.ts).
 * Bound: lengths are finished lengths, the saw's kerf is extra; weights within 3 % of the tables.
 */
import type { LengthUnit } from "../units/length.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { HINGE_LENGTH_MM } from "./chooseLeaf.ts";
import type { CutPiece, NarrowBrakePlan } from "./narrowBrake.ts";
import { upToMark } from "./shopMark.ts";
import type { StockSize } from "./stockSize.ts";
import { sectionOf } from "./strength/section.ts";
import { barWeight } from "./strength/weight.ts";

/** Handles are let into the leaf by this much. */
const HANDLE_ROOT_MM = 40;
/** From the pivot down along the end of bed or leaf, to be welded there. */
const EAR_LENGTH_MM = 50;

/** The cut list of a plan. */
export function cutList(plan: NarrowBrakePlan, thinnestSheetMm: Mm, units: LengthUnit): CutPiece[] {
  const { bar, holder, bed, leaf, pin, handle, rail, tongue } = plan;
  const words = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const piece = (name: string, count: number, stock: StockSize, lengthMm: Mm, work: string): CutPiece => ({
    piece: name,
    count,
    stock: `${stock.name} (${units})`,
    lengthMm,
    weightKg: count * barWeight(sectionOf(stock.shape).areaMm2, lengthMm),
    work,
  });
  const slots = holder.bolts.insideLength
    ? `; two slots for the bolts, ${words(plan.screws.travelMm)} longer than the bolt is thick`
    : "";
  const leafWork = leaf.faceCutBack
    ? `cut the face leg back to ${words(leaf.faceMm)}, dress its edge`
    : "dress the face, break the edges";
  const earMm = upToMark(EAR_LENGTH_MM, units);
  return [
    piece(
      "clamp bar",
      1,
      bar.stock,
      bar.lengthMm,
      `round the bottom front edge to ${words(bar.noseRadiusMm)}${bar.frontBevelDeg > 0 ? `, lean the front back by ${bar.frontBevelDeg}°` : ""}, round the top front edge a little${slots}`,
    ),
    piece("holder", 1, holder.stock, holder.lengthMm, "two bolt holes, front edge straight"),
    piece("bed", 1, bed.stock, bed.lengthMm, "two bolt holes, front top edge sharp and straight"),
    piece("leaf", 1, leaf.stock, leaf.lengthMm, leafWork),
    piece("hinge pin", 2, pin.stock, upToMark(2 * HINGE_LENGTH_MM, units), "turn or pick a free running fit"),
    piece("hinge ear", 4, pin.ear, earMm, "drill together, so that all bores line up"),
    piece(
      "handle",
      handle.count,
      handle.stock,
      upToMark(handle.reachMm + HANDLE_ROOT_MM, units),
      "round the hand's end",
    ),
    piece("tongue", 1, tongue.stock, tongue.heightMm, "square to the bed"),
    piece(
      "screw rail",
      1,
      rail.stock,
      bar.lengthMm,
      `tap ${plan.screws.count} holes ${plan.screws.thread.name}; on edge against the back edge of the bed, up behind the bar`,
    ),
    {
      piece: "heel strip",
      count: 1,
      stock: `sheet of the job, ${words(thinnestSheetMm)} and each other thickness`,
      lengthMm: bar.lengthMm,
      weightKg: 0,
      work: "lies under the back edge of the bar, so that the bar stays level",
    },
  ];
}
