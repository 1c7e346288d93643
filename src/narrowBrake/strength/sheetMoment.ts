/**
 * The moment per unit length that folds a wide sheet: fully plastic bending, M = S·T²/4.
 * Marciniak, Duncan & Hu, Mechanics of Sheet Metal Forming, eq. 6.21: S = (2/√3)·σf in plane strain, σf the flow stress.
 * Bound: holds from a few times the elastic curvature on; strain hardening beyond the mean (yield + ultimate)/2 is left to the load factor.
 */
import type { Metal } from "../../metal/metal.ts";
import type { Mm, Mpa } from "../../units/quantity.ts";

/** A moment per unit length of bend, N·mm per mm, which is newtons. */
export type MomentPerLength = number & { readonly quantity?: "N·mm/mm" };

/** A wide sheet cannot narrow along the bend, so that it yields at 2/√3 of its tensile flow stress (von Mises). */
export const PLANE_STRAIN_FACTOR = 2 / Math.sqrt(3);

/** Ultimate over yield where the metal's ultimate is not known: a guess on the high side for soft sheet. */
export const GUESSED_ULTIMATE_OVER_YIELD = 1.5;

/**
 * Flow stress, the mean of yield and ultimate; with no ultimate given it is guessed as 1.5 yields.
 * @example flowStress({ name: "A", yieldMpa: 200, modulusMpa: 70000, ultimateMpa: 300 }) // 250
 */
export function flowStress(metal: Metal): Mpa {
  const ultimateMpa = metal.ultimateMpa ?? metal.yieldMpa * GUESSED_ULTIMATE_OVER_YIELD;
  return (metal.yieldMpa + ultimateMpa) / 2;
}

/** Fully plastic moment of a rectangle of unit length, σ·T²/4. @example plasticMoment(200, 2) // 200 */
export function plasticMoment(stressMpa: Mpa, thicknessMm: Mm): MomentPerLength {
  return (stressMpa * thicknessMm * thicknessMm) / 4;
}

/**
 * What a unit length of bend asks of the brake: plastic moment in plane strain at the flow stress.
 * @example foldingMoment({ name: "A", yieldMpa: 200, modulusMpa: 70000, ultimateMpa: 300 }, 1) // 72.17
 */
export function foldingMoment(metal: Metal, thicknessMm: Mm): MomentPerLength {
  return plasticMoment(PLANE_STRAIN_FACTOR * flowStress(metal), thicknessMm);
}
