/**
 * What bowing does to the bend at mid-length, and the crown (packing, thickest in the middle) that cancels it.
 * A leaf or nose that gives way by δ at the lever a leaves the flange atan(δ/a) short: plain geometry, no source needed.
 * Bound: the crown cancels the load it was cut for; half the load leaves half of it as overbend.
 */
import type { Deg, Mm } from "../../units/quantity.ts";
import { toDeg } from "../../units/quantity.ts";
import type { BendingStiffness, UniformBeam } from "./uniformBeam.ts";
import { beamDeflection } from "./uniformBeam.ts";

/** Bend angle lost where the leaf (or nose) gives way. @example angleLost(0.1, 6) // 0.955 */
export function angleLost(deflectionMm: Mm, leverMm: Mm): Deg {
  return toDeg(Math.atan2(deflectionMm, leverMm));
}

export interface CrownStation {
  /** From the left end of the beam. */
  readonly fromEndMm: Mm;
  /** Packing to put in there. */
  readonly packingMm: Mm;
}

/**
 * Packing along a beam so that it is straight under its load: at each station the deflection there, less the least of all
 * so that no packing is negative. Stations stand at even distances from end to end.
 * @param stations how many, at least 3
 */
export function crownOf(beam: UniformBeam, stiffness: BendingStiffness, stations: number): CrownStation[] {
  const whole = beam.spanMm + beam.overhangLeftMm + beam.overhangRightMm;
  const shape = Array.from({ length: stations }, (_, i) => {
    const fromEndMm = (whole * i) / (stations - 1);
    return { fromEndMm, sag: beamDeflection(beam, stiffness, fromEndMm - beam.overhangLeftMm) };
  });
  const least = Math.min(...shape.map(({ sag }) => sag));
  return shape.map(({ fromEndMm, sag }) => ({ fromEndMm, packingMm: sag - least }));
}
