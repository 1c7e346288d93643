/**
 * Pieces of the frame that stand only along a stretch of the brake, such as the ears of its hinges: a section as long as
 * its part is laid where it stands beside the fewest of them, and meets these. Plain comparisons, exact; touching ends are free.
 */
import type { Mm } from "../units/quantity.ts";
import type { Brake } from "./brake.ts";

const TOUCH_MM = 1e-6;

/** A part of unknown length is taken to fit between them: the rated length says what does. */
export function brakeForPart(brake: Brake, partLengthMm: Mm | undefined): Brake {
  const { stretches = [], lengthMm } = brake;
  if (stretches.length === 0 || lengthMm === undefined || partLengthMm === undefined) return brake;
  const met = fewestMet(stretches, lengthMm, partLengthMm);
  if (met.length === 0) return brake;
  return {
    ...brake,
    frame: [...brake.frame, ...met.map(({ outline }) => outline)],
    frameNames: [...brake.frame.map((_, i) => brake.frameNames?.[i]), ...met.map(({ name }) => name)],
  };
}

type Stretches = NonNullable<Brake["stretches"]>;

/** What the part stands beside where it is laid so that this is least; of a part longer than the brake all that it reaches. */
function fewestMet(stretches: Stretches, lengthMm: Mm, partLengthMm: Mm): Stretches {
  const spareMm = lengthMm - partLengthMm;
  const [low, high] = [Math.min(0, spareMm), Math.max(0, spareMm)];
  const starts = [low, high, ...stretches.flatMap(({ fromMm, toMm }) => [toMm, fromMm - partLengthMm])];
  const met = starts
    .filter((at) => at >= low - TOUCH_MM && at <= high + TOUCH_MM)
    .map((at) =>
      stretches.filter(({ fromMm, toMm }) => toMm > at + TOUCH_MM && fromMm < at + partLengthMm - TOUCH_MM),
    );
  return met.reduce((least, one) => (one.length < least.length ? one : least));
}
