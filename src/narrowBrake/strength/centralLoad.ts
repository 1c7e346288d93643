/**
 * A beam between two supports with an even load on its middle stretch: largest moment and sag at mid-length; and the twist of
 * one that is turned evenly over its length and held at both ends.
 * M = w·L·(2·S − L)/8; sag = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I) (statics and double integration; with L = S Gere & Goodno, app. H-2, case 1).
 * Bound: shear deflection left out, under 3 % where the span is over ten depths.
 */
import type { Mm, Rad } from "../../units/quantity.ts";

export interface CentralLoad {
  readonly loadNPerMm: number;
  /** How much of the span is loaded, about its middle. */
  readonly loadedMm: Mm;
  readonly spanMm: Mm;
}

/** @example centralMoment({ loadNPerMm: 8, loadedMm: 10, spanMm: 10 }) // 100 */
export function centralMoment({ loadNPerMm: w, loadedMm: L, spanMm: S }: CentralLoad): number {
  return (w * L * (2 * S - L)) / 8;
}

/** @example centralSag({ loadNPerMm: 384, loadedMm: 1, spanMm: 1 }, 5) // 1 */
export function centralSag({ loadNPerMm: w, loadedMm: L, spanMm: S }: CentralLoad, stiffness: number): Mm {
  return (w * L * (8 * S ** 3 - 4 * S * L ** 2 + L ** 3)) / (384 * stiffness);
}

/**
 * How far the middle lags behind ends that are held, for an even turning moment per length: m·L²/(8·G·J).
 * @example middleTwist(60, 300, 77000, 5000) // 0.00175
 */
export function middleTwist(moment: number, lengthMm: Mm, shearModulusMpa: number, constantMm4: number): Rad {
  return (moment * lengthMm ** 2) / (8 * shearModulusMpa * constantMm4);
}
