/**
 * Designs the shop-made narrow brake: from parts and clearance to a plan of real stock, checked piece by piece.
 * Leaf → loads → bar window → holder and bolts → bar → bed → pins, handles, screws, tongue; formulas in strength/.
 * Bound: each file's own; a plan that fails a check is still shown, with the failure said in one sentence.
 */
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { barChecks, barWindow, windowSentence } from "./barWindow.ts";
import { bowReports } from "./bowReport.ts";
import { chooseBed } from "./chooseBed.ts";
import { chooseHandle, choosePin, chooseRail, chooseScrews, chooseTongue } from "./chooseFittings.ts";
import { barLength, chooseHolder } from "./chooseHolder.ts";
import { chooseLeaf, type LeafPlan, wantedFace } from "./chooseLeaf.ts";
import { cutList } from "./cutList.ts";
import { forceWords } from "./forceWords.ts";
import { type GoverningLoads, governingLoads } from "./governingLoads.ts";
import { hardwareList } from "./hardwareList.ts";
import { cautions, limitsOfUse, makingOrder, provingSteps, toolsFor } from "./makingOrder.ts";
import { memberChecks } from "./memberChecks.ts";
import { envelope } from "./memberPlan.ts";
import type { NarrowBrake, NarrowBrakePlan } from "./narrowBrake.ts";
import {
  type NarrowBrakeRequirements,
  type ResolvedRequirements,
  resolveRequirements,
} from "./requirements.ts";
import { flatStock, stockIn } from "./stockSize.ts";
import { GUESSED_ULTIMATE_OVER_YIELD } from "./strength/sheetMoment.ts";
import { failureSentence } from "./strengthCheck.ts";

/** Handles longer than this are no hand brake any more: common practice, no source. */
const LONGEST_HANDLE_MM = 1200;

/**
 * The narrow brake for a set of parts.
 * @throws RangeError where a requirement is missing or not above zero
 */
export function designNarrowBrake(asked: NarrowBrakeRequirements): NarrowBrake {
  const requirements = resolveRequirements(asked);
  const { units } = requirements;
  const stock = stockIn(units);
  const leaf = chooseLeaf(requirements, stock, (mm) => formatLength(mm, units));
  const loads = governingLoads(requirements, leaf?.faceMm ?? wantedFace(requirements));
  const window = barWindow(requirements, loads, stock);
  const made = makePlan(requirements, loads, leaf, window.stockInsideMm[0]);
  const plan = typeof made === "string" ? null : made;
  const thinnestSheetMm = Math.min(...requirements.parts.map((part) => part.thicknessMm));
  const checks = plan
    ? [...barChecks(requirements, loads, plan.bar.thicknessMm), ...memberChecks(plan, requirements)]
    : [];
  const problems = [
    ...(typeof made === "string" ? [made] : []),
    ...checks.filter((check) => !check.passes).map(failureSentence),
    ...bevelProblem(requirements),
    ...(plan && plan.handle.reachMm > LONGEST_HANDLE_MM
      ? [
          `The handles would be ${formatLength(plan.handle.reachMm, units)} ${units} long: too much for a hand brake.`,
        ]
      : []),
  ];
  const cuts = plan ? cutList(plan, thinnestSheetMm, units) : [];
  return {
    requirements,
    loads,
    window,
    windowSentence: windowSentence(window, units),
    plan,
    bows: plan ? bowReports(plan) : [],
    checks,
    problems,
    feasible: plan !== null && problems.length === 0,
    assumptions: assumptionsOf(requirements),
    cutList: cuts,
    weightKg: cuts.reduce((sum, { weightKg }) => sum + weightKg, 0),
    hardware: plan ? hardwareList(plan, requirements.liftMm, units) : [],
    tools: plan ? toolsFor(plan) : [],
    makingOrder: plan ? makingOrder(plan, units) : [],
    proving: plan ? provingSteps(plan, requirements) : [],
    limits: limitsOfUse(),
    cautions: cautions(),
  };
}

