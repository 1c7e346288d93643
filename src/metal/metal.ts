/**
 * What the engine needs to know of a metal. Figures live in metals.ts, each with its source.
 * Strengths and modulus in MPa, density in kg/m³; minimum radius as a multiple of thickness for a 90° bend.
 */
import type { Mpa } from "../units/quantity.ts";

export interface Metal {
  readonly name: string;
  readonly yieldMpa: Mpa;
  readonly modulusMpa: Mpa;
  readonly ultimateMpa?: Mpa;
}
