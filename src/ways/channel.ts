/**
 * A channel with two equal flanges, measured outside, as the engine's part: what a return flange is tried on.
 * Its bends are formed by the brake as those of any part (motion/formBends); the overbend keeps its ratio to the angle.
 */
import type { Brake } from "../brake/brake.ts";
import type { Metal } from "../metal/metal.ts";
import { formBends } from "../motion/formBends.ts";
import type { Bend, Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";

/** No hand leaf swings further. */
const MOST_LEAF_DEG: Deg = 175;

/** The sheet and how it bends: all that a chart holds fixed. */
export interface BendingSheet {
  readonly metal: Metal;
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  readonly insideRadiusMm: Mm;
  /** Leaf angle over finished angle, as likely, and from least to most springback where that is reckoned. */
  readonly overbendRatio: number;
  readonly overbendRatios?: readonly [low: number, high: number];
}

/** A bend of this sheet on a brake; undefined where the brake can't form it. */
export function channelBend(brake: Brake, sheet: BendingSheet, angleDeg: Deg): Bend | undefined {
  const { thicknessMm, kFactor, insideRadiusMm, overbendRatio } = sheet;
  const overbendDeg = angleDeg * overbendRatio;
  const asked = { angleDeg, turn: "up", insideRadiusMm, overbendDeg } as const;
  const [formed] = formBends([asked], { thicknessMm, kFactor, brake, keptAt: () => 1 / overbendRatio });
  if (!formed?.ok) return undefined;
  const [low, high] = sheet.overbendRatios ?? [];
  return low === undefined || high === undefined
    ? formed.bend
    : { ...formed.bend, overbendRangeDeg: [angleDeg * low, Math.min(MOST_LEAF_DEG, angleDeg * high)] };
}

/** The channel with two such bends; undefined where a flat would have no length between them. */
export function channel(sheet: BendingSheet, bend: Bend, webMm: Mm, flangeMm: Mm): Part | undefined {
  const { metal, thicknessMm, kFactor } = sheet;
  const [flange, web] = [flangeMm - bend.bendSetbackMm, webMm - 2 * bend.bendSetbackMm];
  if (!(flange > 0 && web > 0)) return undefined;
  return {
    name: "channel",
    metal,
    thicknessMm,
    kFactor,
    flatsMm: [flange, web, flange],
    bends: [bend, bend],
  };
}
