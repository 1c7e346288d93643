/**
 * Why no change of one figure helps, told from what stops the bends: for a job that does not fold and has no way out.
 * Each bend is judged anew as the first and as the last to be made, with either end in the throat.
 */

import { stepAnswer } from "../answer/stepAnswer.ts";
import { OverRange } from "../contact/overRange.ts";
import type { Answer, JudgedStep } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { angleWords } from "../words/angleWords.ts";
import { type ClampKind, contactWords, partWords } from "../words/contactWords.ts";
import { flatsThatMeet } from "./meetsItself.ts";

const ENDS = ["start", "end"] as const;

/** Of several bends that are stopped, so many are told of. */
const MOST_TOLD = 3;

/** @example whyNothingHelps(check(duct), duct) // "No small change lets it fold: whichever bend comes last is stopped. …" */
export function whyNothingHelps({ order }: Answer, job: Job, pairsTried = false): string {
  const noChange = pairsTried ? NO_PAIR : NO_CHANGE;
  const met = flatsThatMeet(job);
  if (met) {
    const [near, far] = met.map((flat) => `flat ${flat + 1}`);
    return `No brake makes it: in the finished part ${far} would lie in ${near} or touch it. Check flats, angles and turns.`;
  }
  const clamp = job.brake.clamp.kind;
  const never = bendsStopped(job, "first");
  if (never.length > 0) {
    const which = never.length === 1 ? "one bend cannot" : `${never.length} bends cannot`;
    return `No small change lets it fold: ${which} be made even on the flat blank. ${told(never, clamp)} ${noChange}`;
  }
  const last = bendsStopped(job, "last");
  if (last.length === job.part.bends.length) {
    return `No small change lets it fold: whichever bend comes last is stopped. ${told(last, clamp)} ${noChange}`;
  }
  const blocked = order.find(({ verdict }) => verdict === "hits");
  const where = blocked ? `at bend ${blocked.bend} ${stopWords(blocked, clamp)}. ` : "";
  return `No small change lets it fold: ${where}${noChange}`;
}

/** Where the search for ways out ended before its time. */
export function untriedWords({ part }: Job, found: number): string {
  const what = `with ${part.bends.length} bends there is too much to try`;
  return found > 0
    ? `There may be more ways out: ${what}, and the search was cut short.`
    : `No way out was found so far: ${what}, and the search was cut short. Try fewer bends at a time, or a change of your own.`;
}

const NO_CHANGE = "No single change helps; `noseroom ways` tries pairs.";
const NO_PAIR =
  "No flat, angle or measure of the brake changed by itself is enough, and no two of those that we pair.";

/** What stops a bend, as half a sentence. */
export function stopWords(step: JudgedStep, clamp: ClampKind): string {
  const { contact, load, reached, overbend, because } = step;
  if (because !== undefined) return because;
  if (contact?.member === "part") {
    return `${partWords(contact.part)} would have to pass through the part itself, which no brake changes`;
  }
  if (contact) return contactWords(contact, clamp);
  if (reached < overbend) return `the leaf stops at ${angleWords(reached)}, short of ${angleWords(overbend)}`;
  return `the part has no way ${load === "blocked" ? "into" : "out of"} the throat`;
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

/** What stops each bend, with one end in the throat and with the other. */
function told(stopped: readonly (readonly JudgedStep[])[], clamp: ClampKind): string {
  const sentences = stopped.slice(0, MOST_TOLD).map((steps) => {
    const ways = [...new Set(steps.map((step) => stopWords(step, clamp)))];
    return `Bend ${steps[0]?.bend}: ${ways.join("; the other way round ")}.`;
  });
  const more = stopped.length - sentences.length;
  return [...sentences, ...(more > 0 ? [`And ${more} more.`] : [])].join(" ");
}
