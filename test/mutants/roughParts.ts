/**
 * Rough parts of four and five bends on rough brakes, for truths that look at every state of a seated bend.
 */
import fc from "fast-check";
import { randomJobs } from "../reference/randomJob.ts";

/** Between closed ends with little lift much is blocked; gentle bends on a thin bar leave much to look at. */
export function roughParts(seed: number, count: number, gentle: boolean) {
  const some = randomJobs(5).filter(({ part }) => part.bends.length >= 4);
  return fc.sample(fc.noBias(some), { seed, numRuns: count }).map((file, i) => {
    const share = gentle ? 0.5 : 1;
    const bends = file.part.bends.map((bend) => ({
      ...bend,
      angle: bend.angle * share,
      overbend: bend.overbend * share,
    }));
    const { noseRadius } = file.brake.clamp;
    const clamp = { type: "bar" as const, thickness: 4, depth: 14, noseRadius, topRadius: noseRadius };
    return {
      ...file,
      part: { ...file.part, dimensions: "flat" as const, bends },
      brake: { ...file.brake, ...(gentle && { clamp }), lift: [3, 8, 20, 60][i % 4]!, openEnds: i % 3 === 0 },
    };
  });
}