/** The plan, or one sentence that says what stands against it. */
function makePlan(
  requirements: ResolvedRequirements,
  loads: GoverningLoads,
  leaf: LeafPlan | undefined,
  barThicknessMm: Mm | undefined,
): NarrowBrakePlan | string {
  const { units, overhangMm, noseRadiusMm, frontBevelDeg } = requirements;
  const stock = stockIn(units);
  const words = (mm: Mm) => formatLength(mm, units);
  if (barThicknessMm === undefined)
    return "No stock bar is both thick enough to hold and thin enough to clear.";
  const holder = chooseHolder(requirements, loads, stock);
  if (holder === undefined) return "No stock angle or tube is strong enough for the holder.";
  const neededMm = overhangMm + envelope(holder.shape).widthMm;
  const depthMm = stock.flatWidthsMm.find((width) => width >= neededMm);
  if (depthMm === undefined) return "No stock flat is wide enough for the bar.";
  const bar = {
    stock: flatStock(barThicknessMm, depthMm, words),
    thicknessMm: barThicknessMm,
    depthMm,
    lengthMm: barLength(loads.longestPartMm, units),
    overhangMm,
    noseRadiusMm,
    frontBevelDeg,
  };
  const bed = chooseBed(requirements, loads, stock, holder, depthMm);
  if (bed === undefined) return "No stock tube is deep and strong enough for the bed.";
  if (leaf === undefined)
    return "No stock angle, tube or flat gives a leaf with this face that is strong enough.";
  const pin = choosePin(requirements, loads, stock, words);
  if (pin === undefined) return "No stock round is thick enough for the hinge pins.";
  const handle = chooseHandle(requirements, loads, stock);
  if (handle === undefined) return "No stock round is strong enough for the handles.";
  const screws = chooseScrews(requirements, loads, stock, bar.lengthMm);
  if (screws === undefined) return "No stock screw holds the bar back.";
  const tongue = chooseTongue(requirements, stock, handle.reachMm, envelope(bed.shape).heightMm, words);
  if (tongue === undefined) return "No stock flat is strong enough for a tongue: bolt the bed to the bench.";
  const rail = chooseRail(screws.thread, stock, words);
  if (rail === undefined) return "No stock flat is thick enough for the screw rail.";
  return { bar, holder, bed, leaf, pin, handle, screws, rail, tongue };
}

/** A front that leans back less than the overbend meets the flange it makes. */
function bevelProblem({ parts, frontBevelDeg }: ResolvedRequirements): string[] {
  const needed = Math.max(...parts.map((part) => part.overbendDeg)) - 90;
  return frontBevelDeg < needed
    ? [
        `The bar's front leans back ${frontBevelDeg}°, and the overbend asks for ${Number(needed.toFixed(1))}°.`,
      ]
    : [];
}

function assumptionsOf({
  parts,
  safety,
  give,
  steel,
  handForceN,
  vise,
  units,
}: ResolvedRequirements): string[] {
  const length = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  const unknown = parts.filter((part) => part.metal.ultimateMpa === undefined).map((part) => part.name);
  return [
    "the sheet is wide and yields through its whole thickness at the mean of yield and ultimate",
    ...(unknown.length > 0
      ? [
          `ultimate strength not given for ${unknown.join(", ")}: ${GUESSED_ULTIMATE_OVER_YIELD} times the yield is guessed`,
        ]
      : []),
    "leaf and bed press evenly over the shortest flange and the shortest clamped flat, so that their levers are half of these",
    `safety factors: load ${safety.load}, yield ${safety.yield}, bolts ${safety.bolt}, pins ${safety.pin}`,
    `stock steel ${steel.yieldMpa} MPa yield, ${steel.modulusMpa} MPa modulus`,
    `hand force ${forceWords(handForceN, units)} on both handles together`,
    `vise ${forceWords(vise.forceN, units)} on jaws ${length(vise.jawWidthMm)} wide and ${length(vise.jawHeightMm)} high`,
    `the nose may give by ${give.noseMm} mm, and the bend lose ${give.angleDeg}° at mid-length by the leaf and again by holder and bed, before any crown`,
    "sharp corners in sections; shear deflection of holder, bed and leaf left out",
    "welds are as strong as what they join: they were not reckoned",
    "stock sizes from memory",
  ];
}
