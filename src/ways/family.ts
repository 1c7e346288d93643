/**
 * Families of changes that differ in size only: a flat trimmed by more and more, a clamp opened wider and wider.
 * Each knows how far it is worth going and how its sizes are rounded for the shop, always on the safe side.
 * Bounds of what is worth going for are common practice, no source.
 */

import type { Brake } from "../brake/brake.ts";
import { leastInsideRadius } from "../brake/nosePinch.ts";
import { automaticNoseSetback } from "../brake/noseSetback.ts";
import type { Change, Trial } from "../jobFile/change.ts";
import type { FamilyKind } from "../jobFile/way.ts";
import type { Part } from "../part/part.ts";
import { boxOf } from "../plane/bounding.ts";
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { meetsItself } from "./meetsItself.ts";
import { isMirrored, twinOf } from "./mirrorTwin.ts";

export interface Family {
  readonly kind: FamilyKind;
  readonly measure: "mm" | "deg";
  /** The figure that is changed as it is now, and whether it grows or shrinks. */
  readonly base: number;
  readonly sign: 1 | -1;
  readonly most: number;
  readonly monotone?: boolean;
  readonly changes: (to: number) => readonly Change[];
  /** Flat or bend, counted from 1. */
  readonly index?: number;
  /** Of a pair: the other flat. */
  readonly also?: number;
  /** Its twin in a part that reads the same from both ends: what holds for one holds for the other. */
  readonly twin?: number;
  /** What the figure is rounded to, where that is no matter of the user's unit. */
  readonly grain?: number;
}

/** What the job file says of the clamp and the outlines of the engine no longer do. */
export interface ClampMeasures {
  readonly type: "finger" | "bar" | "profile";
  readonly noseAngleDeg: Deg;
  readonly topRadiusMm: Mm;
  /** Thickness of a bar, height of a finger. */
  readonly heightMm: Mm;
}

/** Steps by which a limit is proved, and to which the closing in goes. */
export const STEP: Readonly<Record<Family["measure"], number>> = { mm: 0.05, deg: 0.25 };
export const TOLERANCE: Readonly<Record<Family["measure"], number>> = { mm: 0.005, deg: 0.02 };
export const FIRST: Readonly<Record<Family["measure"], number>> = { mm: 0.5, deg: 1 };

export const LEAST_FLAT_MM: Mm = 2;
export const MOST_WIDER_MM: Mm = 40;
const HIGHEST_LIFT_MM: Mm = 150;
/** No hinge lets a leaf swing farther. */
const FARTHEST_SWING_DEG: Deg = 170;
const MOST_SETBACK_MM: Mm = 5;
const FLATTEST_NOSE_DEG: Deg = 25;
/** What stands up steeper than this is relieved at 45°; what leans back already by this much more. */
const STEEP_DEG: Deg = 60;
const RELIEF_MORE_DEG: Deg = 15;
const THINNEST_BAR_MM: Mm = 2;
export const SHORTEST_LEAF_MM: Mm = 6;
const LARGEST_TOP_RADIUS_MM: Mm = 6;
/** A bend left farther open than this is not closed by hand any more. */
const MOST_OPEN = 0.7;

/** All bends together are closed by hand only where little is left of each. */
const MOST_ALL_OPEN = 0.15;

/** All families that this trial offers. */
export function familiesOf(trial: Trial, clamp: ClampMeasures): Family[] {
  return [...settings(trial), ...bendsLeftOpen(trial), ...flatsOf(trial), ...cuts(trial, clamp)];
}

function settings({ part, brake }: Trial): Family[] {
  const lift: Family = {
    kind: "lift",
    measure: "mm",
    base: brake.liftMm,
    sign: 1,
    most: HIGHEST_LIFT_MM - brake.liftMm,
    monotone: true,
    changes: (toMm) => [{ kind: "lift", toMm }],
  };
  const swing: Family = {
    kind: "swing",
    measure: "deg",
    base: brake.leaf.swingDeg,
    sign: 1,
    most: FARTHEST_SWING_DEG - brake.leaf.swingDeg,
    monotone: true,
    changes: (toDeg) => [{ kind: "swing", toDeg }],
  };
  const given = typeof brake.noseSetback === "number" ? brake.noseSetback : undefined;
  // Set by itself, the nose may still be screwed back from where it stands at most.
  const base = given ?? Math.max(...part.bends.map(({ noseSetbackMm }) => noseSetbackMm));
  const noseSetback = (sign: 1 | -1, most: Mm): Family => ({
    kind: "setback",
    measure: "mm",
    base,
    sign,
    most,
    changes: (toMm) => [{ kind: "setback", toMm }],
  });
  const back = noseSetback(1, MOST_SETBACK_MM);
  if (given === undefined) return [lift, swing, back];
  return [lift, swing, back, noseSetback(-1, base - leastSetback(part, brake))];
}

/** Farther forward than this the nose pinches some bend. */
function leastSetback({ bends, thicknessMm }: Part, { clamp, leaf }: Brake): Mm {
  const { noseRunMm } = clamp;
  const leasts = bends.map(({ overbendDeg }) =>
    automaticNoseSetback({
      insideRadiusMm: leastInsideRadius(clamp, overbendDeg),
      noseRunMm,
      thicknessMm,
      overbendDeg,
      pivot: leaf.pivot,
    }),
  );
  return Math.max(...leasts);
}

