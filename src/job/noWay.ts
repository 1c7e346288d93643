/**
 * Why no change of one figure helps, told from what stops the bend: for a job that does not fold and has no way out.
 */
import { meetsItself } from "../remedy/meetsItself.ts";
import type { Answer, StepAnswer } from "./answer.ts";
import { type ClampKind, contactWords, partWords } from "./contactWords.ts";
import type { Job } from "./job.ts";
import { degrees } from "./wayWords.ts";

/** @example whyNothingHelps(check(duct)) // "No small change lets it fold: at bend 3 the end of flat 4 …" */
export function whyNothingHelps({ order }: Answer, job: Job): string {
  if (meetsItself(job)) {
    return "No brake makes it: the finished part would lie in itself or touch itself. Check flats, angles and turns.";
  }
  const blocked = order.find(({ verdict }) => verdict === "hits");
  return `No small change lets it fold: ${blocked ? `at bend ${blocked.bend} ${reasonOf(blocked, job.brake.clamp.kind)}` : NO_CHANGE}.`;
}

/** Where the search for ways out ended before its time. */
export function untriedWords({ part }: Job, found: number): string {
  const what = `with ${part.bends.length} bends there is too much to try`;
  return found > 0
    ? `There may be more ways out: ${what}, and the search was cut short.`
    : `No way out was found so far: ${what}, and the search was cut short. Try fewer bends at a time, or a change of your own.`;
}

const NO_CHANGE = "no flat, angle or measure of the clamp changed by itself clears it";

function reasonOf({ contact, load, reached, overbend }: StepAnswer, clamp: ClampKind): string {
  if (contact?.member === "part") {
    return `${partWords(contact.part)} would have to pass through the part itself, which no brake changes`;
  }
  if (contact) return `${contactWords(contact, clamp)}, and ${NO_CHANGE}`;
  if (reached < overbend) {
    return `the leaf stops at ${degrees(reached)}, short of ${degrees(overbend)}, and more than one bend is asked too much`;
  }
  const way = load === "blocked" ? "into the throat" : "out of the throat";
  return `the part has no way ${way}, and ${NO_CHANGE}`;
}
