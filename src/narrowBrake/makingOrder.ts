/**
 * Tools, order of making, proving on a strip, and where the plans stop: the words that go with a narrow brake.
 * Order of making and proving: common practice, no source.
 * Words only; every figure comes from the plan.
 */
import type { LengthUnit } from "../units/length.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { torqueWords } from "./forceWords.ts";
import type { NarrowBrakePlan } from "./narrowBrake.ts";
import type { ResolvedRequirements } from "./requirements.ts";

/** Tools that the plan asks for. */
export function toolsFor(plan: NarrowBrakePlan): string[] {
  return [
    "hacksaw or band saw",
    "drill press, drills, countersink",
    `tap ${plan.screws.thread.name} and tap drill`,
    "fine file, draw file, emery on a flat block",
    "straightedge, square, feeler leaves, protractor",
    "clamps, scribe, layout dye",
    "welding set, or someone who welds",
    "torque wrench",
  ];
}

/** Steps of making, in order. */
export function makingOrder(plan: NarrowBrakePlan, units: LengthUnit): string[] {
  const { bar, holder, bed, leaf, pin, screws } = plan;
  const words = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const bevel =
    bar.frontBevelDeg > 0 ? ` Lean the front face back by ${bar.frontBevelDeg}° down to the rounding.` : "";
  const crown = holder.bowMm + bed.bowMm;
  return [
    "Cut all pieces to the cut list, straightest stock for bar, bed and leaf. Break every edge.",
    `Drill holder and bed together for ${holder.bolts.thread.name}, ${words(holder.bolts.spacingMm)} apart, ${words(holder.bolts.behindNoseMm)} behind the nose.`,
    `Drill the hinge ears together for the ${words(pin.diameterMm)} pin.`,
    `Drill and tap the screw rail, ${screws.count} holes ${screws.thread.name}, the outer ones near the ends of the bar.`,
    "Lay leaf and bed face down on a flat plate, edges together with a paper strip between, and tack the ears at both ends.",
    "Line up both pins with a straight rod through all bores: the pivot is the front top edge of the bed. Swing the leaf, correct the tacks, swing again.",
    "Weld in short runs, end to end and side to side, and let it cool between, so that it pulls as little as it can. Weld the tongue under the bed the same way.",
    "Check bed and leaf with the straightedge; draw-file what the heat has pulled.",
    `Dress the nose of the bar: ${words(bar.noseRadiusMm)} radius all along, checked with a radius gauge, no flats.${bevel} Round its top front edge a little.`,
    "Put in bar, heel strip, holder, bolts. Set the bar with the screws, lock them, tighten the bolts to their torque.",
    `Crown, if the strip test asks for it: packing between holder and bar, up to ${crown.toFixed(2)} mm, and between leaf and a face strip, up to ${leaf.bowMm.toFixed(2)} mm, graded along the length as the list of packing says.`,
    "Fit the handles last, and something that keeps the leaf from falling on hands.",
  ];
}

/** How to prove the brake before the first part. */
export function provingSteps(plan: NarrowBrakePlan, requirements: ResolvedRequirements): string[] {
  const { units } = requirements;
  const { bolts } = plan.holder;
  return [
    `Tighten the bolts to ${torqueWords(bolts.torqueNm, units)}. Pull a strip of thin paper at both ends and in the middle: it must hold everywhere.`,
    "Fold a strip of the job's sheet, as wide as a hand, at the left end, in the middle and at the right end. Measure all three angles: less in the middle asks for the crown.",
    "Fold a strip of the full length. Measure the angle at both ends and in the middle.",
    "Read leaf angle and relaxed angle off the strip and give both to the check: that replaces the reckoned springback.",
    "Scribe a line on the bar's back edge before and after ten bends: if the bar has crept, lock the screws again.",
    "Measure the brake as built (bar thickness, nose, bevel, setback, overhang, leaf face) and check the parts with those figures.",
    "Only then fold the first part, in the order that was found.",
  ];
}

/** Where these plans stop. */
export function limitsOfUse(): string[] {
  return [
    "A shop aid and no engineer's approval.",
    "Welds are not reckoned at all. Welds, bolts and vises are to be judged by someone qualified; what is not in the list of checks was not reckoned.",
    "Local codes and approved data decide for anything that carries load or flies.",
    "Made for the listed parts and sheet: thicker, harder or longer sheet needs new plans.",
    "Stock sizes are common ones from memory: ask your supplier, and measure what you get.",
  ];
}

/** Cautions for print and page. */
export function cautions(): string[] {
  return [
    "Sheet metal cuts: gloves for carrying, no loose sleeves, break every edge.",
    "Leaf and bar crush: hands off the sheet before the leaf moves, and nobody else in its swing.",
    "Stand out of the handle's way: a vise that slips lets it fly.",
    "Welding and grinding: eyes, hands, lungs and fire watched.",
  ];
}
