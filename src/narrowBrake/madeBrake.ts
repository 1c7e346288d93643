/**
 * The made brake as the brake of a job file (lengths in mm), so that parts can be checked on it again.
 * The file's own keys; measured sizes may replace the planned ones before it is written.
 * Exact: the outlines are those of the planned sections, sharp cornered.
 */
import type { Deg, Mm } from "../units/quantity.ts";
import { envelope } from "./memberPlan.ts";
import type { NarrowBrake, NarrowBrakePlan } from "./narrowBrake.ts";
import type { Shape } from "./strength/section.ts";

export type ProfilePoint = readonly [x: Mm, y: Mm];

export interface MadeBrake {
  readonly name: string;
  readonly clamp: {
    readonly type: "bar";
    readonly noseRadius: Mm;
    readonly noseAngle: number;
    readonly thickness: Mm;
    readonly depth: Mm;
    readonly holderBack: Mm;
    readonly holderHeight: Mm;
    readonly holderDepth: Mm;
  };
  readonly bed: { readonly profile: readonly ProfilePoint[] };
  readonly leaf: { readonly profile: readonly ProfilePoint[]; readonly swing: number };
  readonly lift: Mm;
  readonly openEnds: false;
  readonly setback: "auto";
}

/** How far a leaf on these hinges can swing: square to the bed and half a right angle more. */
const SWING_DEG = 135;

/** What is measured on the brake once it is made; what is left out is taken as planned. */
export interface AsBuilt {
  readonly barThicknessMm?: Mm;
  readonly barDepthMm?: Mm;
  readonly noseRadiusMm?: Mm;
  /** Between underside and front: 90 is square. */
  readonly noseAngleDeg?: Deg;
  readonly overhangMm?: Mm;
  readonly leafFaceMm?: Mm;
  readonly liftMm?: Mm;
  readonly swingDeg?: Deg;
}

/**
 * The brake as it will be, or as it was built where sizes were measured.
 * @throws RangeError where there is no plan
 */
export function madeBrake(brake: NarrowBrake, built: AsBuilt = {}): MadeBrake {
  const { plan, requirements } = brake;
  if (plan === null) throw new RangeError("there is no plan to make a brake from");
  const { bar, holder } = plan;
  const holderBox = envelope(holder.shape);
  return {
    name: "shop-made narrow brake",
    clamp: {
      type: "bar",
      noseRadius: built.noseRadiusMm ?? bar.noseRadiusMm,
      noseAngle: built.noseAngleDeg ?? 90 - bar.frontBevelDeg,
      thickness: built.barThicknessMm ?? bar.thicknessMm,
      depth: built.barDepthMm ?? bar.depthMm,
      holderBack: built.overhangMm ?? bar.overhangMm,
      holderHeight: holderBox.heightMm,
      holderDepth: holderBox.widthMm,
    },
    bed: { profile: bedProfile(plan.bed.shape) },
    leaf: { profile: leafProfile(plan, built.leafFaceMm), swing: built.swingDeg ?? SWING_DEG },
    lift: built.liftMm ?? requirements.liftMm,
    openEnds: false,
    setback: "auto",
  };
}

/** Bed in the section frame: top at y = 0, front at x = 0; an angle has its standing leg in front. */
export function bedProfile(shape: Shape): ProfilePoint[] {
  const { widthMm: w, heightMm: h } = envelope(shape);
  if (shape.kind !== "angle") {
    return [
      [0, 0],
      [-w, 0],
      [-w, -h],
      [0, -h],
    ];
  }
  const t = shape.thicknessMm;
  return [
    [0, 0],
    [-w, 0],
    [-w, -t],
    [-t, -t],
    [-t, -h],
    [0, -h],
  ];
}

/** Leaf at rest: face at y = 0 from the pivot out, standing leg at the pivot. */
export function leafProfile({ leaf }: NarrowBrakePlan, measuredFaceMm?: Mm): ProfilePoint[] {
  const w = measuredFaceMm ?? leaf.faceMm;
  const { standingMm: h, thicknessMm: t } = leaf;
  if (leaf.shape.kind !== "angle") {
    return [
      [0, 0],
      [0, -h],
      [w, -h],
      [w, 0],
    ];
  }
  return [
    [0, 0],
    [0, -h],
    [t, -h],
    [t, -t],
    [w, -t],
    [w, 0],
  ];
}
