/**
 * The two distances that contact rests on, each named once.
 */
import type { Mm } from "../units/quantity.ts";

/**
 * The sheet's two faces are drawn in by this much before contact is tested, so that what lies flat on bed, leaf or
 * nose touches and does not hit. Free ends are not drawn in, nor bed, leaf and clamp against each other.
 */
export const FACE_INSET_MM: Mm = 0.01;

/**
 * The swinging leaf is drawn off bed and clamp by this much, outward and down, before the two are tested. In nearly every
 * brake its corner lies on the bed's at rest, and turning about a pivot a little off it they pass with nothing between.
 */
export const LEAF_OFF_MM: Mm = 0.001;

/** Faces that overlap by no more than both insets are in touch for contact, and their clearance is 0. */
export const BOTH_INSETS_MM: Mm = 2 * FACE_INSET_MM;
