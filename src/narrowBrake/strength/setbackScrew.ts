/**
 * Setback screws behind the bar: how many, how far they must travel, what pushes on each.
 * Travel = spread of the nose setbacks over the parts; push = the leaf's largest level force, friction of the clamp not counted.
 * Bound: on the safe side, since the clamp's friction holds part of the push.
 */
import type { Mm, Mpa } from "../../units/quantity.ts";
import type { Thread } from "./bolt.ts";
import { stressArea } from "./bolt.ts";

/** Screws farther apart than this let the bar bow between them: common practice, no source. */
const LARGEST_SPACING_MM = 200;

/** Least number of screws along a bar: one near each end, more where they would stand too far apart. @example screwCount(500) // 4 */
export function screwCount(barLengthMm: Mm): number {
  return Math.max(2, Math.ceil(barLengthMm / LARGEST_SPACING_MM) + 1);
}

/** Travel that the nose setbacks of all parts ask for. @example setbackTravel([0.4, 1.9, 0.8]) // 1.5 */
export function setbackTravel(noseSetbacksMm: readonly Mm[]): Mm {
  return Math.max(...noseSetbacksMm) - Math.min(...noseSetbacksMm);
}

/** Stress in the core of a screw pushed along its axis. */
export function screwStress(pushN: number, thread: Thread): Mpa {
  return pushN / stressArea(thread);
}

/** Turns for a move of the bar. @example turnsFor(1.5, { name: "M6", diameterMm: 6, pitchMm: 1, series: "metric" }) // 1.5 */
export function turnsFor(travelMm: Mm, thread: Thread): number {
  return travelMm / thread.pitchMm;
}
