/**
 * Angles in the words of the shop: as a protractor is read.
 */
import type { Deg } from "../units/quantity.ts";

/** An angle to a tenth of a degree, whole where it is whole. @example angleWords(75.23) // "75.2°" */
export function angleWords(angleDeg: Deg): string {
  return `${Number(angleDeg.toFixed(1))}°`;
}
