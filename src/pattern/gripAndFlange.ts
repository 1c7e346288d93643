/**
 * How much sheet the clamp must hold and the leaf must catch. Grip is the depth of the clamped coplanar run from the bend
 * tangent line, flange that of the swung run. Defaults (common practice, no source): grip the greater of 3 mm and 4T;
 * flange 2T + r beyond the tangent line, and at least up to where the leaf's working face begins.
 */
import type { Leaf } from "../brake/brake.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Mm } from "../units/quantity.ts";
import type { StrokeState } from "./strokeState.ts";

export interface StrokeLimits {
  /** Set by the job, 0 switches it off; undefined: the default. */
  readonly leastGripMm?: Mm;
  readonly leastFlangeMm?: Mm;
  readonly leaf: Leaf;
}

export interface Depths {
  readonly gripMm: Mm;
  readonly leastGripMm: Mm;
  readonly flangeMm: Mm;
  readonly leastFlangeMm: Mm;
}

/** Grip and flange of a stroke beside what they must be. */
export function gripAndFlange(state: StrokeState, limits: StrokeLimits): Depths {
  const { seat } = state.elements;
  const { thicknessMm } = state.plan.part;
  return {
    gripMm: state.gripMm,
    leastGripMm: limits.leastGripMm ?? Math.max(3, 4 * thicknessMm),
    flangeMm: state.flangeMm,
    leastFlangeMm:
      limits.leastFlangeMm ??
      Math.max(2 * thicknessMm + seat.insideRadiusMm, faceStartX(limits.leaf) - seat.movingTangentX),
  };
}

/** Which of the two falls short; grip first. */
export function shortOf(state: StrokeState, limits: StrokeLimits): "grip" | "flange" | undefined {
  const { gripMm, leastGripMm, flangeMm, leastFlangeMm } = gripAndFlange(state, limits);
  if (gripMm < leastGripMm) return "grip";
  return flangeMm < leastFlangeMm ? "flange" : undefined;
}

/** Where the leaf's working face, its topmost edge, begins in front of the bed. */
function faceStartX({ outline }: Leaf): Mm {
  const top = boxOf(outline).maxY;
  const onTop = outline.edges.flatMap(({ from, to }) => [from, to]).filter(({ y }) => y > top - 0.01);
  return Math.min(...onTop.map(({ x }) => x));
}
