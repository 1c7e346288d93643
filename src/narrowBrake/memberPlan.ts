/**
 * One long member (holder, bed or leaf) as a beam: what it is cut from, how it stands, how far it bows.
 * Formulas in strength/uniformBeam.ts and strength/crown.ts.
 * Bound: those files'; bolt holes at a loaded support are taken off the section in proportion to the foot's width.
 */
import type { Deg, Mm, Mpa } from "../units/quantity.ts";
import type { StockSize } from "./stockSize.ts";
import { angleLost, type CrownStation, crownOf } from "./strength/crown.ts";
import { type SectionProperties, type Shape, sectionOf } from "./strength/section.ts";
import { largestMoment, midDeflection, type UniformBeam } from "./strength/uniformBeam.ts";

export type MemberRole = "holder" | "bed" | "leaf";

export interface MemberPlan {
  readonly role: MemberRole;
  readonly stock: StockSize;
  /** The shape as used; a leg cut back makes it differ from the stock's. */
  readonly shape: Shape;
  readonly section: SectionProperties;
  readonly lengthMm: Mm;
  readonly beam: UniformBeam;
  readonly stressMpa: Mpa;
  /** Deflection at mid-length against the supports. */
  readonly midDeflectionMm: Mm;
  /** How far the member is from straight along its loaded length. */
  readonly bowMm: Mm;
  /** What that bow takes off the bend angle. */
  readonly angleLostDeg: Deg;
  /** Packing from end to end that makes it straight under load. */
  readonly crown: readonly CrownStation[];
}

/** Stations of the crown: both ends, the quarters and between. */
const CROWN_STATIONS = 9;

export interface MemberCandidate {
  readonly role: MemberRole;
  readonly stock: StockSize;
  readonly shape: Shape;
  readonly lengthMm: Mm;
  readonly beam: UniformBeam;
  /** Part of the section left where bolts go through at a loaded support; 1 without. */
  readonly holeShare: number;
}

/** Works out one candidate. `leverMm` is the lever of the leaf, by which a bow becomes an angle. */
export function planMember(candidate: MemberCandidate, modulusMpa: Mpa, leverMm: Mm): MemberPlan {
  const { role, stock, shape, lengthMm, beam, holeShare } = candidate;
  const section = sectionOf(shape);
  const stiffness = modulusMpa * section.secondMomentXMm4;
  const crown = crownOf(beam, stiffness, CROWN_STATIONS);
  const bowMm = Math.max(...crown.map(({ packingMm }) => packingMm));
  return {
    role,
    stock,
    shape,
    section,
    lengthMm,
    beam,
    stressMpa: largestMoment(beam) / (section.modulusXMm3 * holeShare),
    midDeflectionMm: midDeflection(beam, stiffness),
    bowMm,
    angleLostDeg: angleLost(bowMm, leverMm),
    crown,
  };
}

/** Level width and height of a shape's envelope. @example envelope({ kind: "round", diameterMm: 8 }) // { widthMm: 8, heightMm: 8 } */
export function envelope(shape: Shape): { readonly widthMm: Mm; readonly heightMm: Mm } {
  return shape.kind === "round" || shape.kind === "roundTube"
    ? { widthMm: shape.diameterMm, heightMm: shape.diameterMm }
    : { widthMm: shape.widthMm, heightMm: shape.heightMm };
}

/**
 * The lightest candidate within both limits; where none bows little enough, the straightest of those strong enough;
 * undefined where none is strong enough.
 */
export function lightestThatPasses<Plan extends MemberPlan>(
  plans: readonly Plan[],
  allowedMpa: Mpa,
  allowedDeg: Deg,
): Plan | undefined {
  const strong = plans
    .filter((plan) => plan.stressMpa <= allowedMpa)
    .sort((a, b) => a.section.areaMm2 - b.section.areaMm2);
  const straight = strong.find((plan) => plan.angleLostDeg <= allowedDeg);
  return straight ?? [...strong].sort((a, b) => a.angleLostDeg - b.angleLostDeg)[0];
}
