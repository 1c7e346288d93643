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
 * How deep the swinging leaf may go into bed and clamp and still only touch. In nearly every brake the leaf's corner lies
 * on the bed's at rest, and turning about a pivot a little off it the two pass each other with nothing between.
 */
export const LEAF_PLAY_MM: Mm = 0.001;
