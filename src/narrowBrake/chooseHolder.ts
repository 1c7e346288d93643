/**
 * The holder and its hold-down bolts: an angle or square tube on top of the bar, pulled to the bed by two bolts.
 * Bolts stand inside the length where the deepest sheet doesn't reach them (overhangs at Machinery's Handbook's 1 : 2.828), else beyond its ends.
 * Bound: loaded over the whole span as if the part filled it, by bolts tightened to their full preload; the heel bears along the whole length.
 */
import type { LengthUnit } from "../units/length.ts";
import type { Mm, Mpa } from "../units/quantity.ts";
import type { GoverningLoads } from "./governingLoads.ts";
import { envelope, lightestThatPasses, type MemberPlan, planMember } from "./memberPlan.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import { upToMark } from "./shopMark.ts";
import type { Stock, StockSize } from "./stockSize.ts";
import { holdDownTension, reusablePreload, type Thread, tighteningTorque } from "./strength/bolt.ts";
import type { Shape } from "./strength/section.ts";
import { evenOverhang, type UniformBeam } from "./strength/uniformBeam.ts";

export interface BoltPlan {
  readonly thread: Thread;
  readonly gradeName: string;
  readonly count: 2;
  /** Pull of the folding in each bolt. */
  readonly tensionN: number;
  /** What each is tightened to at least: tension times the bolt factor. */
  readonly preloadN: number;
  readonly largestPreloadN: number;
  readonly torqueNm: number;
  readonly largestTorqueNm: number;
  /** From the nose back to the bolts, at automatic setback 0. */
  readonly behindNoseMm: Mm;
  readonly spacingMm: Mm;
  /** True where the sheet never reaches the bolts, so that they stand inside its length. */
  readonly insideLength: boolean;
}

export interface HolderPlan extends MemberPlan {
  readonly bolts: BoltPlan;
  /** Upward load of the heel per length, at the bolts' preload. */
  readonly heelNPerMm: number;
  /** Stress in the foot, which hands the bar's moment on to the standing wall. */
  readonly footStressMpa: Mpa;
}

/** Room for a bolt beyond the end of the part, and metal beyond that bolt. */
const END_ROOM_MM = 25;
const BEYOND_BOLT_MM = 20;
/** The bar outlasts the longest part by this at each end. */
const BAR_SPARE_MM = 5;
/** Sheet and bolt keep this apart. */
const BOLT_CLEAR_MM = 12;
/** A foot narrower than three bolts leaves no room for head and washer: common practice, no source. */
const FOOT_OVER_BOLT = 3;
/** The holder's share of the angle that may be lost; the bed, deeper anyway, has the rest. */
const HOLDER_SHARE = 0.7;

/** The holder, or undefined where no stock size is strong enough. */
export function chooseHolder(
  requirements: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
): HolderPlan | undefined {
  const plans = [...stock.angles, ...stock.tubes].flatMap((size) => {
    const plan = holderPlan(size, requirements, loads, stock);
    return plan ? [plan] : [];
  });
  const { steel, safety, give } = requirements;
  const allowedMpa = steel.yieldMpa / safety.yield;
  const firm = plans.filter((plan) => plan.footStressMpa <= allowedMpa);
  // The bed bows as well: part of the allowed angle is left to it.
  return lightestThatPasses(firm, allowedMpa, HOLDER_SHARE * give.angleDeg);
}

function holderPlan(
  size: StockSize,
  requirements: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
): HolderPlan | undefined {
  const { overhangMm, parts, safety, steel } = requirements;
  const footMm = envelope(size.shape).widthMm;
  const frontMm = overhangMm + footMm / 2;
  const backMm = footMm / 2;
  const tensionN = holdDownTension(loads.clampN.value, frontMm, backMm, 2);
  const thread = stock.bolts.find((bolt) => safety.bolt * tensionN <= reusablePreload(bolt, stock.boltGrade));
  if (thread === undefined || footMm < FOOT_OVER_BOLT * thread.diameterMm) return undefined;
  const deepestMm = Math.max(...parts.map((part) => part.deepestClampedMm));
  const insideLength = deepestMm + BOLT_CLEAR_MM <= frontMm;
  // Bolts are tightened past the pull of the folding, and what they pull the holder and bed carry.
  const noseNPerMm = safety.bolt * loads.clampNPerMm.value;
  const heelNPerMm = (noseNPerMm * frontMm) / backMm;
  const loadNPerMm = noseNPerMm + heelNPerMm;
  const beam = beamBetweenBolts(loads.longestPartMm, loadNPerMm, insideLength, requirements.units);
  const plan = planMember(
    {
      role: "holder",
      stock: size,
      shape: size.shape,
      lengthMm: insideLength
        ? barLength(loads.longestPartMm, requirements.units)
        : upToMark(beam.spanMm + 2 * BEYOND_BOLT_MM, requirements.units),
      beam,
      holeShare: insideLength ? 1 - thread.diameterMm / footMm : 1,
    },
    steel.modulusMpa,
    loads.leafLeverMm,
  );
  const preloadN = safety.bolt * tensionN;
  const largestPreloadN = reusablePreload(thread, stock.boltGrade);
  return {
    ...plan,
    heelNPerMm,
    footStressMpa: footStress(size.shape, loads.clampNPerMm.value * overhangMm),
    bolts: {
      thread,
      gradeName: stock.boltGrade.name,
      count: 2,
      tensionN,
      preloadN,
      largestPreloadN,
      torqueNm: tighteningTorque(thread, preloadN),
      largestTorqueNm: tighteningTorque(thread, largestPreloadN),
      behindNoseMm: frontMm,
      spacingMm: beam.spanMm,
      insideLength,
    },
  };
}

/**
 * The bar hands its moment q·c to the foot, and the foot to the standing leg in front; a tube shares it between the
 * two walls that meet in its front corner. The bar's own help is not counted.
 */
function footStress(shape: Shape, barMoment: number): Mpa {
  if (shape.kind === "angle") return (6 * barMoment) / shape.thicknessMm ** 2;
  if (shape.kind === "tube") return (6 * barMoment) / 2 / shape.wallMm ** 2;
  return 0;
}

function beamBetweenBolts(
  longestPartMm: Mm,
  loadNPerMm: number,
  insideLength: boolean,
  units: LengthUnit,
): UniformBeam {
  if (!insideLength) {
    const spanMm = upToMark(longestPartMm + 2 * END_ROOM_MM, units);
    return { loadNPerMm, spanMm, overhangLeftMm: 0, overhangRightMm: 0 };
  }
  const wholeMm = barLength(longestPartMm, units);
  const spanMm = upToMark(wholeMm - 2 * evenOverhang(wholeMm), units);
  const overhangMm = (wholeMm - spanMm) / 2;
  return { loadNPerMm, spanMm, overhangLeftMm: overhangMm, overhangRightMm: overhangMm };
}

/** The bar outlasts the longest part a little at both ends. @example barLength(305, "mm") // 315 */
export function barLength(longestPartMm: Mm, units: LengthUnit): Mm {
  return upToMark(longestPartMm + 2 * BAR_SPARE_MM, units);
}
