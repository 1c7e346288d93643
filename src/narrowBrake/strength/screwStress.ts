/**
 * Mean stress in the core of a screw or bolt under a force along its axis, over the tensile stress area (bolt.ts). Exact.
 */
import type { Mpa } from "../../units/quantity.ts";
import { stressArea, type Thread } from "./bolt.ts";

/** @example screwStress(5799, { name: "M10", diameterMm: 10, pitchMm: 1.5, series: "metric" }) // 100 */
export function screwStress(forceN: number, thread: Thread): Mpa {
  return forceN / stressArea(thread);
}
