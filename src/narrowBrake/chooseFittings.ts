/**
 * Pins, handles, setback screws and tongue: the smallest stock that carries its load.
 * Formulas in strength/{pin,handle,setbackScrew,viseTongue}.ts.
 * Bound: hinge pins in single shear, one hinge taking half of the leaf's force and the whole hand; screws without the clamp's friction.
 */
import { MM_PER_INCH } from "../units/length.ts";
import type { Mm, Mpa } from "../units/quantity.ts";
import type { GoverningLoads } from "./governingLoads.ts";
import { envelope } from "./memberPlan.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import { upToMark } from "./shopMark.ts";
import { flatStock, type Stock, type StockSize } from "./stockSize.ts";
import type { Thread } from "./strength/bolt.ts";
import { handleLength, handleStress } from "./strength/handle.ts";
import { allowedShear, pinBearing, pinShear } from "./strength/pin.ts";
import { sectionOf } from "./strength/section.ts";
import { screwCount, screwStress, setbackTravel, turnsFor } from "./strength/setbackScrew.ts";
import { gripForce, jawMoment, tongueStress } from "./strength/viseTongue.ts";

export interface PinPlan {
  readonly stock: StockSize;
  readonly diameterMm: Mm;
  readonly forceN: number;
  readonly stressMpa: Mpa;
  readonly allowedMpa: Mpa;
  readonly ear: StockSize;
  readonly earMm: Mm;
  readonly bearingMpa: Mpa;
}

export interface HandlePlan {
  readonly stock: StockSize;
  /** From the pivot to the hand. */
  readonly reachMm: Mm;
  readonly count: 2;
  readonly handForceN: number;
  readonly stressMpa: Mpa;
}

export interface ScrewPlan {
  readonly thread: Thread;
  readonly count: number;
  /** From each end of the bar to its outer screws, and from screw to screw. */
  readonly fromEndMm: Mm;
  readonly spacingMm: Mm;
  readonly travelMm: Mm;
  readonly turns: number;
  readonly pushEachN: number;
  readonly stressMpa: Mpa;
  readonly allowedMpa: Mpa;
}

/** A flat on edge at the back edge of the bed that carries the setback screws. */
export interface RailPlan {
  readonly stock: StockSize;
  readonly thicknessMm: Mm;
  readonly heightMm: Mm;
}

export interface TonguePlan {
  readonly stock: StockSize;
  readonly widthMm: Mm;
  readonly thicknessMm: Mm;
  readonly heightMm: Mm;
  readonly turningNm: number;
  readonly stressMpa: Mpa;
  readonly gripN: number;
  readonly viseN: number;
}

/** Handles shorter than this give the hand no room. */
const SHORTEST_HANDLE_MM = 150;
/** Travel beyond the spread of setbacks, for wear, shims and the test strip. */
const SPARE_TRAVEL_MM = 3;
/** An ear this many pins wide has metal enough around its bore: common practice, no source. */
const EAR_OVER_PIN = 3;
/** The rail reaches so far up behind the bar and down beside the bed. */
const LEAST_RAIL_HEIGHT_MM = 25;

export function choosePin(
  { steel, safety, handForceN }: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
  words: (mm: Mm) => string,
): PinPlan | undefined {
  const forceN = loads.leafN.value / 2 + handForceN;
  const allowedMpa = allowedShear(steel.yieldMpa, safety.pin);
  for (const size of stock.rounds) {
    const diameterMm = envelope(size.shape).widthMm;
    const stressMpa = pinShear(forceN, diameterMm, 1);
    if (stressMpa > allowedMpa) continue;
    const earMm = stock.flatThicknessesMm.find(
      (t) => pinBearing(forceN, diameterMm, t) <= steel.yieldMpa / safety.yield,
    );
    const earWidthMm = stock.flatWidthsMm.find((width) => width >= EAR_OVER_PIN * diameterMm);
    if (earMm === undefined || earWidthMm === undefined) continue;
    return {
      stock: size,
      diameterMm,
      forceN,
      stressMpa,
      allowedMpa,
      ear: flatStock(earMm, earWidthMm, words),
      earMm,
      bearingMpa: pinBearing(forceN, diameterMm, earMm),
    };
  }
  return undefined;
}

