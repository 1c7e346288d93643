/**
 * A channel with two equal flanges, measured outside, as the engine's part: what a return flange is tried on.
 * Bend setback, allowance and deduction as for any part (part/); the overbend keeps the given ratio to the angle.
 */
import type { Metal } from "../metal/metal.ts";
import { bendAllowance, bendDeduction } from "../part/allowance.ts";
import { outsideBendSetback } from "../part/bendSetback.ts";
import type { Bend, Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";

/** The sheet and how it bends: all that a chart holds fixed. */
export interface BendingSheet {
  readonly metal: Metal;
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  readonly insideRadiusMm: Mm;
  /** Leaf angle over finished angle. */
  readonly overbendRatio: number;
}

/** Bend setback of a bend of this sheet: no flange is shorter. */
export function setbackOf({ thicknessMm, insideRadiusMm }: BendingSheet, angleDeg: Deg): Mm {
  return outsideBendSetback({ angleDeg, insideRadiusMm, thicknessMm });
}

/** The channel; undefined where a flat would have no length between its bends. */
export function channel(sheet: BendingSheet, angleDeg: Deg, webMm: Mm, flangeMm: Mm): Part | undefined {
  const { metal, thicknessMm, kFactor, insideRadiusMm, overbendRatio } = sheet;
  const shape = { angleDeg, insideRadiusMm, thicknessMm };
  const bendSetbackMm = setbackOf(sheet, angleDeg);
  const allowanceMm = bendAllowance(shape, kFactor);
  const [flange, web] = [flangeMm - bendSetbackMm, webMm - 2 * bendSetbackMm];
  if (!(flange > 0 && web > 0)) return undefined;
  const bend: Bend = {
    angleDeg,
    turn: "up",
    insideRadiusMm,
    overbendDeg: angleDeg * overbendRatio,
    allowanceMm,
    bendSetbackMm,
    deductionMm: bendDeduction(shape, allowanceMm),
  };
  return {
    name: "channel",
    metal,
    thicknessMm,
    kFactor,
    flatsMm: [flange, web, flange],
    bends: [bend, bend],
  };
}
