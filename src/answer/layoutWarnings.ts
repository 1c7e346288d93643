/**
 * What a foreman says of the sheet that the bends are laid out on: grain along the bends, cut-outs that end in a bend.
 * Only where the job says how the sheet lies; lengths in the job's unit.
 */
import { layOut } from "../blank/blank.ts";
import type { CutOut } from "../blank/cutOut.ts";
import { TOUCHES_MM } from "../blank/cutReliefs.ts";
import { grainAt } from "../blank/grain.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { cutOutInBendWords, grainWarning } from "../words/warningWords.ts";

/** A cut-out keeps clear of a bend by the inside radius and so many thicknesses. Common practice, no source. */
const CLEAR_THICKNESSES = 2;

/** Warnings on grain and cut-outs, in this order. */
export function layoutWarnings(job: Job): string[] {
  const { grainDeg, cutOuts = [], part } = job;
  const grain = grainDeg === undefined ? undefined : grainWarning(grainAt(grainDeg), part.bends.length);
  return [
    ...(grain === undefined ? [] : [grain]),
    ...cutOuts.flatMap((cutOut, i) => edgesInBends(job, cutOut, i)),
  ];
}

/** Edges of a cut-out that run along a bend line inside its bend zone. */
function edgesInBends(job: Job, cutOut: CutOut, index: number): string[] {
  const { units } = job;
  const part = finishedPart(job);
  return layOut(part).bends.flatMap(({ tangentsMm: [near, far] }, bend) =>
    cutOut.acrossMm.flatMap((edgeMm) => {
      if (edgeMm <= near + TOUCHES_MM || edgeMm >= far - TOUCHES_MM) return [];
      const radiusMm = part.bends[bend]?.insideRadiusMm ?? 0;
      const clearMm = radiusMm + CLEAR_THICKNESSES * part.thicknessMm;
      const at = { cutOut: index + 1, edgeMm, bend: bend + 1, zoneMm: [near, far] as const };
      return [cutOutInBendWords(at, clearMm, units)];
    }),
  );
}
