/**
 * What the shop should do, in one or two sentences: which brake makes most, which others help, what one clamp bar adds.
 * Brakes are taken greedily, the one that makes most first; equal ones in the order of the file.
 */

import { type FitCell, isMade, type ShopFit } from "../jobFile/shopFit.ts";
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { orderWords } from "./wayWords.ts";
import { windowWords } from "./windowWords.ts";

const NUMBERS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
] as const;

/** Such as "Your finger brake makes 9 of 12. One clamp bar 3/16 to 1/4 in thick, 13 in long, makes the other three." */
export function shopSentence(fit: ShopFit, units: LengthUnit): string {
  const total = fit.parts.length;
  const taken = takenBrakes(fit).map(({ brake, parts }) => ({
    name: fit.brakes[brake] ?? "",
    makes: parts.length,
  }));
  const [first, ...others] = taken;
  const sentences: string[] = [];
  if (first === undefined) sentences.push(`None of your brakes makes any of the ${total}.`);
  else {
    const count = first.makes === total ? `all ${total}` : `${first.makes} of ${total}`;
    sentences.push(`Your ${first.name} makes ${count}.`);
  }
  for (const { name, makes } of others) sentences.push(`Your ${name} makes ${inWords(makes)} more.`);
  return [...sentences, ...rest(fit, units)].join(" ");
}

function rest({ unmade, bar, parts }: ShopFit, units: LengthUnit): string[] {
  if (unmade.length === 0) return [];
  const others =
    unmade.length === parts.length
      ? "them"
      : unmade.length === 1
        ? "the other one"
        : `the other ${inWords(unmade.length)}`;
  if (bar === null) {
    return [`No brake of yours makes ${others}, and neither would one clamp bar: ${names(unmade, parts)}.`];
  }
  const makesAll = bar.makes.length === unmade.length;
  const makes = makesAll ? others : `${inWords(bar.makes.length)} of ${others}`;
  const size = `${windowWords(bar.stock, bar.thickest, units)}, ${longWords(bar.length, units)} long`;
  const sentence = `One clamp bar ${size}, makes ${makes}.`;
  const left = unmade.filter((part) => !bar.makes.includes(part));
  return left.length === 0 ? [sentence] : [sentence, `Nothing makes ${names(left, parts)}.`];
}

/** How each part is folded on the brake that is taken for it, a sentence each. */
export function foldingSentences(fit: ShopFit): string[] {
  return takenBrakes(fit).flatMap(({ brake, parts }) =>
    parts.map((part) => {
      const order = fit.cells[part]?.[brake]?.order ?? [];
      return `${fit.parts[part]} on ${fit.brakes[brake]}: ${orderWords(order, order.length)}.`;
    }),
  );
}

/** Brakes that together make all that can be made, each with the parts that it adds. */
function takenBrakes({ brakes, cells }: ShopFit): { brake: number; parts: readonly number[] }[] {
  const taken: { brake: number; parts: readonly number[] }[] = [];
  let open = cells.map((_, i) => i);
  for (;;) {
    const made = brakes.map((_, b) => open.filter((part) => cells[part]?.[b] && isMade(cells[part][b])));
    const most = Math.max(0, ...made.map(({ length }) => length));
    const best = made.findIndex(({ length }) => length === most);
    if (most === 0 || best < 0) return taken;
    taken.push({ brake: best, parts: made[best] ?? [] });
    open = open.filter((part) => !made[best]?.includes(part));
  }
}

function inWords(count: number): string {
  return NUMBERS[count] ?? String(count);
}

function names(parts: readonly number[], all: readonly string[]): string {
  return parts.map((part) => all[part] ?? "").join(", ");
}

/** A length to saw to, rounded up: whole inches or centimetres. */
function longWords(lengthMm: Mm, units: LengthUnit): string {
  const grain = units === "in" ? MM_PER_INCH : 10;
  const whole = Math.ceil(lengthMm / grain - 1e-9);
  return units === "in" ? `${whole} in` : `${whole * 10} mm`;
}

/** One part on one brake: the finding, and what more there is to say of it. @example cellWords(cell, "in") // ["folds", "0.110 in to spare at bend 2"] */
export function cellWords(
  { verdict, clearance, worstBend, stopsAt, because }: FitCell,
  units: LengthUnit,
): readonly [finding: string, more: string] {
  const at = worstBend === null ? "" : ` at bend ${worstBend}`;
  if (verdict === "unfit") return ["not for this brake", because ?? ""];
  if (verdict === "hits") {
    const stops = stopsAt === null || stopsAt <= 0 ? `blocked${at}` : `stops at ${angleWords(stopsAt)}${at}`;
    return ["does not fold", stops];
  }
  const spare = clearance === null ? "nothing near" : `${lengthWords(clearance, units)} to spare${at}`;
  return [verdict === "tight" ? "only just" : "folds", spare];
}
