/**
 * A job whose part is a whole part, as the engine works on it: lengths in mm, bends and faces counted from 0.
 */
import type { Brake } from "../brake/brake.ts";
import type { Built } from "../pattern/panels.ts";
import type { PlacedFinger } from "../pattern/strokeBodies.ts";
import type { Stroke } from "../pattern/strokePlan.ts";
import type { Along } from "../pattern/tooling.ts";
import type { WholePart } from "../pattern/wholePart.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { HandFinish } from "./job.ts";

/** Keys of a part that say nothing to the check of a whole part. */
export type UnreadKey = "grain" | "doubts" | "cutOuts" | "overall" | "length" | "dimensions";

export interface WholeStep extends Stroke {
  readonly clampedAt: Point;
  /** Fingers as the user sets them. */
  readonly fingers?: readonly PlacedFinger[];
  readonly placedMm?: Mm;
}

export interface WholeJob {
  readonly units: "mm" | "in";
  /** The part as the leaf makes it. */
  readonly part: WholePart;
  /** The part as it is in the end, where some bend is closed by hand: sizes and blank are its. */
  readonly finished?: WholePart;
  readonly finishByHand?: readonly HandFinish[];
  /** Keys of the file that a check of a whole part doesn't look at; absent where there are none. */
  readonly unread?: readonly UnreadKey[];
  readonly brake: Brake;
  readonly along: Along;
  readonly order?: readonly WholeStep[];
  readonly marginMm: Mm;
  /** Where bends of the blank cross or run into each other, wanting a relief hole; only of what is built up. */
  readonly built?: Built;
}