function bendsLeftOpen(trial: Trial): Family[] {
  const { part } = trial;
  if (meetsItself(trial)) return [];
  const families = part.bends.flatMap(({ angleDeg, overbendDeg, hem }, i): Family[] => {
    if (hem) return [];
    return [
      {
        kind: "leaveOpen",
        measure: "deg",
        base: angleDeg,
        sign: -1,
        most: MOST_OPEN * angleDeg,
        changes: (toDeg) => [{ kind: "angle", bend: i + 1, toDeg }],
        index: i + 1,
        // Whole degrees of the leaf, which is what the person reads.
        grain: angleDeg / overbendDeg,
      },
    ];
  });
  return [...firstOfTwins(part, families, part.bends.length), ...allLeftOpen(part)];
}

/** Every bend left open by the same part of its angle: a little each, where one alone would be left open by much. */
function allLeftOpen({ bends }: Part): Family[] {
  if (bends.length < 2 || bends.some(({ hem }) => hem)) return [];
  const widest = Math.max(...bends.map(({ angleDeg }) => angleDeg));
  return [
    {
      kind: "leaveAllOpen",
      measure: "deg",
      base: 0,
      sign: 1,
      most: MOST_ALL_OPEN * widest,
      changes: (byDeg) =>
        bends.map(({ angleDeg }, i) => ({
          kind: "angle",
          bend: i + 1,
          toDeg: angleDeg * (1 - byDeg / widest),
        })),
    },
  ];
}

/** Each flat trimmed or made longer. */
export function flatsOf({ part }: Trial): Family[] {
  const least = Math.max(LEAST_FLAT_MM, 2 * part.thicknessMm);
  const families = part.flatsMm.flatMap((lengthMm, i): Family[] => {
    const shared = { measure: "mm", base: 0, index: i + 1 } as const;
    return [
      {
        ...shared,
        kind: "trimFlat",
        sign: -1,
        most: lengthMm - least,
        changes: (byMm) => [{ kind: "flat", flat: i + 1, byMm }],
      },
      {
        ...shared,
        kind: "widenFlat",
        sign: 1,
        most: MOST_WIDER_MM,
        changes: (byMm) => [{ kind: "flat", flat: i + 1, byMm }],
      },
    ];
  });
  return firstOfTwins(part, families, part.flatsMm.length);
}

/** In a part that reads the same from both ends one of two twins says it all. */
function firstOfTwins(part: Part, families: readonly Family[], count: number): Family[] {
  if (!isMirrored(part)) return [...families];
  return families.flatMap((family) => {
    const twin = twinOf(family.index ?? 0, count);
    if (twin === undefined) return [family];
    return twin < (family.index ?? 0) ? [] : [{ ...family, twin }];
  });
}

function cuts({ brake }: Trial, clamp: ClampMeasures): Family[] {
  const leafMm = boxOf(brake.leaf.outline).maxX;
  const leafFace: Family = {
    kind: "leafFace",
    measure: "mm",
    base: leafMm,
    sign: -1,
    most: leafMm - SHORTEST_LEAF_MM,
    changes: (toMm) => [{ kind: "leafFace", toMm }],
  };
  if (clamp.type === "profile") return [leafFace];
  const top: Family = {
    kind: "topRadius",
    measure: "mm",
    base: clamp.topRadiusMm,
    sign: 1,
    most: Math.min(LARGEST_TOP_RADIUS_MM, clamp.heightMm) - clamp.topRadiusMm,
    changes: (toMm) => [{ kind: "topRadius", toMm }],
  };
  const nose: Family = {
    kind: "noseAngle",
    measure: "deg",
    base: clamp.noseAngleDeg,
    sign: -1,
    most: clamp.noseAngleDeg - FLATTEST_NOSE_DEG,
    changes: (toDeg) => [{ kind: "noseAngle", toDeg }],
  };
  const reliefDeg =
    clamp.noseAngleDeg > STEEP_DEG ? 45 : Math.max(FLATTEST_NOSE_DEG, clamp.noseAngleDeg - RELIEF_MORE_DEG);
  const relief: Family = {
    kind: "relief",
    measure: "mm",
    base: clamp.heightMm,
    sign: -1,
    most: clamp.heightMm - 2 * brake.clamp.noseRadiusMm,
    changes: (fromMm) => [{ kind: "relief", fromMm, toDeg: reliefDeg }],
  };
  if (clamp.type === "finger") return [top, nose, relief, leafFace];
  const thinner: Family = {
    kind: "thinnerBar",
    measure: "mm",
    base: clamp.heightMm,
    sign: -1,
    most: clamp.heightMm - THINNEST_BAR_MM,
    changes: (toMm) => [{ kind: "thickness", toMm }],
  };
  return [top, nose, relief, thinner, leafFace];
}

/** Inch shops mark 64ths, metric ones half millimetres; angles are read in half degrees. */
export function grainOf(family: Family, units: LengthUnit): number {
  if (family.grain !== undefined) return family.grain;
  if (family.measure === "deg") return 0.5;
  return units === "in" ? MM_PER_INCH / 64 : 0.5;
}

/**
 * The figure at a size of change, and the shop's figures next to it on the safe side, roundest first.
 * @example safeFigures({ base: 20, sign: -1 }, 3.3, 0.5) // [16.5, 16]
 */
export function safeFigures(
  { base, sign }: Pick<Family, "base" | "sign">,
  size: number,
  grain: number,
): number[] {
  const exact = (base + sign * size) / grain;
  const whole = sign > 0 ? Math.ceil(exact - 1e-9) : Math.floor(exact + 1e-9);
  return [whole * grain, (whole + sign) * grain];
}
