/**
 * The pattern: the flat blank of a whole part, seen with the marked face up, in developed size. One outline, holes, and
 * bends as straight lines; a bend's line is the middle of its allowance strip. Everything in mm, bends count from 0.
 */
import type { Bend } from "../part/part.ts";
import type { Corner } from "../plane/fillet.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

/** A bend of the part with the line that it is made on. It turns up where the marked face comes to lie inside. */
export interface LineBend extends Bend {
  readonly from: Point;
  readonly to: Point;
}

export interface Pattern {
  readonly thicknessMm: Mm;
  /** Closed polygons; a corner may carry a radius. */
  readonly outline: readonly Corner[];
  readonly holes: readonly (readonly Corner[])[];
  readonly bends: readonly LineBend[];
}

/** Why a pattern is no part; bends and holes count from 0, places are of the blank. */
export type PatternFault =
  | { readonly kind: "shape"; readonly hole?: number; readonly why: string }
  | { readonly kind: "holeOutside"; readonly hole: number; readonly at: Point }
  | { readonly kind: "holesMeet"; readonly hole: number; readonly other: number; readonly at: Point }
  /** The line lies beside all sheet. */
  | { readonly kind: "noSheet"; readonly bend: number; readonly at: Point }
  /** The line ends `byMm` before the edge of the sheet. */
  | { readonly kind: "short"; readonly bend: number; readonly at: Point; readonly byMm: Mm }
  /** A cut beside the bend ends inside its strip. */
  | { readonly kind: "openCut"; readonly bend: number; readonly at: Point }
  | { readonly kind: "crossing"; readonly bend: number; readonly other: number; readonly at: Point }
  /** No sheet is left on one side of the bend's strip, or between it and another's. */
  | { readonly kind: "nothingLeft"; readonly bend: number; readonly at: Point }
  | { readonly kind: "ring"; readonly bends: readonly number[] };
