/**
 * A job as the engine works on it: every length in mm, every bend resolved (radius, overbend, allowance),
 * flats and bends counted from 0. readJob.ts makes it from the file; check.ts answers it.
 */
import type { Brake } from "../brake/brake.ts";
import type { End, Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

export interface OrderStep {
  /** Bend, counted from 0. */
  readonly bend: number;
  readonly clamped: End;
}

export interface Job {
  readonly units: "mm" | "in";
  readonly part: Part;
  readonly brake: Brake;
  readonly order?: readonly OrderStep[];
  /** Clearance under which a bend is `tight`. */
  readonly marginMm: Mm;
  /** Inside radius that the file asked for, per bend; it differs from the formed one where the setback is given. */
  readonly askedInsideRadiiMm: readonly Mm[];
}
