/**
 * The brake: bed, leaf, clamp and frame as outlines. Bed, leaf (at rest) and frame are in the section frame,
 * the clamp is in nose coordinates: underside on y = 0, foremost point of the rounded nose at x = 0.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Deg, Mm, Mpa } from "../units/quantity.ts";

export interface Clamp {
  readonly kind: "finger" | "bar" | "profile";
  /** Radius of the nose, over its shim where it has one. */
  readonly noseRadiusMm: Mm;
  /** From where the underside ends to the foremost point: the nose radius, but on a free profile. */
  readonly noseRunMm: Mm;
  /** Sheet folded over the nose: the body stands this much higher and farther back than the foremost point. */
  readonly shimMm?: Mm;
  /** Slope of the front face over the underside: 90 is square. Absent on a free profile. */
  readonly noseAngleDeg?: Deg;
  readonly outlines: readonly Outline[];
  /** Of a free profile: what of the file was not taken as it stands there. */
  readonly asDrawn?: AsDrawn;
}

export interface AsDrawn {
  /** The nose's corner is rounded in the profile: that is taken, whatever `noseRadius` says. */
  readonly ownRounding: boolean;
  /** The radius that the file gives, where the profile's own contradicts it. */
  readonly givenRadiusMm?: Mm;
  /** Where along x the foremost point was drawn, where that is not 0: the whole clamp was moved back by it. */
  readonly foremostMm?: Mm;
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

/** A piece of the frame that stands along a stretch of the brake only, from the left end of bed and leaf. */
export interface Stretch {
  readonly outline: Outline;
  readonly name: string;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** How far off the brake's figures may be, either way; what is absent nobody doubts. */
export interface BrakeDoubts {
  /** Of every leaf angle, also of one that is given; absent: the range of a reckoned springback. */
  readonly overbendDeg?: Deg;
  readonly noseSetbackMm?: Mm;
  /** The clamp with its nose from so much sharper to so much rounder, in even steps; as said in the middle. */
  readonly noseRadius?: { readonly mm: Mm; readonly clamps: readonly Clamp[] };
}

export interface Brake {
  readonly name: string;
  readonly clamp: Clamp;
  readonly bed: Outline;
  readonly leaf: Leaf;
  readonly frame: readonly Outline[];
  /** What the job calls each piece of the frame; undefined for one without a name. */
  readonly frameNames?: readonly (string | undefined)[];
  /** Not among `frame`: what stands along a stretch only. */
  readonly stretches?: readonly Stretch[];
  /** Length of bed and leaf, where stretches are told along it. */
  readonly lengthMm?: Mm;
  readonly liftMm: Mm;
  readonly openEnds: boolean;
  /** "auto" sets the nose for each bend, "one" keeps the largest of these for all, a length is what the nose stands at. */
  readonly noseSetback: "auto" | "one" | Mm;
  readonly rating?: Rating;
  readonly doubts?: BrakeDoubts;
  /** Least sheet under the clamp and on the leaf that a bend is begun with; absent: common practice (motion/holds.ts). */
  readonly leastGripMm?: Mm;
  readonly leastFlangeMm?: Mm;
  /** Day on which its figures were measured, as year-month-day; absent where nobody says that they were. */
  readonly measuredOn?: string;
}
