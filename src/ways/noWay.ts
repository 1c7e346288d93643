/**
 * Why no change of one figure helps, told from what stops the bends: for a job that does not fold and has no way out.
 * Each bend is judged anew as the first and as the last to be made, with either end in the throat.
 */

import { stepAnswer } from "../answer/stepAnswer.ts";
import { OverRange } from "../contact/overRange.ts";
import type { Answer, JudgedStep } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { blockedWords, meetsItselfWords, neverLastWords, neverMadeWords } from "../words/noWayWords.ts";
import { flatsThatMeet } from "./meetsItself.ts";

const ENDS = ["start", "end"] as const;

/** @example whyNothingHelps(check(duct), duct) // "No small change lets it fold: whichever bend comes last is stopped. …" */
export function whyNothingHelps({ order }: Answer, job: Job, pairsTried = false): string {
  const met = flatsThatMeet(job);
  if (met) return meetsItselfWords(met);
  const clamp = job.brake.clamp.kind;
  const never = bendsStopped(job, "first");
  if (never.length > 0) return neverMadeWords(never, clamp, pairsTried);
  const last = bendsStopped(job, "last");
  if (last.length === job.part.bends.length) return neverLastWords(last, clamp, pairsTried);
  return blockedWords(
    order.find(({ verdict }) => verdict === "hits"),
    clamp,
    pairsTried,
  );
}

/** Bends that neither end makes, each with what stops it: where it is made first, or after all others. */
function bendsStopped(job: Job, place: "first" | "last"): JudgedStep[][] {
  const { part, brake, marginMm } = job;
  const over = new OverRange(part, brake, marginMm);
  return part.bends.flatMap((_, bend) => {
    const others = part.bends.flatMap((__, other) =>
      place === "last" && other !== bend ? [{ bend: other, clamped: "start" as const }] : [],
    );
    const steps = ENDS.map((clamped) => {
      return stepAnswer(over.judge([...others, { bend, clamped }]).at(-1)!, job.units);
    });
    return steps.every(({ verdict }) => verdict === "hits") ? [steps] : [];
  });
}
