/**
 * Bolts in tension: stress area, proof load, preload and the torque that makes it.
 * At = π/4·(d − 0.9382·p)² (ISO 898-1), π/4·(D − 0.9743/n)² for inch threads (ASME B1.1); T = K·D·F (Shigley, eq. 8-27); preload ≤ 0.75 proof (Shigley, reusable).
 * Bound: torque makes preload only within about ±30 % (Shigley's tests spread so); wear and oil change K.
 */
import type { Mm, Mpa } from "../../units/quantity.ts";

export interface Thread {
  /** As marked in the shop: "M8", "3/8-16". */
  readonly name: string;
  readonly diameterMm: Mm;
  readonly pitchMm: Mm;
  /** Inch threads are rated on a little less core than metric ones. */
  readonly series: "metric" | "unified";
}

/** Strength class of a bolt; proof stress from the standard. */
export interface BoltGrade {
  readonly name: string;
  readonly proofMpa: Mpa;
  readonly source: string;
}

/** Nut factor K of plain zinc-plated threads (Shigley, table 8-15); 0.18 oiled, 0.30 black and dry. */
const NUT_FACTOR = 0.2;

/** Share of the proof load that a bolt to be used again is tightened to (Shigley). */
const REUSABLE_PRELOAD_SHARE = 0.75;

/** Thread depth, in pitches, that is taken off the diameter for the stress area. */
const DEPTH_IN_PITCHES = { metric: 0.9382, unified: 0.9743 } as const;

/** Tensile stress area, mm². @example stressArea({ name: "M10", diameterMm: 10, pitchMm: 1.5, series: "metric" }) // 57.99 */
export function stressArea({ diameterMm, pitchMm, series }: Thread): number {
  return (Math.PI / 4) * (diameterMm - DEPTH_IN_PITCHES[series] * pitchMm) ** 2;
}

/** Proof load, N. @example proofLoad({ name: "M12", diameterMm: 12, pitchMm: 1.75, series: "metric" }, { name: "8.8", proofMpa: 580, source: "ISO 898-1" }) // 48874 */
export function proofLoad(thread: Thread, grade: BoltGrade): number {
  return stressArea(thread) * grade.proofMpa;
}

/** Largest preload for a bolt that is to be loosened and used again, N. */
export function reusablePreload(thread: Thread, grade: BoltGrade): number {
  return REUSABLE_PRELOAD_SHARE * proofLoad(thread, grade);
}

/** Tightening torque in N·m for a tension in N. @example tighteningTorque({ name: "M10", diameterMm: 10, pitchMm: 1.5, series: "metric" }, 10000) // 20 */
export function tighteningTorque(thread: Thread, tensionN: number, nutFactor = NUT_FACTOR): number {
  return (nutFactor * thread.diameterMm * tensionN) / 1000;
}
