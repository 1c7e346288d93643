/**
 * Why no change of one figure helps, and where the search for ways out ended before its time, in sentences.
 */
import type { JudgedStep } from "../jobFile/answer.ts";
import { angleWords } from "./angleWords.ts";
import { type ClampKind, contactWords, partWords } from "./contactWords.ts";

/** Of several bends that are stopped, so many are told of. */
const MOST_TOLD = 3;
/** `pairsTried`: also pairs of changes were. */
const noChange = (pairsTried: boolean) =>
  pairsTried
    ? "No flat, angle or measure of the brake changed by itself is enough, and no two of those that we pair."
    : "No single change helps; `noseroom ways` tries pairs.";

/** Two flats of the finished part, counted from 0, that lie in each other. */
export function meetsItselfWords([near, far]: readonly [number, number]): string {
  return `No brake makes it: in the finished part flat ${far + 1} would lie in flat ${near + 1} or touch it. Check flats, angles and turns.`;
}

/** Bends that can't be made even first, each with what stops it with either end in the throat. */
export function neverMadeWords(
  stopped: readonly (readonly JudgedStep[])[],
  clamp: ClampKind,
  pairsTried: boolean,
): string {
  const which = stopped.length === 1 ? "one bend cannot" : `${stopped.length} bends cannot`;
  return `No small change lets it fold: ${which} be made even on the flat blank. ${told(stopped, clamp)} ${noChange(pairsTried)}`;
}

/** Every bend is stopped where it is made last. */
export function neverLastWords(
  stopped: readonly (readonly JudgedStep[])[],
  clamp: ClampKind,
  pairsTried: boolean,
): string {
  return `No small change lets it fold: whichever bend comes last is stopped. ${told(stopped, clamp)} ${noChange(pairsTried)}`;
}

/** The step that blocks the furthest order; undefined where none is told. */
export function blockedWords(blocked: JudgedStep | undefined, clamp: ClampKind, pairsTried: boolean): string {
  const where = blocked ? `at bend ${blocked.bend} ${stopWords(blocked, clamp)}. ` : "";
  return `No small change lets it fold: ${where}${noChange(pairsTried)}`;
}

/** Where the search was cut short; `found` ways so far. */
export function untriedWords(bendCount: number, found: number): string {
  const what = `with ${bendCount} bends there is too much to try`;
  return found > 0
    ? `There may be more ways out: ${what}, and the search was cut short.`
    : `No way out was found so far: ${what}, and the search was cut short. Try fewer bends at a time, or a change of your own.`;
}

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

/** What stops each bend, with one end in the throat and with the other. */
function told(stopped: readonly (readonly JudgedStep[])[], clamp: ClampKind): string {
  const sentences = stopped.slice(0, MOST_TOLD).map((steps) => {
    const ways = [...new Set(steps.map((step) => stopWords(step, clamp)))];
    return `Bend ${steps[0]?.bend}: ${ways.join("; the other way round ")}.`;
  });
  const more = stopped.length - sentences.length;
  return [...sentences, ...(more > 0 ? [`And ${more} more.`] : [])].join(" ");
}
