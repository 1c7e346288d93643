/**
 * Why a brake can't be as it is described: which measure is at fault and what it may be, in a few words.
 * Lengths in the words are left to the caller's unit: the words take them through `say`.
 */
import type { OutlineFault } from "../plane/fillet.ts";
import type { Mm } from "../units/quantity.ts";

/** How the reader wants to see a length: "0.8 mm", "1/32 in". */
export type SayLength = (lengthMm: Mm) => string;

export interface BrakeFault {
  /** Key of the clamp's, bed's or leaf's description, as in the job file. */
  readonly key: string;
  /** What is there instead, where the key's own value doesn't show it. */
  readonly found?: (say: SayLength) => string;
  readonly allowed: (say: SayLength) => string;
}

/** A measure that must stay under a limit. */
export function tooLarge(key: string, limitMm: Mm, why: string): BrakeFault {
  return { key, allowed: (say) => `less than ${say(limitMm)}, ${why}` };
}

/** A rounding that doesn't fit, told by the key that asked for it; any other fault of the outline by `shapeKey`. */
export function ofOutline(fault: OutlineFault, radiusKeys: readonly string[], shapeKey: string): BrakeFault {
  const key = fault.kind === "radius" ? radiusKeys[fault.corner] : undefined;
  if (fault.kind === "radius" && key) {
    return { key, allowed: (say) => `at most ${say(fault.largestMm)}, so that the rounding fits its edges` };
  }
  return { key: shapeKey, allowed: () => "such that the clamp makes a shape with one edge all around" };
}
