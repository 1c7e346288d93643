/**
 * Lengths, sizes and units given as options: read as in a job file, refused in a sentence that names the option.
 */
import { usualDoubtMm } from "../part/sample.ts";
import { type LengthUnit, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthWords } from "../words/lengthWords.ts";
import { Refusal } from "./refusal.ts";

/** Mm or in; inches where it is left out. @throws Refusal for any other word */
export function unitsOption(
  written: string | undefined,
  otherwise: LengthUnit = "in",
  option = "--units",
): LengthUnit {
  if (written === undefined) return otherwise;
  if (written === "mm" || written === "in") return written;
  throw new Refusal(`${option} is "${written}"; it may be mm or in.`);
}

/**
 * A length of 0 or more.
 * @throws Refusal for anything else
 */
export function lengthOption(written: string, option: string, units: LengthUnit): Mm {
  const lengthMm = parseLength(written, units);
  if (lengthMm !== undefined && lengthMm >= 0) return lengthMm;
  throw new Refusal(`${option} is "${written.trim()}"; it may be a length of 0 or more.`);
}

/**
 * "48 x 96 in": two lengths above 0; a unit at the end counts for both.
 * @param parted what may stand between them
 * @throws Refusal for anything else, with `hint` for what may stand there
 */
export function pairOption(
  written: string,
  option: string,
  units: LengthUnit,
  hint: string,
  parted: RegExp = /\s*[x×*]\s*/iu,
): readonly [Mm, Mm] {
  const [first, second, more] = written.split(parted);
  const unit = /\bmm\s*$/iu.test(written) ? "mm" : /(\bin|["″”])\s*$/iu.test(written) ? "in" : units;
  const [a, b] = [first, second].map((one) => (one === undefined ? undefined : parseLength(one, unit)));
  if (more === undefined && a !== undefined && b !== undefined && a > 0 && b > 0) return [a, b];
  throw new Refusal(`${option} is "${written}"; it may be two lengths, ${hint}.`);
}

/**
 * How far sizes may be off, as asked for or as callipers usually read.
 * @throws Refusal for what is no length, or not less than the smallest size
 */
export function doubtOption(
  by: string | undefined,
  smallest: { readonly mm: Mm; readonly what: string },
  units: LengthUnit,
): Mm {
  const doubtMm = by === undefined ? usualDoubtMm(units) : parseLength(by, units);
  if (doubtMm !== undefined && doubtMm >= 0 && doubtMm < smallest.mm) return doubtMm;
  const limit = lengthWords(smallest.mm, units);
  throw new Refusal(`--by is "${by ?? ""}"; it may be a length from 0 to under ${limit}, ${smallest.what}.`);
}
