/**
 * A closed outline of straight edges and circular arcs, run counter-clockwise: the material lies to the left.
 * An arc with a positive sweep bulges outward (convex corner), one with a negative sweep is hollow.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import type { Point } from "./point.ts";

export interface LineEdge {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
}

export interface ArcEdge {
  readonly kind: "arc";
  readonly from: Point;
  readonly to: Point;
  readonly center: Point;
  readonly radius: Mm;
  /** Direction from the centre to `from`, measured counter-clockwise from +x. */
  readonly startRad: Rad;
  /** Signed angle run through, counter-clockwise positive. */
  readonly sweepRad: Rad;
}

export type Edge = LineEdge | ArcEdge;

export interface Outline {
  readonly edges: readonly Edge[];
}
