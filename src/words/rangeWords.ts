/**
 * What the doubts of springback, nose setback and nose radius leave of a bend, in the foreman's words: the leaf angles that it folds
 * for, or where it no longer does.
 */
import type { JudgedStep } from "../jobFile/answer.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { type ClampKind, contactWords } from "./contactWords.ts";

/** A range narrower than this can't be seen on a protractor. */
const SEEN_DEG = 0.2;

/**
 * One sentence for bends that fold over the same range, empty where every leaf angle was given.
 * Such as "Bend 1 folds for any leaf angle from 90.5° to 93.5°. …".
 */
export function leafRangeSentences(
  order: readonly Pick<JudgedStep, "bend" | "foldsFor">[],
): readonly string[] {
  const ranges = new Map<string, number[]>();
  for (const { bend, foldsFor } of order) {
    if (foldsFor === null || foldsFor[1] - foldsFor[0] < SEEN_DEG) continue;
    const range = `${angleWords(foldsFor[0])} to ${angleWords(foldsFor[1])}`;
    const bends = new Set([...(ranges.get(range) ?? []), bend]);
    ranges.set(
      range,
      [...bends].sort((a, b) => a - b),
    );
  }
  return [...ranges].map(([range, bends]) => {
    const which = bends.length === 1 ? `Bend ${bends[0]} folds` : `Bends ${listed(bends)} fold`;
    return `${which} for any leaf angle from ${range}. Springback is reckoned, so stop where the part reads right; a test strip narrows it.`;
  });
}

/**
 * Where the doubts are too wide to be looked through to the last fiftieth of a millimetre.
 * @example unseenWords(2, 0.08, "mm") // "Bend 2: what your doubts move by less than 0.08 mm we could not look at. Narrow one of them and check again."
 */
export function unseenWords(bend: number, unseenMm: Mm, units: LengthUnit): string {
  return `Bend ${bend}: what your doubts move by less than ${formatLength(unseenMm, units)} ${units} we could not look at. Narrow one of them and check again.`;
}

/**
 * Why a bend that folds as likely need not fold within the doubts, without its full stop.
 * @example rangeBlockWords(step, "finger", "mm") // "with the leaf past 92.7° the end of flat 1 meets the finger, and springback may ask for up to 93.5°"
 */
export function rangeBlockWords(step: JudgedStep, clamp: ClampKind, units: LengthUnit): string {
  return rangeStopWords(step, stopWords(step, clamp), units);
}

/** The same from what stops it, as a half sentence. */
export function rangeStopWords(
  step: Pick<JudgedStep, "failsAt" | "foldsFor" | "overbend" | "overbendRange">,
  stops: string,
  units: LengthUnit,
): string {
  const { failsAt, foldsFor, overbendRange } = step;
  const nose = [
    ...offWords(failsAt?.noseSetbackBy ?? 0, "farther back", "farther forward", units),
    ...offWords(failsAt?.noseRadiusBy ?? 0, "rounder", "sharper", units),
  ];
  if (nose.length > 0) {
    const leaf =
      failsAt && failsAt.overbend !== step.overbend ? ` and the leaf at ${angleWords(failsAt.overbend)}` : "";
    return `once the nose is ${nose.join(" and ")} than you say${leaf}, ${stops}`;
  }
  const [from, to] = foldsFor ?? overbendRange;
  return to < overbendRange[1]
    ? `with the leaf past ${angleWords(to)} ${stops}, and springback may ask for up to ${angleWords(overbendRange[1])}`
    : `with the leaf short of ${angleWords(from)} ${stops}, and springback may ask for no more than ${angleWords(overbendRange[0])}`;
}

function stopWords({ contact, because, load, unload }: JudgedStep, clamp: ClampKind): string {
  if (because !== undefined) return because;
  if (contact) return contactWords(contact, clamp);
  if (load === "blocked") return "there is no way to bring the part into the throat";
  if (unload === "blocked") return "the bent part cannot be taken out of the throat";
  return "the leaf swings no further";
}

function offWords(byMm: number, more: string, less: string, units: LengthUnit): readonly string[] {
  return byMm === 0 ? [] : [`${formatLength(Math.abs(byMm), units)} ${units} ${byMm > 0 ? more : less}`];
}

function listed(bends: readonly number[]): string {
  return `${bends.slice(0, -1).join(", ")} and ${bends.at(-1)}`;
}
