/**
 * Offsets (joggles): two equal bends that turn against each other, with a flat between, so that the sheet goes on in a parallel plane.
 * Mid-thickness rises by m·sin θ + 2(r + T/2)(1 − cos θ), m the flat between the tangent lines; over the outside faces the height is
 * T more. Plane geometry, exact.
 */
import { type Deg, type Mm, toRad } from "../units/quantity.ts";

export interface OffsetShape {
  readonly angleDeg: Deg;
  readonly insideRadiusMm: Mm;
  readonly thicknessMm: Mm;
}

/**
 * The height over the outside faces with this flat between the two bends.
 * @example offsetHeight({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1 }, 5) // 9
 */
export function offsetHeight({ angleDeg, insideRadiusMm, thicknessMm }: OffsetShape, flatMm: Mm): Mm {
  const arcs = 2 * (insideRadiusMm + thicknessMm / 2) * (1 - Math.cos(toRad(angleDeg)));
  return flatMm * Math.sin(toRad(angleDeg)) + arcs + thicknessMm;
}

/**
 * The flat between the tangent lines that makes this height; 0 or less where the arcs alone make more.
 * @example offsetFlat({ angleDeg: 90, insideRadiusMm: 1, thicknessMm: 1 }, 9) // 5
 */
export function offsetFlat(shape: OffsetShape, heightMm: Mm): Mm {
  return (heightMm - offsetHeight(shape, 0)) / Math.sin(toRad(shape.angleDeg));
}
