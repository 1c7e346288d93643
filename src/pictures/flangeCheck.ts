/**
 * What to measure after a bend: the run of sheet that the leaf turned up, from the new bend to its free end or to the
 * next bend that is there already, outside. At other than 90° outside means to the mold lines. Exact for the radii given.
 */
import type { StepAnswer } from "../jobFile/answer.ts";
import type { Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

export interface FlangeCheck {
  readonly lengthMm: Mm;
  /** Where the run ends: undefined at the free end, else the formed bend, from 1. */
  readonly toBend: number | undefined;
  /** Both bends of the run are square, so that callipers read it; else it runs to a mold line in the air. */
  readonly square: boolean;
}

/** The run turned up by a step, `doneBends` (from 1) being formed before. */
export function flangeAfter(
  part: Part,
  step: Pick<StepAnswer, "bend" | "clamped">,
  doneBends: readonly number[],
): FlangeCheck {
  const outward = step.clamped === "start" ? 1 : -1;
  const first = part.bends[step.bend - 1];
  let flat = outward > 0 ? step.bend : step.bend - 1;
  let lengthMm = (first?.bendSetbackMm ?? 0) + (part.flatsMm[flat] ?? 0);
  let square = first?.angleDeg === 90;
  for (;;) {
    const next = outward > 0 ? flat : flat - 1;
    const bend = part.bends[next];
    if (bend === undefined) return { lengthMm, toBend: undefined, square };
    if (doneBends.includes(next + 1)) {
      square = square && bend.angleDeg === 90;
      return { lengthMm: lengthMm + bend.bendSetbackMm, toBend: next + 1, square };
    }
    flat += outward;
    lengthMm += bend.allowanceMm + (part.flatsMm[flat] ?? 0);
  }
}
