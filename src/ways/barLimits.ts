/**
 * A clamp bar for parts that it must all make: thickest that clears, least overhang in front of its holder, longest
 * leaf face, highest leaf, least lift. Each is closed in on with the engine, one after the other, the others kept generous or as found.
 * Bound: limits to 0.005 mm; a bar passes at every thickness tried from the thinnest up, 1 mm apart and less.
 */

import type { LengthUnit } from "../units/length.ts";
import { MM_PER_INCH } from "../units/length.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { THICKEST_MM } from "../words/windowWords.ts";
import { largestPassing, smallestPassing } from "./limit.ts";

/** A shop-made bar brake by the figures that clearance depends on. */
export interface BarTrial {
  readonly thicknessMm: Mm;
  /** Front of the holder behind the nose; null without a holder. */
  readonly overhangMm: Mm | null;
  /** From the holder's front back; left out where its members say. */
  readonly holderDepthMm?: Mm;
  readonly noseRadiusMm: Mm;
  readonly frontBevelDeg: Deg;
  readonly leafFaceMm: Mm;
  readonly leafHighMm: Mm;
  readonly liftMm: Mm;
}

export interface BarLimits {
  readonly thickestMm: Mm;
  readonly overhangMm: Mm;
  /** Null where even the deepest tried clears. */
  readonly holderDepthMaxMm: Mm | null;
  /** Null where even the longest face tried clears. */
  readonly leafFaceMaxMm: Mm | null;
  /** Null where even the highest leaf tried clears. */
  readonly leafHighMaxMm: Mm | null;
  readonly liftMm: Mm;
}

/** Thinnest bar that anybody would take. */
const THINNEST_MM: Mm = 1.5;
const SHORT_LEAF_MM: Mm = 8;
const LONG_LEAF_MM: Mm = 60;
const LOW_LEAF_MM: Mm = 10;
const HIGH_LEAF_MM: Mm = 305;
const SHALLOW_HOLDER_MM: Mm = 20;
const DEEP_HOLDER_MM: Mm = 300;
const MOST_OVERHANG_MM: Mm = 120;
const LEAST_OVERHANG_MM: Mm = 6;
const MOST_LIFT_MM: Mm = 120;
/** Room for the sheet and a finger's push; each turn of a nut gives a pitch of it. */
const LEAST_LIFT_MM: Mm = 4;
const TOLERANCE_MM: Mm = 0.005;
/** Near enough for figures that are rounded up by more than this. */
const ROUGH_MM: Mm = 0.2;
/** Beyond what just clears. */
const SPARE_MM: Mm = 0.5;

/** The thinnest bar, held by nothing, open wide, with a short leaf: what does not fold on it folds on no bar. */
export function thinnestBar(nose: Pick<BarTrial, "noseRadiusMm" | "frontBevelDeg">): BarTrial {
  return {
    ...nose,
    // The rounding ends on the front at R·(1 + sin γ).
    thicknessMm: Math.max(THINNEST_MM, 1.1 * nose.noseRadiusMm * (1 + Math.sin(toRad(nose.frontBevelDeg)))),
    overhangMm: null,
    leafFaceMm: SHORT_LEAF_MM,
    leafHighMm: LOW_LEAF_MM,
    liftMm: MOST_LIFT_MM,
  };
}

/**
 * Limits of a bar, or undefined where no bar makes all the parts.
 * `makes` says whether every part folds on the brake with this bar, in some order.
 */
