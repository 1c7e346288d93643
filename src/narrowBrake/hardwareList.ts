/**
 * Bolts, nuts, screws and shims to buy for a narrow brake, with the torque for the hold-down bolts.
 * Torque T = K·D·F with K 0.20 (Shigley, table 8-15, zinc-plated); oil on the threads lowers it by a tenth.
 * Bound: torque makes preload within about 30 %.
 */
import type { LengthUnit } from "../units/length.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { torqueWords } from "./forceWords.ts";
import { envelope } from "./memberPlan.ts";
import type { HardwareItem, NarrowBrakePlan } from "./narrowBrake.ts";
import { upToMark } from "./shopMark.ts";

/** The hardware of a plan. */
export function hardwareList(plan: NarrowBrakePlan, liftMm: Mm, units: LengthUnit): HardwareItem[] {
  const { holder, bed, bar, screws, leaf } = plan;
  const { bolts } = holder;
  const words = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  // An angle is bolted through its leg, a tube right through; the lift and a nut with its washer come on top.
  const through = (shape: typeof holder.shape) =>
    shape.kind === "angle" ? shape.thicknessMm : envelope(shape).heightMm;
  const gripMm = through(holder.shape) + through(bed.shape) + bar.thicknessMm;
  const shimMm = Math.max(holder.bowMm + bed.bowMm, leaf.bowMm);
  return [
    {
      item: "hold-down bolt",
      count: bolts.count,
      size: `${bolts.thread.name} ${bolts.gradeName}, at least ${words(upToMark(gripMm + liftMm + 2 * bolts.thread.diameterMm, units))} long`,
      remark: `tighten to ${torqueWords(bolts.torqueNm, units)}, never past ${torqueWords(bolts.largestTorqueNm, units)}`,
    },
    {
      item: "nut with hard washers above and below",
      count: bolts.count,
      size: bolts.thread.name,
      remark: "a spring on each bolt under the holder lifts it when the nut is loosened",
    },
    {
      item: "setback screw with lock nut",
      count: screws.count,
      size: `${screws.thread.name}, travel ${words(screws.travelMm)}`,
      remark: `${words(screws.thread.pitchMm)} a turn; lock each before the first bend`,
    },
    {
      item: "shim strip for the crown",
      count: 2,
      size: `up to ${shimMm.toFixed(2)} mm in the middle`,
      remark:
        "one between bar and holder, one between leaf and its face strip, if the strip test asks for it",
    },
  ];
}
