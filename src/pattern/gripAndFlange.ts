/**
 * How much sheet the clamp must hold and the leaf must catch. Grip is the depth of the clamped coplanar run from the bend
 * tangent line, flange that of the swung run; what they must be is motion/holds' rule.
 */
import type { Leaf } from "../brake/brake.ts";
import { isShort, leastFlangeMm, leastGripMm } from "../motion/holds.ts";
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
    leastGripMm: leastGripMm(limits, thicknessMm),
    flangeMm: state.flangeMm,
    leastFlangeMm: leastFlangeMm(limits, seat),
  };
}

/** Which of the two falls short; grip first. */
export function shortOf(state: StrokeState, limits: StrokeLimits): "grip" | "flange" | undefined {
  const depths = gripAndFlange(state, limits);
  if (isShort({ runMm: depths.gripMm, leastMm: depths.leastGripMm })) return "grip";
  return isShort({ runMm: depths.flangeMm, leastMm: depths.leastFlangeMm }) ? "flange" : undefined;
}
