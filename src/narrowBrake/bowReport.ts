/**
 * How holder, bed and leaf bow under the full load, what that does to the bend, and the crown that cancels it.
 * Figures from the members' plans (memberPlan.ts); words in hundredths of a millimetre.
 * Bound: the crown is right for the full load only.
 */

import type { MemberPlan } from "./memberPlan.ts";
import type { BowReport, NarrowBrakePlan } from "./narrowBrake.ts";

/** One report a long member. */
export function bowReports({ holder, bed, leaf }: NarrowBrakePlan): BowReport[] {
  return [
    report(holder, "packing between bar and holder"),
    report(bed, "added to the packing between bar and holder"),
    report(leaf, "packing between leaf and a face strip"),
  ];
}

function report(member: MemberPlan, where: string): BowReport {
  const { role, midDeflectionMm, bowMm, angleLostDeg, crown } = member;
  const thickest = crown.reduce((a, b) => (b.packingMm > a.packingMm ? b : a));
  const inMiddle = Math.abs(thickest.fromEndMm - member.crown.at(-1)!.fromEndMm / 2) < 1e-6;
  return {
    member: role,
    midDeflectionMm,
    bowMm,
    angleLostDeg,
    crown,
    sentence: `${role}: bows ${hundredths(bowMm)} hundredths of a millimetre, which takes ${angleLostDeg.toFixed(1)}° off the bend at mid-length; crown ${hundredths(bowMm)} hundredths ${inMiddle ? "in the middle" : "at the ends"}, ${where}.`,
  };
}

function hundredths(mm: number): string {
  const count = mm * 100;
  return count < 1 ? count.toFixed(1) : String(Math.round(count));
}
