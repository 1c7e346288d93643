/**
 * One change to a job, in the job file's own terms but in millimetres and degrees; flats and bends count from 1.
 * What a change does to the figures of a file is said where files are known (job/changeFile.ts).
 */

import type { Brake } from "../brake/brake.ts";
import type { End, Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";

/** One bend of an order, as a job file has it: bends count from 1. */
export interface OrderedBend {
  readonly bend: number;
  readonly clamped: End;
  /** Leaves the bend at this angle, to be finished by a later step. */
  readonly to?: Deg;
}

export type Change =
  /** Makes flat `flat` longer by `byMm`, shorter where that is negative. */
  | { readonly kind: "flat"; readonly flat: number; readonly byMm: Mm }
  /** Leaves bend `bend` at `toDeg` after springback; what is missing is closed by hand, on the same blank. */
  | { readonly kind: "angle"; readonly bend: number; readonly toDeg: Deg }
  | { readonly kind: "lift"; readonly toMm: Mm }
  /** How far the leaf swings. */
  | { readonly kind: "swing"; readonly toDeg: Deg }
  /** Lets the part be slid in and out along the bend line. */
  | { readonly kind: "openEnds" }
  | { readonly kind: "setback"; readonly toMm: Mm | "auto" }
  /** Rounds the top front edge of finger or bar. */
  | { readonly kind: "topRadius"; readonly toMm: Mm }
  | { readonly kind: "noseAngle"; readonly toDeg: Deg }
  /** Grinds the front of finger or bar back from this height over the underside up, to lean at this angle. */
  | { readonly kind: "relief"; readonly fromMm: Mm; readonly toDeg: Deg }
  /** Thickness of the clamp bar. */
  | { readonly kind: "thickness"; readonly toMm: Mm }
  /** How far the leaf's face reaches out from the bed's edge. */
  | { readonly kind: "leafFace"; readonly toMm: Mm }
  /** An order of the user's own; null leaves the choice to the search. */
  | { readonly kind: "order"; readonly order: readonly OrderedBend[] | null };

/** A part on a brake, ready for the engine. */
export interface Trial {
  readonly part: Part;
  readonly brake: Brake;
}

/** The job with some changes made to it; undefined where there can be no such job. */
export type Tryout = (changes: readonly Change[]) => Trial | undefined;
