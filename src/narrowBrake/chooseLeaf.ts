/**
 * The leaf between its two hinges: an angle (one leg the face, one standing at the pivot), a square tube, or a flat on edge.
 * Plain beam under the leaf's force, twisted between the handles at its ends; face as a strip (strength/{uniformBeam,torsion}.ts).
 * Bound: loaded over the whole span, hinges free to turn, handles at both ends pulled alike.
 */
import { type Deg, type Mm, type Mpa, toDeg } from "../units/quantity.ts";
import { governingLoads } from "./governingLoads.ts";
import { envelope, lightestThatPasses, type MemberPlan, planMember } from "./memberPlan.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import { upToMark } from "./shopMark.ts";
import { flatStock, type Stock, type StockSize } from "./stockSize.ts";
import { shearModulus } from "./strength/plateCantilever.ts";
import type { Shape } from "./strength/section.ts";
import { middleTwist, torsionConstant, torsionStress } from "./strength/torsion.ts";

export interface LeafPlan extends MemberPlan {
  readonly faceMm: Mm;
  readonly standingMm: Mm;
  /** Of a leg or wall; of a flat on edge it is the face. */
  readonly thicknessMm: Mm;
  /** True where the stock's leg is cut back to the tallest face that clears. */
  readonly faceCutBack: boolean;
  readonly faceStressMpa: Mpa;
  readonly torsionStressMpa: Mpa;
  /** Angle by which the middle lags behind the ends through twist; part of `angleLostDeg`. */
  readonly twistDeg: Deg;
}

/** Length of a hinge along the pivot; the leaf ends where the hinges begin. */
export const HINGE_LENGTH_MM: Mm = 25;
const LEAF_SPARE_MM: Mm = 2;
/** A leg cut back to less than this many thicknesses is no leg any more. */
const LEAST_LEG_THICKNESSES = 1.5;
/** A face smaller than this share of what clears would ask too much of leaf and clamp. */
const LEAST_SHARE_OF_FACE = 0.6;

/**
 * Face that the leaf should have: the longest of the shortest flanges, as far as the parts clear it.
 */
export function wantedFace({ parts, leafFaceMaxMm = Number.POSITIVE_INFINITY }: ResolvedRequirements): Mm {
  return Math.min(Math.max(...parts.map((part) => part.shortestFlangeMm)), leafFaceMaxMm);
}

/** The leaf, or undefined where no stock size is strong enough. */
export function chooseLeaf(
  requirements: ResolvedRequirements,
  stock: Stock,
  words: (mm: Mm) => string,
): LeafPlan | undefined {
  const { steel, safety, give, leafFaceMaxMm = Number.POSITIVE_INFINITY } = requirements;
  const flats = stock.flatThicknessesMm.flatMap((t) =>
    stock.flatWidthsMm.filter((w) => w >= 3 * t).map((w) => flatStock(t, w, words)),
  );
  // Where clearance limits the face, the next thinner flat on edge will do; the loads are those of its own face.
  const wantedMm = wantedFace(requirements);
  const leastMm = wantedMm < leafFaceMaxMm ? wantedMm : LEAST_SHARE_OF_FACE * wantedMm;
  const allowedMpa = steel.yieldMpa / safety.yield;
  const plans = [...stock.angles, ...stock.tubes, ...flats]
    .map((size) => leafPlan(size, usedShape(size.shape, leafFaceMaxMm), requirements))
    .filter(({ faceMm }) => faceMm >= leastMm && faceMm <= leafFaceMaxMm)
    .filter((plan) => plan.faceStressMpa <= allowedMpa && plan.torsionStressMpa <= allowedMpa / Math.sqrt(3));
  return lightestThatPasses(plans, allowedMpa, give.angleDeg);
}

/** How the stock is used: a flat stands on edge, an angle's face leg is cut back where it must be. */
function usedShape(shape: Shape, leafFaceMaxMm: Mm): Shape {
  const { widthMm, heightMm } = envelope(shape);
  if (shape.kind === "flat") return { kind: "flat", widthMm: heightMm, heightMm: widthMm };
  if (shape.kind !== "angle") return shape;
  const leastMm = shape.thicknessMm * LEAST_LEG_THICKNESSES;
  return { ...shape, widthMm: Math.max(Math.min(widthMm, leafFaceMaxMm), leastMm) };
}

function leafPlan(stock: StockSize, shape: Shape, requirements: ResolvedRequirements): LeafPlan {
  const { steel } = requirements;
  const { widthMm, heightMm } = envelope(shape);
  const loads = governingLoads(requirements, widthMm);
  const lengthMm = upToMark(loads.longestPartMm + 2 * LEAF_SPARE_MM, requirements.units);
  const spanMm = lengthMm + HINGE_LENGTH_MM;
  const beam = { loadNPerMm: loads.leafNPerMm.value, spanMm, overhangLeftMm: 0, overhangRightMm: 0 };
  const plan = planMember(
    { role: "leaf", stock, shape, lengthMm, beam, holeShare: 1 },
    steel.modulusMpa,
    loads.leafLeverMm,
  );
  const moment = loads.momentPerLength.value;
  const constantMm4 = torsionConstant(shape);
  const twistDeg = toDeg(middleTwist(moment, lengthMm, shearModulus(steel.modulusMpa), constantMm4));
  return {
    ...plan,
    angleLostDeg: plan.angleLostDeg + twistDeg,
    twistDeg,
    torsionStressMpa: torsionStress(shape, (moment * lengthMm) / 2),
    faceMm: widthMm,
    standingMm: heightMm,
    thicknessMm: shape.kind === "angle" ? shape.thicknessMm : shape.kind === "tube" ? shape.wallMm : widthMm,
    faceCutBack: shape.kind === "angle" && widthMm < envelope(stock.shape).widthMm,
    faceStressMpa: faceStress(shape, moment),
  };
}

/** The whole folding moment on the face where it joins the standing leg or wall; a flat on edge has no such leg. */
function faceStress(shape: Shape, moment: number): Mpa {
  if (shape.kind === "angle") return (6 * moment) / shape.thicknessMm ** 2;
  return shape.kind === "tube" ? (6 * moment) / shape.wallMm ** 2 : 0;
}