export function barLimits(
  nose: Pick<BarTrial, "noseRadiusMm" | "frontBevelDeg">,
  makes: (bar: BarTrial) => boolean,
  units: LengthUnit,
): BarLimits | undefined {
  const free = thinnestBar(nose);
  const thinnestMm = free.thicknessMm;
  if (!makes(free)) return undefined;
  const thickest = (bar: BarTrial) =>
    thinnestMm +
    largestPassing({
      passes: (more) => makes({ ...bar, thicknessMm: thinnestMm + more }),
      most: THICKEST_MM - thinnestMm,
      first: 1,
      tolerance: TOLERANCE_MM,
    });
  const thickestFreeMm = thickest(free);
  const overhangMm = leastOverhang({ ...free, thicknessMm: thickestFreeMm }, makes, units);
  if (overhangMm === undefined) return undefined;
  const held = { ...free, overhangMm };
  // A thinner bar brings the holder lower: it may be in the way of what a thicker one lets pass.
  if (!makes(held)) return undefined;
  const asThick = { ...held, thicknessMm: thickestFreeMm };
  const bar = makes(asThick) ? asThick : { ...held, thicknessMm: thickest(held) };
  const holderDepthMm =
    SHALLOW_HOLDER_MM +
    largestPassing({
      passes: (more) => makes({ ...bar, holderDepthMm: SHALLOW_HOLDER_MM + more }),
      most: DEEP_HOLDER_MM - SHALLOW_HOLDER_MM,
      first: 40,
      tolerance: ROUGH_MM,
    });
  const holderDepthMaxMm = holderDepthMm < DEEP_HOLDER_MM ? holderDepthMm - SPARE_MM : null;
  const leafFaceMm =
    SHORT_LEAF_MM +
    largestPassing({
      passes: (more) => makes({ ...bar, leafFaceMm: SHORT_LEAF_MM + more }),
      most: LONG_LEAF_MM - SHORT_LEAF_MM,
      first: 13,
      tolerance: TOLERANCE_MM,
    });
  const leafFaceMaxMm = leafFaceMm < LONG_LEAF_MM ? Math.max(SHORT_LEAF_MM, leafFaceMm - SPARE_MM) : null;
  const wide = { ...bar, leafFaceMm: leafFaceMaxMm ?? LONG_LEAF_MM };
  const leafHighMm =
    LOW_LEAF_MM +
    largestPassing({
      passes: (more) => makes({ ...wide, leafHighMm: LOW_LEAF_MM + more }),
      most: HIGH_LEAF_MM - LOW_LEAF_MM,
      first: 40,
      tolerance: ROUGH_MM,
    });
  const leafHighMaxMm = leafHighMm < HIGH_LEAF_MM ? Math.max(LOW_LEAF_MM, leafHighMm - SPARE_MM) : null;
  const whole = { ...wide, leafHighMm: leafHighMaxMm ?? HIGH_LEAF_MM };
  return {
    thickestMm: bar.thicknessMm,
    overhangMm,
    holderDepthMaxMm,
    leafFaceMaxMm,
    leafHighMaxMm,
    liftMm: leastLift(whole, makes, units),
  };
}

function leastOverhang(bar: BarTrial, makes: (bar: BarTrial) => boolean, units: LengthUnit): Mm | undefined {
  const passes = (overhangMm: Mm) => makes({ ...bar, overhangMm });
  if (passes(LEAST_OVERHANG_MM)) return roundUp(LEAST_OVERHANG_MM, units);
  const more = smallestPassing({
    passes: (amount) => passes(LEAST_OVERHANG_MM + amount),
    most: MOST_OVERHANG_MM - LEAST_OVERHANG_MM,
    first: 2,
    step: 0.05,
    tolerance: ROUGH_MM,
    monotone: true,
  });
  return more === undefined ? undefined : roundUp(LEAST_OVERHANG_MM + more + SPARE_MM, units);
}

function leastLift(bar: BarTrial, makes: (bar: BarTrial) => boolean, units: LengthUnit): Mm {
  const passes = (liftMm: Mm) => makes({ ...bar, liftMm });
  if (passes(LEAST_LIFT_MM)) return roundUp(LEAST_LIFT_MM, units);
  const more = smallestPassing({
    passes: (amount) => passes(LEAST_LIFT_MM + amount),
    most: MOST_LIFT_MM - LEAST_LIFT_MM,
    first: 2,
    step: 0.05,
    tolerance: ROUGH_MM,
    monotone: true,
  });
  return roundUp(LEAST_LIFT_MM + (more ?? MOST_LIFT_MM - LEAST_LIFT_MM) + SPARE_MM, units);
}

/** To the next 1/16 in or whole millimetre. */
function roundUp(lengthMm: Mm, units: LengthUnit): Mm {
  const grain = units === "in" ? MM_PER_INCH / 16 : 1;
  return Math.ceil(lengthMm / grain - 1e-9) * grain;
}
