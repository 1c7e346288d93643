/**
 * The sheet's slide along the leaf, the one place where its law stands: s(φ) = A·tan(φ/2) − B·φ from rest, from the length
 * that the sheet keeps (src/model.md, section 5); s′ = A/2·sec²(φ/2) − B. Exact.
 */
import type { Mm, Rad } from "../units/quantity.ts";

/** A = slideTan, B = slideTurn; both 0 for what does not slide. */
export interface Slide {
  readonly slideTan: number;
  readonly slideTurn: number;
}

/** How far the moving side has slid outward along the leaf since rest. @example slideAt({ slideTan: 2, slideTurn: 1 }, 0) // 0 */
export function slideAt(of: Slide, phiRad: Rad): Mm {
  return slideBy(of, Math.tan(phiRad / 2), phiRad);
}

/** The same where tan(φ/2) is at hand. */
export function slideBy(of: Slide, halfTan: number, phiRad: Rad): Mm {
  return of.slideTan * halfTan - of.slideTurn * phiRad;
}

/** s′, mm per radian, from tan(φ/2). */
export function slideRateBy(of: Slide, halfTan: number): number {
  return (of.slideTan / 2) * (1 + halfTan * halfTan) - of.slideTurn;
}

/** Where the slide turns back, s′ = 0; NaN where it never does. */
export function slideTurnsAt({ slideTan, slideTurn }: Slide): Rad {
  return 2 * Math.atan(Math.sqrt((2 * slideTurn) / slideTan - 1));
}
