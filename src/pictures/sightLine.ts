/**
 * Where to sight a bend: one nose radius into it from the bend tangent line on the side that the order clamps
 * (FAA-H-8083-31, sight line). The other side has a sight line of its own.
 */
import { layOut, sightLineOf } from "../blank/blank.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { End } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

export interface SightLine {
  readonly atMm: Mm;
  readonly clamped: End;
}

/**
 * Sight line of each bend of the part, from the free end of flat 1. A bend that the order does not reach is sighted
 * with the start of the part clamped.
 */
export function sightLines(job: Job, answer: Answer): SightLine[] {
  const { noseRadiusMm } = job.brake.clamp;
  return layOut(job.part).bends.map((bend, i) => {
    const clamped = answer.order.find((step) => step.bend === i + 1)?.clamped ?? "start";
    return { atMm: sightLineOf(bend, clamped, noseRadiusMm), clamped };
  });
}
