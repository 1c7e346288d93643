/**
 * A bar brake to try parts on before it is designed: bar, holder, bed and leaf as plain outlines in a job file's terms.
 * Holder, bed and leaf stand for their sections by their envelopes, so that what clears them clears the sections too.
 */

import type { JobFile } from "../jobFile/schema.ts";
import { envelope } from "../narrowBrake/memberPlan.ts";
import type { NarrowBrakePlan } from "../narrowBrake/narrowBrake.ts";
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { BarTrial } from "./barLimits.ts";

type BrakeFile = JobFile["brake"];

/** What the bar is held by and folds against, as far as a part may meet it. */
export interface BarMembers {
  readonly holderDepthMm: Mm;
  readonly holderHighMm: Mm;
  readonly bedDepthMm: Mm | null;
  readonly bedHighMm: Mm;
  readonly leafHighMm: Mm;
}

/** As large as any holder of the stock list: what clears it clears the real one. */
export const LARGE_MEMBERS: BarMembers = {
  holderDepthMm: 60,
  holderHighMm: 60,
  bedDepthMm: null,
  bedHighMm: 40,
  leafHighMm: 10,
};

/** As small as any, for parts that leave no room for a large one. */
export const SMALL_MEMBERS: BarMembers = { ...LARGE_MEMBERS, holderDepthMm: 20, holderHighMm: 20 };

const BAR_DEPTH_MM: Mm = 50;
const SWING_DEG = 135;

/** Holder, bed and leaf of a plan. */
export function membersOf({ holder, bed, leaf }: NarrowBrakePlan): BarMembers {
  const [holderBox, bedBox] = [envelope(holder.shape), envelope(bed.shape)];
  return {
    holderDepthMm: holderBox.widthMm,
    holderHighMm: holderBox.heightMm,
    bedDepthMm: bedBox.widthMm,
    bedHighMm: bedBox.heightMm,
    leafHighMm: leaf.standingMm,
  };
}

/** @example sameMembers(LARGE_MEMBERS, SMALL_MEMBERS) // false */
export function sameMembers(a: BarMembers, b: BarMembers): boolean {
  return (Object.keys(a) as (keyof BarMembers)[]).every((key) => a[key] === b[key]);
}

/** The trial bar as a job file of this unit has it. */
export function barTrialBrake(bar: BarTrial, members: BarMembers, units: LengthUnit): BrakeFile {
  // Plain numbers: reading written lengths would take longer than trying them.
  const inUnit = (lengthMm: Mm) => (units === "in" ? lengthMm / MM_PER_INCH : lengthMm);
  const rectangle = (fromX: Mm, toX: Mm, highMm: Mm): BrakeFile["bed"]["profile"] => [
    [inUnit(fromX), inUnit(-highMm)],
    [inUnit(toX), inUnit(-highMm)],
    [inUnit(toX), 0],
    [inUnit(fromX), 0],
  ];
  const { overhangMm } = bar;
  const depthMm = overhangMm === null ? BAR_DEPTH_MM : overhangMm + members.holderDepthMm;
  const holder = overhangMm !== null && {
    holderBack: inUnit(overhangMm),
    holderHeight: inUnit(members.holderHighMm),
    holderDepth: inUnit(members.holderDepthMm),
  };
  return {
    name: "clamp bar to be made",
    clamp: {
      type: "bar",
      thickness: inUnit(bar.thicknessMm),
      depth: inUnit(depthMm),
      noseRadius: inUnit(bar.noseRadiusMm),
      noseAngle: 90 - bar.frontBevelDeg,
      ...holder,
    },
    bed: { profile: rectangle(-(members.bedDepthMm ?? depthMm), 0, members.bedHighMm) },
    leaf: { profile: rectangle(0, bar.leafFaceMm, members.leafHighMm), swing: SWING_DEG },
    lift: inUnit(bar.liftMm),
    openEnds: false,
  };
}
