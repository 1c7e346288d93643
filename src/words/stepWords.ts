/**
 * One step of the order in the foreman's words: what lies in the throat, which face is up, how it came out.
 * The same words stand on the picture, in the table of the command and on the page.
 */
import type { JudgedStep } from "../jobFile/answer.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { type ClampKind, contactWords, metWords } from "./contactWords.ts";
import { FOLD_WANTS } from "./hemWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { rangeBlockWords } from "./rangeWords.ts";

function flatsWords(first: number, last: number): string {
  if (first === last) return `flat ${first}`;
  return last === first + 1 ? `flats ${first} and ${last}` : `flats ${first} to ${last}`;
}

/** The flats that lie in the throat. @example throatWords({ bend: 2, clamped: "end" }, 2) // "flat 3" */
export function throatWords(step: Pick<JudgedStep, "bend" | "clamped">, bendCount: number): string {
  return step.clamped === "start" ? flatsWords(1, step.bend) : flatsWords(step.bend + 1, bendCount + 1);
}

/** Which way up the sheet goes in. */
export function faceWords(step: Pick<JudgedStep, "markedFaceUp">): string {
  return step.markedFaceUp ? "marked face up" : "marked face down";
}

/** Which bend a step makes, or which stroke of one that is made in two. @example bendWords({ bend: 2 }) // "Bend 2" */
export function bendWords({ bend, stroke }: Pick<JudgedStep, "bend" | "stroke">): string {
  return stroke === undefined ? `Bend ${bend}` : `Bend ${bend}, ${STROKES[stroke]}`;
}

const STROKES = {
  begin: "first stroke",
  finish: "second stroke",
  fold: "hem, folded",
  flatten: "hem, flattened",
} as const;

/** Title of a step's picture. @example "Bend 2 · flat 3 in the throat · marked face up · leaf to 92°" */
export function stepTitle(step: JudgedStep, bendCount: number): string {
  const throat = `${throatWords(step, bendCount)} in the throat`;
  const leaf = step.stroke === "flatten" ? "clamp down" : `leaf to ${angleWords(step.overbend)}`;
  return `${bendWords(step)} · ${throat} · ${faceWords(step)} · ${leaf}`;
}

/** The clearance that the verdict stands on: at the likely leaf angle, where that is what is tight within the doubts. */
export function toldClearance({ verdict, clearance, leastClearance }: JudgedStep): Mm | null {
  return verdict === "tight" ? (leastClearance ?? clearance) : clearance;
}

/** Why a step fails, without its full stop; undefined where it does not. */
export function blockWords(step: JudgedStep, clamp: ClampKind, units: LengthUnit): string | undefined {
  if (step.failsAt !== undefined) return rangeBlockWords(step, clamp, units);
  if (step.refused !== null) return step.because ?? "it can't be begun";
  if (step.because !== undefined) return step.because;
  if (step.stroke === "flatten" && step.contact !== null)
    return `under the clamp ${contactWords(step.contact, clamp)}`;
  if (step.contact !== null) {
    if (step.contact.angle <= 0) return `already at rest ${contactWords(step.contact, clamp)}`;
    const wants = step.stroke === "fold" ? `${FOLD_WANTS}; ` : "";
    return `${wants}at ${angleWords(step.contact.angle)} ${contactWords(step.contact, clamp)}`;
  }
  if (step.reached < step.overbend) {
    return `the leaf stops at ${angleWords(step.reached)}, and this bend wants ${angleWords(step.overbend)}`;
  }
  if (step.load === "blocked") return "there is no way to bring the part into the throat";
  if (step.unload === "blocked") return "the bent part cannot be taken out of the throat";
  return undefined;
}

/**
 * How a step came out, as a sentence, with what the sheet comes nearest to where that is known.
 * @example "Stops: at 75.2° the end of flat 1 meets the finger."
 * @example "Clear, 1.03 mm from the clamp bar."
 */
export function outcomeSentence(step: JudgedStep, units: LengthUnit, clamp: ClampKind): string {
  const block = blockWords(step, clamp, units);
  if (block !== undefined) return `Stops: ${block}.`;
  const clearance = toldClearance(step);
  if (clearance === null) return "Nothing else comes near.";
  const from = step.nearest === null ? "to spare" : `from ${metWords(step.nearest, clamp)}`;
  const spare = `${lengthWords(clearance, units)} ${from}`;
  return step.verdict === "tight" ? `Tight: only ${spare}.` : `Clear, ${spare}.`;
}

/** @example lowered("Clear.") // "clear." */
export function lowered(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}
