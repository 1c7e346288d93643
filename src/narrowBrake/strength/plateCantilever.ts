/**
 * The clamp bar in front of its holder: a wide plate built in at the holder's front, with a line load at the nose.
 * σ = 6·q·c/t²; δ = q·c³/(3·D) + 6·q·c/(5·G·t), D = E·t³/(12·(1 − ν²)): Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells; shear from Timoshenko beams.
 * Bound: the holder's edge is taken as rigid; the shear part counts, for such bars are short and thick (c about 2 t: a fifth).
 */
import type { Mm, Mpa } from "../../units/quantity.ts";
import type { ForcePerLength } from "./foldingForces.ts";

/** Poisson's ratio of steel: 0.29, from memory. */
const STEEL_POISSON = 0.29;

export interface PlateCantilever {
  readonly loadNPerMm: ForcePerLength;
  /** Free length in front of the holder; the load stands at its end. */
  readonly overhangMm: Mm;
}

/** Largest bending stress, at the holder's edge. @example plateStress({ loadNPerMm: 10, overhangMm: 12 }, 6) // 20 */
export function plateStress(plate: PlateCantilever, thicknessMm: Mm): Mpa {
  return (6 * plate.loadNPerMm * plate.overhangMm) / thicknessMm ** 2;
}

/** Flexural rigidity of a unit width of plate, N·mm. @example plateRigidity(200000, 6, 0) // 3600000 */
function plateRigidity(modulusMpa: Mpa, thicknessMm: Mm, poisson = STEEL_POISSON): number {
  return (modulusMpa * thicknessMm ** 3) / (12 * (1 - poisson ** 2));
}

/** How far the nose gives way by bending. @example plateBending({ loadNPerMm: 10, overhangMm: 12 }, 6, 200000, 0) // 0.0016 */
function plateBending(plate: PlateCantilever, thicknessMm: Mm, modulusMpa: Mpa, poisson = STEEL_POISSON): Mm {
  return (plate.loadNPerMm * plate.overhangMm ** 3) / (3 * plateRigidity(modulusMpa, thicknessMm, poisson));
}

/** Shear modulus E/(2·(1 + ν)). @example shearModulus(200000, 0.25) // 80000 */
export function shearModulus(modulusMpa: Mpa, poisson = STEEL_POISSON): Mpa {
  return modulusMpa / (2 * (1 + poisson));
}

/** How far it gives way by shear, which a slender plate would not show. */
export function plateShear(
  plate: PlateCantilever,
  thicknessMm: Mm,
  modulusMpa: Mpa,
  poisson = STEEL_POISSON,
): Mm {
  return (6 * plate.loadNPerMm * plate.overhangMm) / (5 * shearModulus(modulusMpa, poisson) * thicknessMm);
}

/** Both together: how far the nose lifts off the sheet. */
export function plateDeflection(
  plate: PlateCantilever,
  thicknessMm: Mm,
  modulusMpa: Mpa,
  poisson = STEEL_POISSON,
): Mm {
  return (
    plateBending(plate, thicknessMm, modulusMpa, poisson) +
    plateShear(plate, thicknessMm, modulusMpa, poisson)
  );
}

/** Thinnest plate whose stress stays at or under the limit. @example thinnestByStrength({ loadNPerMm: 10, overhangMm: 12 }, 20) // 6 */
export function thinnestByStrength(plate: PlateCantilever, allowedMpa: Mpa): Mm {
  return Math.sqrt((6 * plate.loadNPerMm * plate.overhangMm) / allowedMpa);
}

/**
 * Thinnest plate whose nose gives way no more than the limit: the one positive root of δ·t³ − S·t² − B = 0,
 * B and S the bending and shear parts at unit thickness.
 * Newton from above: with t ≥ cbrt(B/δ) + S/δ the cubic is positive and convex, so the steps fall to the root and never past it.
 */
export function thinnestByStiffness(
  plate: PlateCantilever,
  allowedMm: Mm,
  modulusMpa: Mpa,
  poisson = STEEL_POISSON,
): Mm {
  const bending = plateBending(plate, 1, modulusMpa, poisson);
  const shear = plateShear(plate, 1, modulusMpa, poisson);
  let t = Math.cbrt(bending / allowedMm) + shear / allowedMm;
  for (let last = Number.POSITIVE_INFINITY; t < last; ) {
    last = t;
    t -= (allowedMm * t ** 3 - shear * t ** 2 - bending) / (3 * allowedMm * t ** 2 - 2 * shear * t);
  }
  return t;
}
