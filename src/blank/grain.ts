/**
 * Which way the grain of the sheet runs in the blank, and what that means for the bends: across the grain holds best,
 * along it the outside of the bend cracks first. FAA-H-8083-31 asks for bends across the grain (from memory).
 */
import type { Deg } from "../units/quantity.ts";

/** Direction of the grain in the blank: `across` the bend lines, `along` them, or not `known`. */
export type Grain = "across" | "along" | "unknown";

/** Grain nearer to the bend lines than this counts as along them. Common practice, no source. */
const ALONG_WITHIN: Deg = 45;

/**
 * How grain that runs at an angle to the bend lines counts; 0 is along the bend lines, 90 across them.
 * @example grainAt(90) // "across"
 * @example grainAt(-170) // "along"
 */
export function grainAt(angleToBendLinesDeg: Deg): Grain {
  const turned = Math.abs(angleToBendLinesDeg % 180);
  const nearest = Math.min(turned, 180 - turned);
  return nearest < ALONG_WITHIN ? "along" : "across";
}
