/**
 * How thick the clamp bar may be: thinnest by strength, stiffness and nose radius, thickest by clearance.
 * Cantilever plate in front of the holder under the clamp load (strength/plateCantilever.ts).
 * Bound: the whole overhang is taken as the lever of the load, although the nose touches a little behind its foremost point.
 */
import { formatLength, type LengthUnit } from "../units/length.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { largestFigure, leastFigure } from "../words/lengthWords.ts";
import { clampForces, TORQUE_SCATTER } from "./checks/clampForces.ts";
import { allowed, measured, type UnderLoad } from "./checks/under.ts";
import type { GoverningLoads } from "./governingLoads.ts";
import { TIMOSHENKO_PLATE } from "./handbooks.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import type { Stock } from "./stockSize.ts";
import {
  plateDeflection,
  plateStress,
  thinnestByStiffness,
  thinnestByStrength,
} from "./strength/plateCantilever.ts";
import { checkOf, type StrengthCheck } from "./strengthCheck.ts";

export interface BarWindow {
  readonly thinnestByStrengthMm: Mm;
  readonly thinnestByStiffnessMm: Mm;
  /** A nose of this radius needs at least so much bar. */
  readonly thinnestByNoseMm: Mm;
  readonly thinnestMm: Mm;
  readonly governs: "strength" | "stiffness" | "nose";
  readonly thickestMm: Mm;
  /** Stock thicknesses inside, thinnest first. */
  readonly stockInsideMm: readonly Mm[];
  /** Where there is no stock inside: what a thicker one is planed or ground down to. */
  readonly planedMm?: Mm;
}

/** Planed to a mark that a rule shows, else ground to one that a micrometer shows. */
const PLANED_TO_MM = { in: [25.4 / 64, 0.127, 0.0254], mm: [0.1, 0.02] } as const;

/** The window. It is empty where thinnest is above thickest. */
export function barWindow(
  requirements: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
): BarWindow {
  const { steel, coldFinished, safety, give, overhangMm, noseRadiusMm, thickestByClearanceMm } = requirements;
  const plate = { loadNPerMm: loads.clampNPerMm.value, overhangMm };
  // The bolts press harder than the folding asks for, as far as their torque may come out.
  const tightened = { loadNPerMm: plate.loadNPerMm * safety.bolt * (1 + TORQUE_SCATTER), overhangMm };
  const thinnestByStrengthMm = thinnestByStrength(tightened, coldFinished.yieldMpa / safety.yield);
  const thinnestByStiffnessMm = thinnestByStiffness(plate, give.noseMm, steel.modulusMpa);
  const thinnestByNoseMm = thinnestByNose(noseRadiusMm, requirements.frontBevelDeg);
  const thinnestMm = Math.max(thinnestByStrengthMm, thinnestByStiffnessMm, thinnestByNoseMm);
  const governs =
    thinnestMm === thinnestByNoseMm ? "nose" : thinnestMm === thinnestByStrengthMm ? "strength" : "stiffness";
  const stockInsideMm = stock.flatThicknessesMm.filter((t) => t >= thinnestMm && t <= thickestByClearanceMm);
  const planedMm = PLANED_TO_MM[requirements.units]
    .map((stepMm) => Math.ceil(thinnestMm / stepMm - 1e-9) * stepMm)
    .find((mm) => mm <= thickestByClearanceMm);
  return {
    thinnestByStrengthMm,
    thinnestByStiffnessMm,
    thinnestByNoseMm,
    thinnestMm,
    governs,
    thickestMm: thickestByClearanceMm,
    stockInsideMm,
    ...(stockInsideMm.length === 0 && planedMm !== undefined && { planedMm }),
  };
}

/**
 * A rounding of radius R between underside and a front leaning back by γ ends on the front at the height R·(1 + sin γ):
 * the bar must be at least so thick.
 * @example thinnestByNose(2, 0) // 2
 */
function thinnestByNose(noseRadiusMm: Mm, frontBevelDeg: Deg): Mm {
  return noseRadiusMm * (1 + Math.sin(toRad(frontBevelDeg)));
}

/**
 * The window as it is said in a shop.
 * @example windowSentence({ thinnestMm: 3.78, thickestMm: 7.9, stockInsideMm: [4.7625, 6.35] }, "in") // "Clamp bar from 0.149 to 0.311 in thick: 3/16 or 1/4 in from stock."
 */
export function windowSentence(
  {
    thinnestMm,
    thickestMm,
    stockInsideMm,
    planedMm,
  }: Pick<BarWindow, "thinnestMm" | "thickestMm" | "stockInsideMm" | "planedMm">,
  units: LengthUnit,
): string {
  const least = leastFigure(thinnestMm, units);
  const largest = largestFigure(thickestMm, units);
  if (thinnestMm > thickestMm) {
    return `No clamp bar will do: it must be at least ${least} ${units} to hold and at most ${largest} ${units} to clear.`;
  }
  const none =
    planedMm === undefined
      ? "no stock size"
      : `no stock size, planed down to ${formatLength(planedMm, units)} ${units}`;
  const sizes = inWords(stockInsideMm.map((mm) => formatLength(mm, units)));
  return `Clamp bar from ${least} to ${largest} ${units} thick: ${sizes === "" ? none : `${sizes} ${units} from stock`}.`;
}

/** Sizes to choose from: 1/8, 3/16 or 1/4. */
function inWords(sizes: readonly string[]): string {
  return sizes.length < 2 ? sizes.join() : `${sizes.slice(0, -1).join(", ")} or ${sizes.at(-1)}`;
}

/** Stress and give of the bar that was picked. */
export function barChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, loads } = under;
  const { steel, give, thickestByClearanceMm } = requirements;
  const bar = measured(under, "bar");
  const holder = measured(under, "holder");
  const overhangMm = bar.maxX - holder.maxX;
  const { noseNPerMm } = clampForces(under);
  const lever = "built in at the holder's front, load at the nose along the whole length";
  return [
    checkOf({
      member: "clamp bar",
      check: "bending in front of the holder",
      value: plateStress({ loadNPerMm: noseNPerMm, overhangMm }, bar.highMm),
      limit: allowed(under).cold,
      unit: "MPa",
      formula: "σ = 6·q·c/t²",
      source: TIMOSHENKO_PLATE,
      assumptions: [lever, "bolts tightened as far as their torque may come out, 28 % past its mark"],
      pieces: ["bar", "holder"],
      grows: null,
    }),
    checkOf({
      member: "clamp bar",
      check: "give at the nose",
      value: plateDeflection(
        { loadNPerMm: loads.clampNPerMm.value, overhangMm },
        bar.highMm,
        steel.modulusMpa,
      ),
      limit: give.noseMm,
      unit: "mm",
      formula: "δ = q·c³/(3·D) + 6·q·c/(5·G·t), D = E·t³/(12·(1 − ν²))",
      source: TIMOSHENKO_PLATE,
      assumptions: [lever, `clamp load of ${loads.clampNPerMm.part}, with the load factor`],
      pieces: ["bar", "holder"],
      grows: null,
    }),
    checkOf({
      member: "clamp bar",
      check: "thickness for clearance",
      value: bar.highMm,
      limit: thickestByClearanceMm,
      unit: "mm",
      formula: "t ≤ t of the thickest bar that every part clears",
      source: "contact engine, section 6 of the model",
      assumptions: ["section is the same along the whole bend"],
      pieces: ["bar"],
      grows: null,
    }),
  ];
}