export function chooseHandle(
  { units, steel, safety, handForceN }: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
): HandlePlan | undefined {
  const reachMm = upToMark(
    Math.max(SHORTEST_HANDLE_MM, handleLength(loads.turningNmm.value, handForceN)),
    units,
  );
  for (const size of stock.rounds) {
    // One hand may do all the pulling, so each handle is made for the whole force.
    const stressMpa = handleStress(handForceN, reachMm, sectionOf(size.shape));
    if (stressMpa <= steel.yieldMpa / safety.yield)
      return { stock: size, reachMm, count: 2, handForceN, stressMpa };
  }
  return undefined;
}

export function chooseScrews(
  { units, parts, safety }: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
  barLengthMm: Mm,
): ScrewPlan | undefined {
  const count = screwCount(barLengthMm);
  const spreadMm = setbackTravel(parts.flatMap((part) => part.noseSetbacksMm));
  const travelMm = upToMark(spreadMm + SPARE_TRAVEL_MM, units);
  const pushEachN = loads.pushN.value / count;
  const allowedMpa = stock.boltGrade.proofMpa / safety.bolt;
  for (const thread of stock.screws) {
    const stressMpa = screwStress(pushEachN, thread);
    if (stressMpa <= allowedMpa) {
      const fromEndMm = units === "in" ? MM_PER_INCH : 25;
      const spacingMm = (barLengthMm - 2 * fromEndMm) / (count - 1);
      return {
        thread,
        count,
        fromEndMm,
        spacingMm,
        travelMm,
        turns: turnsFor(travelMm, thread),
        pushEachN,
        stressMpa,
        allowedMpa,
      };
    }
  }
  return undefined;
}

/** Thick enough for a thread as long as the screw is thick, which is common practice for steel in steel. */
export function chooseRail(thread: Thread, stock: Stock, words: (mm: Mm) => string): RailPlan | undefined {
  const thicknessMm = stock.flatThicknessesMm.find((t) => t >= thread.diameterMm);
  const heightMm = stock.flatWidthsMm.find((width) => width >= LEAST_RAIL_HEIGHT_MM);
  if (thicknessMm === undefined || heightMm === undefined) return undefined;
  return { stock: flatStock(thicknessMm, heightMm, words), thicknessMm, heightMm };
}

export function chooseTongue(
  { units, steel, safety, vise, handForceN }: ResolvedRequirements,
  stock: Stock,
  reachMm: Mm,
  bedHeightMm: Mm,
  words: (mm: Mm) => string,
): TonguePlan | undefined {
  // Middle of the jaws when the bed rests on them.
  const turningNmm = jawMoment(handForceN, reachMm, bedHeightMm + vise.jawHeightMm / 2);
  const widthMm = stock.flatWidthsMm.filter((width) => width <= vise.jawWidthMm).at(-1);
  if (widthMm === undefined) return undefined;
  const allowed = steel.yieldMpa / safety.yield;
  const thicknessMm = stock.flatThicknessesMm.find((t) => tongueStress(turningNmm, widthMm, t) <= allowed);
  if (thicknessMm === undefined) return undefined;
  return {
    stock: flatStock(thicknessMm, widthMm, words),
    widthMm,
    thicknessMm,
    heightMm: upToMark(vise.jawHeightMm, units),
    turningNm: turningNmm / 1000,
    stressMpa: tongueStress(turningNmm, widthMm, thicknessMm),
    gripN: gripForce(turningNmm, vise.jawHeightMm),
    viseN: vise.forceN,
  };
}
