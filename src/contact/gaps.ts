/**
 * The one distance that contact rests on, named once.
 */
import type { Mm } from "../units/quantity.ts";

/**
 * The sheet's two faces are drawn in by this much before contact is tested, so that what lies flat on bed, leaf or
 * nose touches and does not hit. Free ends are not drawn in, nor bed, leaf and clamp against each other.
 */
export const FACE_INSET_MM: Mm = 0.01;
