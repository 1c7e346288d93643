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

/** Which edge of a bend a dimension is measured to. */
export type Edge = "outside" | "inside" | "tangent";

/**
 * How bends past 90° are dimensioned: to the corner where the mold lines would meet, or to the tangent of the bend's
 * outermost (or innermost) point, as callipers read it and as DIN 6935 measures flanges of closed bends.
 */
export type ClosedBends = "corner" | "tangent";

/**
 * What a bend takes off a dimension that ends at it.
 * @example takenAtBend({ angleDeg: 135, insideRadiusMm: 1.2, thicknessMm: 0.8 }, "outside", "tangent") // 2
 */
export function takenAtBend(shape: BendShape, edge: Edge, closedBends: ClosedBends): Mm {
  if (edge === "tangent") return 0;
  if (closedBends === "corner" || shape.angleDeg <= 90) {
    return edge === "outside" ? outsideBendSetback(shape) : insideBendSetback(shape);
  }
  return edge === "outside" ? shape.insideRadiusMm + shape.thicknessMm : shape.insideRadiusMm;
}
