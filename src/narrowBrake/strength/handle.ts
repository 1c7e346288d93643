/**
 * The handle: how long for a hand force, and how it bends as a cantilever on the leaf.
 * Turning moment about the pivot = folding moment per length × length of bend (virtual work of a hinge at the pivot); σ = F·L/Z.
 * Bound: weight of the leaf and friction in the hinges left out; the load factor covers them.
 */
import type { Mm, Mpa } from "../../units/quantity.ts";
import type { SectionProperties } from "./section.ts";
import type { MomentPerLength } from "./sheetMoment.ts";

/** Turning moment on the leaf, N·mm. @example leafMoment(60, 300) // 18000 */
export function leafMoment(moment: MomentPerLength, bendLengthMm: Mm): number {
  return moment * bendLengthMm;
}

/** Handle length from the pivot to the hand. @example handleLength(18000, 100) // 180 */
export function handleLength(leafMomentNmm: number, handForceN: number): Mm {
  return leafMomentNmm / handForceN;
}

/** Bending stress in the handle where it meets the leaf. */
export function handleStress(handForceN: number, lengthMm: Mm, section: SectionProperties): Mpa {
  return (handForceN * lengthMm) / section.modulusXMm3;
}
