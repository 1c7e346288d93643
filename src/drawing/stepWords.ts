/**
 * One step of the order in the foreman's words: what lies in the throat, which face is up, how it came out.
 * The same words stand on the picture, in the table of the command and on the page.
 */
import type { StepAnswer } from "../job/answer.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg } from "../units/quantity.ts";
import { lengthWords } from "./lengthWords.ts";

/** An angle to a tenth of a degree, whole where it is whole. @example angleWords(75.23) // "75.2°" */
export function angleWords(angleDeg: Deg): string {
  return `${Number(angleDeg.toFixed(1))}°`;
}

function flatsWords(first: number, last: number): string {
  if (first === last) return `flat ${first}`;
  return last === first + 1 ? `flats ${first} and ${last}` : `flats ${first} to ${last}`;
}

/** The flats that lie in the throat. @example throatWords({ bend: 2, clamped: "end" }, 2) // "flat 3" */
export function throatWords(step: Pick<StepAnswer, "bend" | "clamped">, bendCount: number): string {
  return step.clamped === "start" ? flatsWords(1, step.bend) : flatsWords(step.bend + 1, bendCount + 1);
}

/** Which way up the sheet goes in. */
export function faceWords(step: Pick<StepAnswer, "markedFaceUp">): string {
  return step.markedFaceUp ? "marked face up" : "marked face down";
}

/** Title of a step's picture. @example "Bend 2 · flat 3 in the throat · marked face up · leaf to 92°" */
export function stepTitle(step: StepAnswer, bendCount: number): string {
  const throat = `${throatWords(step, bendCount)} in the throat`;
  return `Bend ${step.bend} · ${throat} · ${faceWords(step)} · leaf to ${angleWords(step.overbend)}`;
}

/** A contact's two sides. @example contactWords({ part: "end of flat 1", member: "clamp" }) // "the end of flat 1 meets the clamp" */
export function contactWords(contact: { readonly part: string; readonly member: string }): string {
  const other = contact.member === "part" ? "another part of the sheet" : `the ${contact.member}`;
  // "flat 2" is a name; "end of flat 2" and "leaf" want their article.
  const one = contact.part.startsWith("flat ") ? contact.part : `the ${contact.part}`;
  return `${one} meets ${other}`;
}

/** Why a step fails, without its full stop; undefined where it does not. */
export function blockWords(step: StepAnswer): string | undefined {
  if (step.contact !== null) {
    if (step.contact.angle <= 0) return `already at rest ${contactWords(step.contact)}`;
    return `at ${angleWords(step.contact.angle)} ${contactWords(step.contact)}`;
  }
  if (step.reached < step.overbend) {
    return `the leaf stops at ${angleWords(step.reached)}, and this bend wants ${angleWords(step.overbend)}`;
  }
  if (step.load === "blocked") return "there is no way to bring the part into the throat";
  if (step.unload === "blocked") return "the bent part cannot be taken out of the throat";
  return undefined;
}

/** How a step came out, as a sentence. @example "Stops: at 75.2° the end of flat 1 meets the clamp." */
export function outcomeSentence(step: StepAnswer, units: LengthUnit): string {
  const block = blockWords(step);
  if (block !== undefined) return `Stops: ${block}.`;
  if (step.clearance === null) return "Nothing else comes near.";
  const spare = `${lengthWords(step.clearance, units)} to spare`;
  return step.verdict === "tight" ? `Tight: only ${spare}.` : `Clear, ${spare}.`;
}
