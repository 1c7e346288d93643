/**
 * A beam on two supports with an overhang at each end, evenly loaded over its whole length; overhang 0 is the plain beam.
 * Superposition of the plain beam (5·w·L⁴/384·E·I at the middle) and the end moments −w·a²/2 (Gere & Goodno, app. H-2, cases 1 and 7).
 * Bound: shear deflection left out, under 3 % where the span is over ten depths; supports do not give way.
 */
import type { Mm, Mpa, Rad } from "../../units/quantity.ts";
import type { ForcePerLength } from "./foldingForces.ts";
import type { SectionProperties } from "./section.ts";

export interface UniformBeam {
  readonly loadNPerMm: ForcePerLength;
  /** Between the two supports: bolts or hinges. */
  readonly spanMm: Mm;
  readonly overhangLeftMm: Mm;
  readonly overhangRightMm: Mm;
}

/** Bending stiffness E·I, N·mm². */
export type BendingStiffness = number & { readonly quantity?: "N·mm²" };

/** Moment at x from the left support, hogging negative, N·mm. Outside the supports it is that of the overhang. */
export function beamMoment(beam: UniformBeam, x: Mm): number {
  const { loadNPerMm: w, spanMm: L, overhangLeftMm: a, overhangRightMm: b } = beam;
  if (x < 0) return (-w * (a + x) ** 2) / 2;
  if (x > L) return (-w * (L + b - x) ** 2) / 2;
  const atLeft = (-w * a * a) / 2;
  const atRight = (-w * b * b) / 2;
  return (w * x * (L - x)) / 2 + atLeft + ((atRight - atLeft) * x) / L;
}

/** Largest moment by size, wherever it stands. @example largestMoment({ loadNPerMm: 8, spanMm: 10, overhangLeftMm: 0, overhangRightMm: 0 }) // 100 */
export function largestMoment(beam: UniformBeam): number {
  const { loadNPerMm: w, spanMm: L, overhangLeftMm: a, overhangRightMm: b } = beam;
  const shearFree = L / 2 + (a * a - b * b) / (2 * L);
  const inSpan = shearFree > 0 && shearFree < L ? Math.abs(beamMoment(beam, shearFree)) : 0;
  return Math.max(inSpan, (w * a * a) / 2, (w * b * b) / 2);
}

/** Deflection at x from the left support, along the load; 0 at both supports. Any x on the beam, overhangs included. */
export function beamDeflection(beam: UniformBeam, stiffness: BendingStiffness, x: Mm): Mm {
  const { loadNPerMm: w, spanMm: L, overhangLeftMm: a, overhangRightMm: b } = beam;
  if (x < 0) return overhangDeflection(w, a, -slopeAt(beam, stiffness, "left"), stiffness, -x);
  if (x > L) return overhangDeflection(w, b, slopeAt(beam, stiffness, "right"), stiffness, x - L);
  const plain = (w * x * (L ** 3 - 2 * L * x * x + x ** 3)) / (24 * stiffness);
  const leftMoment = (w * a * a) / 2;
  const rightMoment = (w * b * b) / 2;
  const hogLeft = (leftMoment * x * (L - x) * (2 * L - x)) / (6 * L * stiffness);
  const hogRight = (rightMoment * x * (L * L - x * x)) / (6 * L * stiffness);
  return plain - hogLeft - hogRight;
}

/** Deflection midway between the supports. @example midDeflection({ loadNPerMm: 384, spanMm: 1, overhangLeftMm: 0, overhangRightMm: 0 }, 5) // 1 */
export function midDeflection(beam: UniformBeam, stiffness: BendingStiffness): Mm {
  return beamDeflection(beam, stiffness, beam.spanMm / 2);
}

/** Largest bending stress, over the least section modulus of the given axis. */
export function beamStress(beam: UniformBeam, section: SectionProperties): Mpa {
  return largestMoment(beam) / section.modulusXMm3;
}

/**
 * Overhang that makes the moment at the supports equal to that at the middle, for a beam of given whole length:
 * span = 2·√2 overhangs (Machinery's Handbook, beam with two equal overhangs, l = 2.828 c).
 * @example evenOverhang(100) // 20.71
 */
export function evenOverhang(wholeLengthMm: Mm): Mm {
  return wholeLengthMm / (2 + 2 * Math.SQRT2);
}

/** Slope dy/dx of the deflection (along the load) at a support. */
export function slopeAt(beam: UniformBeam, stiffness: BendingStiffness, support: "left" | "right"): Rad {
  const { loadNPerMm: w, spanMm: L, overhangLeftMm: a, overhangRightMm: b } = beam;
  const [near, far] = support === "left" ? [a, b] : [b, a];
  const size = (w * L ** 3) / 24 - ((w * near * near) / 2) * (L / 3) - ((w * far * far) / 2) * (L / 6);
  return (support === "left" ? size : -size) / stiffness;
}

/** An overhang turned by the support's slope and bent by its own load; `out` measured from the support. */
function overhangDeflection(w: number, length: Mm, slopeOut: Rad, stiffness: BendingStiffness, out: Mm): Mm {
  return (
    slopeOut * out + (w * out * out * (6 * length ** 2 - 4 * length * out + out ** 2)) / (24 * stiffness)
  );
}
