/**
 * How far the nose of the closed clamp stands back from the bed's front edge, and the radius that this forms.
 * The sheet leaves the underside where the nose's rounding begins, so the clamped bend tangent line stands at
 * X = −(s + Rn); with the apex a(θo) that ties them: (r + T)·tan(θo/2) = a(θo) − X (src/model.md, section 4). Exact.
 */
import type { Point } from "../plane/point.ts";
import { type Deg, type Mm, type Rad, toRad } from "../units/quantity.ts";

/** A bend at the leaf angle to which it is swung, in a brake whose leaf turns about `pivot`. */
export interface NoseStand {
  readonly thicknessMm: Mm;
  readonly overbendDeg: Deg;
  readonly pivot: Point;
}

/**
 * Where the outer mold-line apex stands on y = 0 with the leaf swung by φ: a(φ) = Px + Py·tan(φ/2).
 * @example apexX({ x: 0, y: 0 }, 1) // 0
 */
export function apexX(pivot: Point, phiRad: Rad): Mm {
  return pivot.x + pivot.y * Math.tan(phiRad / 2);
}

/**
 * Where a bend of this radius starts at the clamped side, X = a(θo) − (r + T)·tan(θo/2), in the section frame.
 * @example clampedTangentX({ insideRadiusMm: 1, thicknessMm: 0.8, overbendDeg: 90, pivot: { x: 0, y: 0 } }) // -1.8
 */
export function clampedTangentX(of: NoseStand & { readonly insideRadiusMm: Mm }): Mm {
  return (
    apexX(of.pivot, toRad(of.overbendDeg)) - (of.insideRadiusMm + of.thicknessMm) * halfTan(of.overbendDeg)
  );
}

/**
 * Nose setback that forms the asked inside radius; negative where the nose stands over the leaf. At 90° with the pivot
 * on the bed's edge it is the shop's rule of one thickness when r = Rn. With the least radius that the nose leaves
 * room for it is the least setback, under which the nose pinches the sheet. `noseRunMm` is the nose radius Rn, but on a free
 * profile (brake.ts).
 * @example automaticNoseSetback({ insideRadiusMm: 1, thicknessMm: 0.8, noseRunMm: 0.8, overbendDeg: 90, pivot: { x: 0, y: 0 } }) // 1
 */
export function automaticNoseSetback(
  of: NoseStand & { readonly insideRadiusMm: Mm; readonly noseRunMm: Mm },
): Mm {
  return -clampedTangentX(of) - of.noseRunMm;
}

/**
 * Inside radius that a nose setback forms. Less than the nose leaves room for means that it would pinch the sheet.
 * @example formedInsideRadius({ noseSetbackMm: 1, noseRunMm: 0.8, thicknessMm: 0.8, overbendDeg: 90, pivot: { x: 0, y: 0 } }) // 1
 */
export function formedInsideRadius(
  of: NoseStand & { readonly noseSetbackMm: Mm; readonly noseRunMm: Mm },
): Mm {
  const fromApex = of.noseSetbackMm + of.noseRunMm + apexX(of.pivot, toRad(of.overbendDeg));
  return fromApex / halfTan(of.overbendDeg) - of.thicknessMm;
}

/** tan 45° is taken as 1 outright, so that the shop's rule comes out without rounding. */
function halfTan(angleDeg: Deg): number {
  return angleDeg === 90 ? 1 : Math.tan(toRad(angleDeg) / 2);
}
