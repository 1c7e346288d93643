/**
 * What to measure after a bend: the run of sheet that the leaf turned up, from the new bend to its free end or to the
 * next bend that is there already, outside. At other than 90° outside means to the mold lines. Exact for the radii given.
 */
import type { FlangeAnswer } from "../jobFile/answer.ts";
import type { Stage } from "../motion/stages.ts";

/** The run turned up by a stage of an order. */
export function flangeAfter({ part, bend: made, clamped, bendsDone }: Stage): FlangeAnswer {
  const outward = clamped === "start" ? 1 : -1;
  const first = part.bends[made];
  let flat = outward > 0 ? made + 1 : made;
  let length = (first?.bendSetbackMm ?? 0) + (part.flatsMm[flat] ?? 0);
  let square = first?.angleDeg === 90;
  for (;;) {
    const next = outward > 0 ? flat : flat - 1;
    const bend = part.bends[next];
    if (bend === undefined) return { length, to: null, square };
    if ((bendsDone >>> next) & 1) {
      square = square && bend.angleDeg === 90;
      return { length: length + bend.bendSetbackMm, to: next + 1, square };
    }
    flat += outward;
    length += bend.allowanceMm + (part.flatsMm[flat] ?? 0);
  }
}
