/**
 * The answer to a job in one plain sentence, as the command prints it first and the page keeps on top.
 */
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { worstMixWords } from "./doubtWords.ts";
import { handFinishShort } from "./handFinishWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { blockWords, throatWords } from "./stepWords.ts";

/** The step with the least measured clearance within the doubts; undefined where nothing was left to measure. */
export function tightestStep(answer: Answer): StepAnswer | undefined {
  let tightest: StepAnswer | undefined;
  for (const step of answer.order) {
    if (step.leastClearance === null) continue;
    if (tightest?.leastClearance == null || step.leastClearance < tightest.leastClearance) tightest = step;
  }
  return tightest;
}

/**
 * Verdict first, then how to begin or where it stops.
 * @example verdictSentence(job, answer) // "Folds. Bend 2 first, flat 3 in the throat."
 */
export function verdictSentence(job: Job, answer: Answer): string {
  const given = job.order !== undefined;
  const blocked = answer.order.find((step) => step.verdict === "hits");
  if (answer.verdict === "hits") {
    const where = given ? "Does not fold in this order" : "Does not fold";
    const words = blocked === undefined ? undefined : blockWords(blocked, job.brake.clamp.kind, job.units);
    if (blocked === undefined || words === undefined) return `${where}.`;
    if (blocked.failsAt !== undefined) {
      return `Not sure to fold${given ? " in this order" : ""}: at bend ${blocked.bend}, ${words}.`;
    }
    // What the brake is not rated for is no matter of one bend.
    const overloaded = blocked.refused === "rated" || blocked.refused === "length";
    if (overloaded) return `Does not fold: ${words}.`;
    if (blocked.refused === "pinched") return `${where}: at bend ${blocked.bend}, ${words}.`;
    const { contact } = blocked;
    const wide = contact?.member === "leaf" && contact.part !== "leaf" ? " The leaf is too wide for it." : "";
    const back =
      blocked.noseBack === undefined
        ? ""
        : ` The nose stands too far forward: this bend passes with it ${lengthWords(blocked.noseBack, job.units)} farther back.`;
    return `${where}: ${words} at bend ${blocked.bend}.${wide}${back}`;
  }
  const first = answer.order[0];
  if (first === undefined) return "Nothing to bend.";
  const bendCount = job.part.bends.length;
  const start = bendCount === 1 ? "Bend 1" : `Bend ${first.bend} first`;
  const begin = `${start}, ${throatWords(first, bendCount)} in the throat.${handFinishShort(answer)}`;
  const tightest = tightestStep(answer);
  const folds = given ? "Folds in this order" : "Folds";
  const byReadings = doubtfulWords(answer, job.units);
  if (byReadings !== undefined) return `${folds} as read, but ${byReadings}. ${begin}`;
  if (answer.verdict === "tight" && tightest?.leastClearance != null) {
    const spare = lengthWords(tightest.leastClearance, job.units);
    return `${folds}, but only just: ${spare} to spare at bend ${tightest.bend}. ${begin}`;
  }
  return `${folds}. ${begin}`;
}

/** What the doubts of the readings leave of it, where they make it tight: some mix hits, or could not be ruled out. */
function doubtfulWords({ doubts }: Answer, units: Job["units"]): string | undefined {
  if (doubts?.verdict !== "tight") return undefined;
  const { worst, proved } = doubts;
  if (worst !== null) return worstMixWords(worst, units);
  return proved ? undefined : "its readings leave it open: take it as tight";
}
