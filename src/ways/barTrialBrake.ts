/**
 * A bar brake to try parts on before it is designed: bar, holder, bolts, bed and leaf as plain outlines in a job file's terms.
 * Holder, bed and leaf stand for their sections by their envelopes, so that what clears them clears the sections too.
 */

import type { JobFile } from "../jobFile/schema.ts";
import type { NarrowBrakePlan } from "../narrowBrake/narrowBrake.ts";
import { boxOfShape, pieceOf } from "../narrowBrake/solid.ts";
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
  /** Front of what carries the bed, behind its edge. */
  readonly spineFrontMm: Mm;
  /** From the holder's front back to the bolts; null where they stand beyond the ends of the part. */
  readonly boltsBehindMm: Mm | null;
}

/** As large as any holder of the stock list: what clears it clears the real one. */
export const LARGE_MEMBERS: Omit<BarMembers, "boltsBehindMm"> = {
  holderDepthMm: 60,
  holderHighMm: 60,
  bedDepthMm: null,
  bedHighMm: 40,
  spineFrontMm: 32,
};

/** As small as any, for parts that leave no room for a large one. */
export const SMALL_MEMBERS: typeof LARGE_MEMBERS = {
  ...LARGE_MEMBERS,
  holderDepthMm: 20,
  holderHighMm: 20,
  bedHighMm: 16,
};

/** High and narrow, between bolts beyond the ends: what a box is folded round. */
export const NARROW_MEMBERS: BarMembers = {
  ...SMALL_MEMBERS,
  holderDepthMm: 40,
  holderHighMm: 60,
  boltsBehindMm: null,
};

/** Where the bolts may stand, the nearest first: nearer ones bend the holder less; last, beyond the ends of the part. */
export const BOLT_PLACES: readonly (Mm | null)[] = [16, 40, 65, null];

const BAR_DEPTH_MM: Mm = 50;
const BOLT_MM: Mm = 12;
const SPINE_MM: Mm = 10;
const LEAST_BED_DEPTH_MM: Mm = 80;
/** From the bed's top to the foot of its spine. */
const BED_HIGH_MM: Mm = 110;
const SWING_DEG = 135;

/** Holder, bolts, bed and leaf of a plan. */
export function membersOf({ assembly, places }: NarrowBrakePlan): BarMembers {
  const box = (id: string) => boxOfShape(pieceOf(assembly, id).shape);
  const [holder, cap] = [box("holder"), box("cap")];
  return {
    holderDepthMm: holder.max[0] - holder.min[0],
    holderHighMm: holder.max[1] - holder.min[1],
    bedDepthMm: cap.max[0] - cap.min[0],
    bedHighMm: cap.max[1] - cap.min[1],
    spineFrontMm: -box("spine").max[0],
    boltsBehindMm: places.inside ? holder.max[0] - box("bolt-1").max[0] : null,
  };
}

/** @example sameMembers({ ...LARGE_MEMBERS, boltsBehindMm: 16 }, { ...SMALL_MEMBERS, boltsBehindMm: 16 }) // false */
export function sameMembers(a: BarMembers, b: BarMembers): boolean {
  return (Object.keys(a) as (keyof BarMembers)[]).every((key) => a[key] === b[key]);
}

/** The trial bar as a job file of this unit has it. */
export function barTrialBrake(bar: BarTrial, members: BarMembers, units: LengthUnit): BrakeFile {
  // Plain numbers: reading written lengths would take longer than trying them.
  const inUnit = (lengthMm: Mm) => (units === "in" ? lengthMm / MM_PER_INCH : lengthMm);
  const rectangle = (fromX: Mm, toX: Mm, fromY: Mm, toY: Mm): BrakeFile["bed"]["profile"] => [
    [inUnit(fromX), inUnit(fromY)],
    [inUnit(toX), inUnit(fromY)],
    [inUnit(toX), inUnit(toY)],
    [inUnit(fromX), inUnit(toY)],
  ];
  const { overhangMm } = bar;
  const { boltsBehindMm } = members;
  const holderDepthMm = bar.holderDepthMm ?? members.holderDepthMm;
  const depthMm = overhangMm === null ? BAR_DEPTH_MM : overhangMm + holderDepthMm;
  const { bedHighMm, spineFrontMm } = members;
  const bedDepthMm = members.bedDepthMm ?? Math.max(depthMm, LEAST_BED_DEPTH_MM);
  const holder = overhangMm !== null && {
    holderBack: inUnit(overhangMm),
    holderHeight: inUnit(members.holderHighMm),
    holderDepth: inUnit(holderDepthMm),
  };
  const bolts =
    overhangMm !== null && boltsBehindMm !== null
      ? [
          rectangle(
            -overhangMm - boltsBehindMm - BOLT_MM,
            -overhangMm - boltsBehindMm,
            0,
            members.holderHighMm,
          ),
        ]
      : [];
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
    bed: {
      profile: [
        [0, inUnit(-bedHighMm)],
        [0, 0],
        [inUnit(-bedDepthMm), 0],
        [inUnit(-bedDepthMm), inUnit(-bedHighMm)],
        [inUnit(-spineFrontMm - SPINE_MM), inUnit(-bedHighMm)],
        [inUnit(-spineFrontMm - SPINE_MM), inUnit(-BED_HIGH_MM)],
        [inUnit(-spineFrontMm), inUnit(-BED_HIGH_MM)],
        [inUnit(-spineFrontMm), inUnit(-bedHighMm)],
      ],
    },
    leaf: { profile: rectangle(0, bar.leafFaceMm, -bar.leafHighMm, 0), swing: SWING_DEG },
    ...(bolts.length > 0 && { frame: bolts }),
    lift: inUnit(bar.liftMm),
    openEnds: false,
  };
}
