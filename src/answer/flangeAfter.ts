/**
 * What to measure after a bend: the run of sheet that the leaf turned up, from the new bend to its free end or to the
 * next bend that is there already, outside. Past 90° it is measured over the bend, where callipers reach, and not to the corner
 * where the mold lines would meet; under 90° outside means to the mold lines. Of a hem that was flattened: how far it reaches over its
 * flat, from the fold. Exact for the radii given.
 */
import type { FlangeAnswer } from "../jobFile/answer.ts";
import type { Stage } from "../motion/stages.ts";
import { takenAtBend } from "../part/bendSetback.ts";
import type { Bend } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

/** The run turned up by a stage of an order. */
export function flangeAfter({ part, bend: made, clamped, bendsDone }: Stage): FlangeAnswer {
  const cover = part.bends[made]?.flattens && part.flatsMm[made === 0 ? 0 : made + 1];
  if (cover !== undefined) return { length: cover, to: null, square: true };
  const outward = clamped === "start" ? 1 : -1;
  const first = part.bends[made];
  let flat = outward > 0 ? made + 1 : made;
  const reach = (bend: Bend): Mm =>
    takenAtBend({ ...bend, thicknessMm: part.thicknessMm }, "outside", "tangent");
  let length = (first === undefined ? 0 : reach(first)) + (part.flatsMm[flat] ?? 0);
  let square = first !== undefined && first.angleDeg >= 90;
  for (;;) {
    const next = outward > 0 ? flat : flat - 1;
    const bend = part.bends[next];
    if (bend === undefined) return { length, to: null, square };
    if ((bendsDone >>> next) & 1) {
      square = square && bend.angleDeg >= 90;
      return { length: length + reach(bend), to: next + 1, square };
    }
    flat += outward;
    length += bend.allowanceMm + (part.flatsMm[flat] ?? 0);
  }
}
