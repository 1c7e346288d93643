/**
 * The two strokes of a hem in the foreman's words.
 */
import type { Step } from "../contact/step.ts";
import type { StepAnswer } from "../jobFile/answer.ts";
import type { Stage } from "../motion/stages.ts";
import { LEAST_FOLD_DEG } from "../part/hem.ts";
import type { Bend } from "../part/part.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** Why a hem can't be flattened, without a full stop; undefined where it can, or for any other stroke. */
export function hemStopWords({ hem }: Stage, step: Step, units: LengthUnit): string | undefined {
  if (hem === undefined || hem === "fold" || step.verdict !== "hits") return undefined;
  const { flattening } = hem;
  if (!flattening) return "the flat beside the hem is shorter than the hem, so the hem can't lie on it";
  if (flattening.lifts) return undefined;
  const { leastLiftMm, liftMm } = flattening;
  return `the clamp opens ${say(liftMm, units)}, and the folded hem wants ${say(leastLiftMm, units)} to go under it`;
}

/** What the first stroke must reach, to follow where it stops. */
export const FOLD_WANTS = `a hem wants ${LEAST_FOLD_DEG}° of leaf or more before the clamp can flatten it`;

/** What to do in the second stroke. */
export function flattenSentences({ hem }: Bend, step: StepAnswer, units: LengthUnit): readonly string[] {
  const gap = hem?.gapMm ?? 0;
  const strip = gap > 0 ? ` Lay a strip of ${say(gap, units)} into it first.` : "";
  const face = step.markedFaceUp ? "up" : "down";
  return [
    `Raise the clamp, slide the hem under it with the marked face ${face} and the folded edge lying on top, until the clamp covers it, and press it flat.${strip}`,
    "Keep fingers out from under the clamp.",
  ];
}

function say(mm: Mm, units: LengthUnit): string {
  return `${formatLength(mm, units)} ${units}`;
}
