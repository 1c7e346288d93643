/**
 * What the hold-down bolts pull and what that presses on nose and heel, from where bolts, nose and heel stand in the assembly.
 * Moments about the heel. Torque set by a reckoned friction makes the pull within 28 % (VDI 2230 of 1986, tightening factors: 23 to 28 %).
 * Bound: the heel bears in the middle of what the bar has on its strip.
 */
import type { Mm } from "../../units/quantity.ts";
import { tighteningTorque } from "../strength/bolt.ts";
import { measured, type UnderLoad } from "./under.ts";

/** Torque may make so much more or less of a bolt's pull. */
export const TORQUE_SCATTER = 0.28;

export interface ClampForces {
  readonly bolts: number;
  /** From nose to bolt, and from bolt to heel. */
  readonly frontMm: Mm;
  readonly backMm: Mm;
  /** Along the bend, what one bolt holds down. */
  readonly shareMm: Mm;
  /** The folding's pull in one bolt. */
  readonly pullN: number;
  /** What each is tightened to, and what it may come to. */
  readonly targetN: number;
  readonly mostN: number;
  /** At the nose per length, tightened as far as may be. */
  readonly noseNPerMm: number;
}

export function clampForces(under: UnderLoad): ClampForces {
  const { loads, requirements, places } = under;
  const bar = measured(under, "bar");
  const holder = measured(under, "holder");
  const through = holder.holes.filter(({ tapped, reason }) => tapped === undefined && reason === undefined);
  const bolts = through.length;
  const boltX = through[0]!.from[0];
  const frontMm = bar.maxX - boltX;
  const backMm = boltX - (bar.minX + places.heelMm / 2);
  const ws = through.map(({ from }) => from[2]).sort((a, b) => a - b);
  const pitchMm = ws[1]! - ws[0]!;
  const shareMm = places.inside ? Math.max(pitchMm, bar.longMm / bolts) : loads.longestPartMm / 2;
  const pullN = (loads.clampNPerMm.value * shareMm * (frontMm + backMm)) / backMm;
  const targetN = requirements.safety.bolt * pullN;
  const mostN = targetN * (1 + TORQUE_SCATTER);
  return {
    bolts,
    frontMm,
    backMm,
    shareMm,
    pullN,
    targetN,
    mostN,
    noseNPerMm: (mostN * backMm) / (frontMm + backMm) / shareMm,
  };
}

/** Torque for the hold-down nuts, N·m. */
export function nutTorqueNm(under: UnderLoad): number {
  return tighteningTorque(under.sizes.bolt, clampForces(under).targetN);
}
