/**
 * Why no change of one figure helps, told from what stops the bends: for a job that does not fold and has no way out.
 * Each bend is judged anew as the first and as the last to be made, with either end in the throat.
 */

import { stepAnswer } from "../answer/stepAnswer.ts";
import { Machine } from "../contact/machine.ts";
import { judgeStage } from "../contact/step.ts";
import type { Answer, JudgedStep } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { stagesOf } from "../motion/stages.ts";
import { blockedWords, meetsItselfWords, neverLastWords, neverMadeWords } from "../words/noWayWords.ts";
import { flatsThatMeet } from "./meetsItself.ts";

const ENDS = ["start", "end"] as const;

/** @example whyNothingHelps(check(duct), duct) // "No small change lets it fold: whichever bend comes last is stopped. …" */
export function whyNothingHelps({ order }: Answer, job: Job): string {
  const met = flatsThatMeet(job);
  if (met) return meetsItselfWords(met);
  const clamp = job.brake.clamp.kind;
  const never = bendsStopped(job, "first");
  if (never.length > 0) return neverMadeWords(never, clamp);
  const last = bendsStopped(job, "last");
  if (last.length === job.part.bends.length) return neverLastWords(last, clamp);
  return blockedWords(
    order.find(({ verdict }) => verdict === "hits"),
    clamp,
  );
}

/** Bends that neither end makes, each with what stops it: where it is made first, or after all others. */
function bendsStopped(job: Job, place: "first" | "last"): JudgedStep[][] {
  const { part, brake, marginMm } = job;
  const machine = new Machine(brake, part.thicknessMm);
  return part.bends.flatMap((_, bend) => {
    const others = part.bends.flatMap((__, other) =>
      place === "last" && other !== bend ? [{ bend: other, clamped: "start" as const }] : [],
    );
    const steps = ENDS.map((clamped) => {
      const stage = stagesOf(part, brake, [...others, { bend, clamped }]).at(-1)!;
      return stepAnswer(judgeStage(stage, marginMm, machine), stage, job.units);
    });
    return steps.every(({ verdict }) => verdict === "hits") ? [steps] : [];
  });
}
