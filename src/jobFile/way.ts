/**
 * A way out: changes to a job, how it comes out with them, and the limit that was found. Proved, never guessed.
 */
import type { Mm } from "../units/quantity.ts";
import type { Change, OrderedBend } from "./change.ts";

/** Families of changes that differ in size only (ways/family.ts). */
export type FamilyKind =
  | "lift"
  | "swing"
  | "setback"
  | "leaveOpen"
  | "leaveAllOpen"
  | "twoFlats"
  | "flatAndLeaf"
  | "trimFlat"
  | "widenFlat"
  | "topRadius"
  | "noseAngle"
  | "relief"
  | "thinnerBar"
  | "leafFace";

export type WayKind = FamilyKind | "side" | "order" | "partWay" | "openEnds" | "automaticSetback";

/** Where a family of changes begins to pass. */
export interface Limit {
  /** The figure itself: a length in mm, an angle in degrees; of a flat, by how much. */
  readonly figure: number;
  /** Changes that just pass. */
  readonly changes: readonly Change[];
  /** One step smaller (0.05 mm or 0.25°): does not pass. Null where that is no change at all. */
  readonly oneStepLess: readonly Change[] | null;
}

export interface Way {
  readonly kind: WayKind;
  /** Flat or bend, counted from 1. */
  readonly index?: number;
  /** The flat or bend that may be changed in its place, in a part that reads the same from both ends. */
  readonly twin?: number;
  /** Of two flats changed together: the other one. */
  readonly also?: number;
  readonly changes: readonly Change[];
  /** The figure as it is, and as it should be. */
  readonly from?: number;
  readonly to?: number;
  /** Of a bend made in two strokes: the least angle at which it may be left; `limit` has the largest. */
  readonly notUnder?: number;
  /** Where `to` is tight: the next round figure from which the job is clear, if it is near. */
  readonly clearFrom?: number;
  readonly limit?: Limit;
  /** True where it is not proved that one step less fails in every order: less may do in another one. */
  readonly thisOrderOnly?: true;
  readonly verdict: "clear" | "tight";
  readonly clearanceMm: Mm | null;
  readonly order: readonly OrderedBend[];
  /** How much it costs the user: ways are ranked by it. */
  readonly cost: number;
}
