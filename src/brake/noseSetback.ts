/**
 * How far the nose of the closed clamp stands back from the bed's front edge, and the radius that this forms.
 * Automatic: s = (r + T)·tan(max(θo, 90°)/2) − Rn − a(θo); a given s forms r = s + Rn − T. From the geometry of
 * the section, exact; up to 90° with the pivot on the edge it is the shop's rule of one thickness when r = Rn.
 */
import type { Point } from "../plane/point.ts";
import { type Deg, type Mm, type Rad, toRad } from "../units/quantity.ts";

/**
 * Where the outer mold-line apex stands on y = 0 with the leaf swung by φ: a(φ) = Px + Py·tan(φ/2).
 * @example apexX({ x: 0, y: 0 }, 1) // 0
 */
export function apexX(pivot: Point, phiRad: Rad): Mm {
  return pivot.x + pivot.y * Math.tan(phiRad / 2);
}

/**
 * Nose setback that forms the asked inside radius.
 * @example automaticNoseSetback({ insideRadiusMm: 1, thicknessMm: 0.8, noseRadiusMm: 0.8, overbendDeg: 90, pivot: { x: 0, y: 0 } }) // 1
 */
export function automaticNoseSetback(of: {
  readonly insideRadiusMm: Mm;
  readonly thicknessMm: Mm;
  readonly noseRadiusMm: Mm;
  readonly overbendDeg: Deg;
  readonly pivot: Point;
}): Mm {
  const r = of.insideRadiusMm;
  const T = of.thicknessMm;
  const overbendRad = toRad(of.overbendDeg);
  const half = Math.max(overbendRad, Math.PI / 2) / 2;
  // tan 45° is taken as 1 outright, so that the shop's rule comes out without rounding.
  const slope = overbendRad <= Math.PI / 2 ? 1 : Math.tan(half);
  return (r + T) * slope - of.noseRadiusMm - apexX(of.pivot, overbendRad);
}

/**
 * Inside radius that a given nose setback forms. Less than the nose radius means the sheet would be pinched.
 * @example formedInsideRadius({ noseSetbackMm: 1, noseRadiusMm: 0.8, thicknessMm: 0.8 }) // 1
 */
export function formedInsideRadius(of: {
  readonly noseSetbackMm: Mm;
  readonly noseRadiusMm: Mm;
  readonly thicknessMm: Mm;
}): Mm {
  return of.noseSetbackMm + of.noseRadiusMm - of.thicknessMm;
}
