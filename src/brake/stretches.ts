/**
 * Pieces of the frame that stand only along a stretch of the brake, such as the ears of its hinges: a section meets them where no stretch of
 * the brake is left free that is as long as the part. Plain comparisons, exact; touching ends are free.
 */
import type { Mm } from "../units/quantity.ts";
import type { Brake } from "./brake.ts";

/** A part of unknown length is taken to fit between them: the rated length says what does. */
export function brakeForPart(brake: Brake, partLengthMm: Mm | undefined): Brake {
  const { stretches = [], lengthMm } = brake;
  if (stretches.length === 0 || lengthMm === undefined || partLengthMm === undefined) return brake;
  if (longestFree(stretches, lengthMm) >= partLengthMm - 1e-6) return brake;
  return {
    ...brake,
    frame: [...brake.frame, ...stretches.map(({ outline }) => outline)],
    frameNames: [...brake.frame.map((_, i) => brake.frameNames?.[i]), ...stretches.map(({ name }) => name)],
  };
}

/** The longest stretch of the brake with none of them. */
function longestFree(stretches: NonNullable<Brake["stretches"]>, lengthMm: Mm): Mm {
  let [free, at] = [0, 0];
  for (const { fromMm, toMm } of [...stretches].sort((a, b) => a.fromMm - b.fromMm)) {
    free = Math.max(free, Math.min(fromMm, lengthMm) - at);
    at = Math.max(at, toMm);
  }
  return Math.max(free, lengthMm - at);
}
