/**
 * The brake: bed, leaf, clamp and frame as outlines. Bed, leaf (at rest) and frame are in the section frame,
 * the clamp is in nose coordinates: underside on y = 0, foremost point of the rounded nose at x = 0.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Deg, Mm, Mpa } from "../units/quantity.ts";

export interface Clamp {
  readonly kind: "finger" | "bar" | "profile";
  readonly noseRadiusMm: Mm;
  /** Slope of the front face over the underside: 90 is square. Absent on a free profile. */
  readonly noseAngleDeg?: Deg;
  readonly outlines: readonly Outline[];
}

export interface Leaf {
  readonly outline: Outline;
  readonly swingDeg: Deg;
  readonly pivot: Point;
}

export interface Rating {
  readonly thicknessMm: Mm;
  readonly lengthMm: Mm;
  readonly yieldMpa: Mpa;
}

export interface Brake {
  readonly name: string;
  readonly clamp: Clamp;
  readonly bed: Outline;
  readonly leaf: Leaf;
  readonly frame: readonly Outline[];
  /** What the job calls each piece of the frame; undefined for one without a name. */
  readonly frameNames?: readonly (string | undefined)[];
  readonly liftMm: Mm;
  readonly openEnds: boolean;
  readonly noseSetback: "auto" | Mm;
  readonly rating?: Rating;
}
