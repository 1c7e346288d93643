/**
 * Hinge pins in shear: mean shear stress over one or two shear planes, and the thinnest pin that carries a force.
 * τ = V/(n·π·d²/4); shear yield 0.577 of the yield in tension (distortion energy, Shigley).
 * Bound: bending of the pin is left out, so the knuckles must fit without a gap wider than a tenth of the pin.
 */
import type { Mm, Mpa } from "../../units/quantity.ts";

export type ShearPlanes = 1 | 2;

/** Share of the tensile yield at which metal yields in shear. */
export const SHEAR_YIELD_SHARE = 0.577;

/** Mean shear stress in a round pin. @example pinShear(135610, 25, 2) // 138.1 */
export function pinShear(forceN: number, diameterMm: Mm, planes: ShearPlanes): Mpa {
  return forceN / (planes * (Math.PI / 4) * diameterMm ** 2);
}

/** Shear stress allowed for a yield strength and a safety factor. @example allowedShear(420, 1) // 242.34 */
export function allowedShear(yieldMpa: Mpa, safety: number): Mpa {
  return (SHEAR_YIELD_SHARE * yieldMpa) / safety;
}

/** Thinnest pin for a force. @example thinnestPin(135610, 138.13, 2) // 25 */
export function thinnestPin(forceN: number, allowedMpa: Mpa, planes: ShearPlanes): Mm {
  return Math.sqrt(forceN / (allowedMpa * planes * (Math.PI / 4)));
}

/** Pressure of a pin on the bore of its ear, over the projected area. @example pinBearing(1800, 6, 5) // 60 */
export function pinBearing(forceN: number, diameterMm: Mm, earMm: Mm): Mpa {
  return forceN / (diameterMm * earMm);
}
