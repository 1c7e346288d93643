/**
 * A job as the engine works on it: every length in mm, every bend resolved (radius, overbend, allowance),
 * flats and bends counted from 0. readJob.ts makes it from the file; check.ts answers it.
 */
import type { CutOut } from "../blank/cutOut.ts";
import type { Brake } from "../brake/brake.ts";
import type { OrderStep } from "../motion/stages.ts";
import type { Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { OddFigure } from "./oddFigures.ts";

export type { OrderStep };

/** A bend that the leaf leaves at `toDeg` after springback, to be closed by hand. Bends count from 0. */
export interface HandFinish {
  readonly bend: number;
  readonly toDeg: Deg;
  /** Thickness of what it is closed over. */
  readonly fillerMm?: Mm;
}

export interface Job {
  readonly units: "mm" | "in";
  /** The part as the leaf makes it. */
  readonly part: Part;
  /** The part as it is in the end, where some bend is closed by hand: the file's dimensions and the blank are its. */
  readonly finished?: Part;
  readonly finishByHand?: readonly HandFinish[];
  readonly brake: Brake;
  readonly order?: readonly OrderStep[];
  /** Clearance under which a bend is `tight`. */
  readonly marginMm: Mm;
  /** Inside radius that the file asked for, per bend; it differs from the formed one where the setback is given. */
  readonly askedInsideRadiiMm: readonly Mm[];
  /** Which way the grain runs, from the bend lines: 0 along them, 90 across; absent where the file doesn't say. */
  readonly grainDeg?: Deg;
  /** How far the reading of each flat may be off, either way; absent where the file doesn't say. */
  readonly doubtsMm?: readonly Mm[];
  /** Figures of the file to ask about; absent where there are none. */
  readonly odd?: readonly OddFigure[];
  /** Rectangles cut out of the flat blank. The section, and so the check, is the same with and without them. */
  readonly cutOuts?: readonly CutOut[];
}

/** The part as the file dimensions it, and as the blank is laid out for. */
export function finishedPart({ part, finished }: Pick<Job, "part" | "finished">): Part {
  return finished ?? part;
}
