/**
 * The part: a chain of flats and bends, as seen in section with the marked face up and flat 1 at the left.
 * Lengths of flats run from bend tangent line to bend tangent line; flats and bends count from 0 in the engine.
 */
import type { Metal } from "../metal/metal.ts";
import type { Deg, Mm } from "../units/quantity.ts";

export type Turn = "up" | "down";

/** Which end of the part lies in the throat: `start` clamps flats 1…i of bend i, `end` the rest. */
export type End = "start" | "end";

export const HEM_KINDS = ["closed", "open", "teardrop"] as const;

/** An edge folded back on itself (hem.ts). */
export interface Hem {
  readonly kind: (typeof HEM_KINDS)[number];
  /** Between the two layers; 0 for a closed one. */
  readonly gapMm: Mm;
  /** Inside radius over the nose in the first stroke. */
  readonly foldRadiusMm: Mm;
  /** Part of the leaf angle that the first stroke keeps. */
  readonly kept: number;
}

export interface Bend {
  /** Finished bend angle, measured from flat, after springback. */
  readonly angleDeg: Deg;
  readonly turn: Turn;
  /** Inside radius that the brake forms. */
  readonly insideRadiusMm: Mm;
  /** Leaf angle to swing to, so that the bend relaxes to `angleDeg`. */
  readonly overbendDeg: Deg;
  /** Leaf angles that the bend may want, from least to most springback; absent where the overbend was given or measured. */
  readonly overbendRangeDeg?: readonly [Deg, Deg];
  /** Length of sheet that the bend takes up, on its neutral line. */
  readonly allowanceMm: Mm;
  /** Bend setback to the outside mold line, (r + T)·tan(θ/2). */
  readonly bendSetbackMm: Mm;
  /** Bend deduction, 2·SB − BA. */
  readonly deductionMm: Mm;
  /** How far the nose stands behind the bed's front edge for this bend; negative where it stands over the leaf. */
  readonly noseSetbackMm: Mm;
  /** The nose stands too far forward for any radius it could form, and pinches the sheet: the bend can't be made so. */
  readonly pinched: boolean;
  /** Of a hem: what it is and how its first stroke bends; the bend's own figures are those of the finished half turn. */
  readonly hem?: Hem;
  /** No bend but the place where a hem lies under the clamp (motion/hemStrokes). */
  readonly flattens?: true;
}

export interface Part {
  readonly name: string;
  readonly metal: Metal;
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  /** The method that the bend allowances follow where it is not the K-factor. */
  readonly allowanceBy?: "din6935";
  /** Length along the bend lines, when the job gives it. */
  readonly lengthMm?: Mm;
  /** Tangent-to-tangent lengths, one more than there are bends. */
  readonly flatsMm: readonly Mm[];
  readonly bends: readonly Bend[];
}
