/**
 * A hem with one end clamped, for every set of bends done: its first stroke at the least leaf angle that can be flattened, and the
 * flattening. How far beyond that the leaf gets is asked of the order that is shown (contact/overRange).
 */
import { Machine } from "../contact/machine.ts";
import { hemEnd, hemFlattened, hemFolded } from "../motion/hemStrokes.ts";
import { seatFor } from "../motion/seat.ts";
import { LEAST_FOLD_DEG } from "../part/hem.ts";
import type { End, Part } from "../part/part.ts";
import { Seated } from "./seated.ts";

export class HemSeated {
  private readonly strokes: readonly Seated[] | undefined;

  constructor(part: Part, machine: Machine, bend: number, clamped: End) {
    const { brake } = machine;
    const folded = hemFolded(part, brake, bend, LEAST_FOLD_DEG);
    const flat = folded && hemFlattened(part, brake, bend, folded);
    this.strokes = flat?.lifts
      ? [
          new Seated(seatFor(folded!, brake, bend, clamped), machine),
          new Seated(
            seatFor(flat.part, flat.brake, bend, hemEnd(bend)),
            new Machine(flat.brake, flat.underClampMm),
          ),
        ]
      : undefined;
  }

  /** Whether both strokes can be made after the bends in `set`. */
  canMake(set: number): boolean {
    return this.strokes?.every((stroke) => stroke.canMake(set)) ?? false;
  }

  /** The lesser clearance of the two; exact where it is less than `enoughMm`, else that or more. */
  clearanceMm(set: number, enoughMm: number): number {
    return (this.strokes ?? []).reduce(
      (least, stroke) => Math.min(least, stroke.clearanceMm(set, Math.min(least, enoughMm))),
      Infinity,
    );
  }
}
