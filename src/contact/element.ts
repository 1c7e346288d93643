/**
 * What the checks lay out of the sheet at a time: element k of one side, a joint and the flat after it, and how.
 */
import type { Mm } from "../units/quantity.ts";
import { FACE_INSET_MM } from "./gaps.ts";

export type Side = "moving" | "clamped";

/** What of an element is wanted: its joint (formed, or the flat strip in its place), its flat. */
export const JOINT = 1;
export const FLAT = 2;
export const WHOLE = JOINT | FLAT;

/** Element k of a side, joint and flat k, with the joints in `formed` made (joint 0 in bit 0). */
export interface Element {
  readonly side: Side;
  readonly k: number;
  readonly formed: number;
}

/**
 * How an element is laid out. `parts` picks joint and flat; `openCorners` adds the corners where a picked part borders on
 * one that is left out, so that a part measured alone is closed.
 */
export interface Look {
  readonly parts: number;
  readonly insetMm: Mm;
  readonly openCorners: boolean;
}

/** As contact and loading look: faces drawn in, corners left to the neighbours. */
export const FOR_CONTACT: Look = { parts: WHOLE, insetMm: FACE_INSET_MM, openCorners: false };

/** Where the moving side lies: with the leaf at rest, where a bend begun before was left, or relaxed from the finished bend. */
export type Pose = "rest" | "begun" | "finished";
