/**
 * The last way of all: the bends that the brake can't make, by hand over a block. The block has the bend's radius and is cut back so far
 * that the sheet can go past its angle by what it springs back. Common practice, no source.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { finishedPart } from "../jobFile/job.ts";
import type { NoWayOut } from "../jobFile/wayOut.ts";
import { byHandWords } from "../words/byHandWords.ts";

/** The recipe for the bends that are not made in the order shown; none where these are hems. */
export function byHandRecipe(job: Job, { order }: Answer): NoWayOut[] {
  const made = new Set(order.flatMap(({ bend, verdict }) => (verdict === "hits" ? [] : [bend])));
  const left = finishedPart(job).bends.flatMap((bend, i) =>
    made.has(i + 1) || bend.hem
      ? []
      : [
          {
            bend: i + 1,
            insideRadius: bend.insideRadiusMm,
            angle: bend.angleDeg,
            overbend: bend.overbendDeg,
          },
        ],
  );
  return left.length === 0 ? [] : [{ kind: "byHand", sentence: byHandWords(left, job.units) }];
}
