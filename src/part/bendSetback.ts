/**
 * Bend setback: from the bend tangent line to the mold line, along the flat. Outside (r + T)·tan(θ/2), inside
 * r·tan(θ/2), with θ measured from flat (FAA AC 43.13-1B, paragraph 4-56; its K is tan(θ/2)).
 * Exact to rounding; grows without bound toward 180°, where the mold lines no longer meet.
 */
import { type Deg, type Mm, toRad } from "../units/quantity.ts";

/** A bend's shape: what every allowance method starts from. */
export interface BendShape {
  /** Bend angle from flat, between 0 and 180. */
  readonly angleDeg: Deg;
  readonly insideRadiusMm: Mm;
  readonly thicknessMm: Mm;
}

/**
 * Bend setback to the outside mold line.
 * @example outsideBendSetback({ angleDeg: 90, insideRadiusMm: 1.2, thicknessMm: 0.8 }) // 2
 */
export function outsideBendSetback({ angleDeg, insideRadiusMm, thicknessMm }: BendShape): Mm {
  return (insideRadiusMm + thicknessMm) * Math.tan(toRad(angleDeg) / 2);
}

/**
 * Bend setback to the inside mold line.
 * @example insideBendSetback({ angleDeg: 90, insideRadiusMm: 1.2, thicknessMm: 0.8 }) // 1.2
 */
export function insideBendSetback({ angleDeg, insideRadiusMm }: BendShape): Mm {
  return insideRadiusMm * Math.tan(toRad(angleDeg) / 2);
}
