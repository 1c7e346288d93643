/**
 * The tongue that holds the brake in a bench vise: turning moment at the jaws, stress in the tongue, grip that the jaws need.
 * Statics: hand force × (handle + pivot over the jaws); σ = 6·M/(w·t²); grip 6·M/h keeps the whole jaw face pressed (middle third rule).
 * Bound: the hand pulls square to the handle; a pull along the bench adds nothing to the moment but may slide the bench.
 */
import type { Mm, Mpa } from "../../units/quantity.ts";

/** Turning moment at the middle of the jaws, N·mm. @example jawMoment(200, 400, 100) // 100000 */
export function jawMoment(handForceN: number, handleMm: Mm, pivotAboveJawsMm: Mm): number {
  return handForceN * (handleMm + pivotAboveJawsMm);
}

/** Bending stress in a flat tongue, width along the jaws, thickness across them. @example tongueStress(100000, 60, 10) // 100 */
export function tongueStress(momentNmm: number, widthMm: Mm, thicknessMm: Mm): Mpa {
  return (6 * momentNmm) / (widthMm * thicknessMm ** 2);
}

/**
 * Force of the vise that keeps the tongue from rocking: the pressure stays inside the middle third of the jaw's height,
 * force × height/6 = moment (Shigley and others on rigid pads: from memory).
 * @example gripForce(100000, 50) // 12000
 */
export function gripForce(momentNmm: number, jawHeightMm: Mm): number {
  return (6 * momentNmm) / jawHeightMm;
}
