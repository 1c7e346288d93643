/**
 * Bends that the leaf leaves open and a hand closes: each once, at less than its own angle.
 * Bends count from 1 in the file and from 0 in the job.
 */
import { leftOpen } from "../part/leftOpen.ts";
import type { Part } from "../part/part.ts";
import type { HandFinish } from "./job.ts";
import { angleAt, lengthAt, type Reading, refuse } from "./reading.ts";
import type { JobFile } from "./schema.ts";

/** The bends to close by hand, with the problems noted; `part` is what they come to in the end. */
export function readFinishByHand(
  reading: Reading,
  file: NonNullable<JobFile["finishByHand"]>,
  part: Part,
): readonly HandFinish[] {
  const seen = new Set<number>();
  return file.map(({ bend, to, filler }, i): HandFinish => {
    const path = `finishByHand[${i}]`;
    const full = part.bends[bend - 1];
    if (full === undefined)
      refuse(reading, `${path}.bend`, bend, `the number of a bend, from 1 to ${part.bends.length}`);
    else if (full.hem) refuse(reading, `${path}.bend`, bend, "a bend that is no hem");
    else if (seen.has(bend)) refuse(reading, `${path}.bend`, bend, "a bend that this list has only once");
    seen.add(bend);
    const most = full?.angleDeg ?? 180;
    const toDeg = angleAt(reading, `${path}.to`, to, {
      from: 0,
      to: most,
      open: "both",
      allowed: `an angle in degrees, above 0 and less than the bend's own ${most}`,
    });
    const fillerMm = filler === undefined ? undefined : lengthAt(reading, `${path}.filler`, filler, "above0");
    return { bend: bend - 1, toDeg, ...(fillerMm !== undefined && { fillerMm }) };
  });
}

/** The part as the leaf leaves it. */
export function asTheLeafLeaves(part: Part, byHand: readonly HandFinish[]): Part {
  return byHand.reduce((so, { bend, toDeg }) => leftOpen(so, bend, toDeg), part);
}
