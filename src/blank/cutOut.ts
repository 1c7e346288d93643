/**
 * A rectangle cut out of the flat blank, its sides along and across the bend lines. Places are measured as the blank's
 * lines are: across the bends from the free end of flat 1, along them from the blank's start. Exact.
 */
import type { Mm } from "../units/quantity.ts";

/** From and to, the smaller first. */
export type Span = readonly [from: Mm, to: Mm];

export interface CutOut {
  /** Across the bend lines, from the datum edge: the free end of flat 1. */
  readonly acrossMm: Span;
  /** Along the bend lines, from the blank's start. */
  readonly alongMm: Span;
}

/** Sizes that differ by less are the same: what is left of inches after their rounding to mm. */
const SAME_MM: Mm = 1e-6;

/**
 * Whether two cut-outs take away the same metal somewhere; touching along an edge or at a corner is no overlap.
 * @example overlap({ acrossMm: [0, 10], alongMm: [0, 5] }, { acrossMm: [10, 20], alongMm: [0, 5] }) // false
 */
export function overlap(one: CutOut, other: CutOut): boolean {
  return shareRun(one.acrossMm, other.acrossMm) && shareRun(one.alongMm, other.alongMm);
}

/** Whether two spans share more than a point. @example shareRun([0, 10], [10, 20]) // false */
function shareRun(one: Span, other: Span): boolean {
  return Math.min(one[1], other[1]) - Math.max(one[0], other[0]) > SAME_MM;
}
