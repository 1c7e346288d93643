/**
 * Reads the written numbers of a job: lengths to mm, angles to degrees, figures as they are, each within its range.
 * What doesn't fit is noted once and becomes NaN, which passes every later comparison unremarked,
 * so that one slip makes one problem.
 */
import type { BrakeFault } from "../brake/fault.ts";
import { parseThickness } from "../units/gauge.ts";
import { type LengthUnit, MM_PER_INCH, parseLength } from "../units/length.ts";
import { lengthMeant } from "../units/lengthSlips.ts";
import type { Deg, Mm, Mpa } from "../units/quantity.ts";
import { foundText, type Problem } from "./problem.ts";

export interface Reading {
  readonly units: LengthUnit;
  readonly problems: Problem[];
}

export type Sign = "any" | "atLeast0" | "above0";
type Written = string | number;

/** Longer than any shop: 100 m. Keeps 1e308 out of the geometry. */
const LONGEST_MM: Mm = 100_000;

const SIGN_WORDS: Record<Sign, string> = {
  any: "a length",
  atLeast0: "a length of 0 or more",
  above0: "a length greater than 0",
};

/**
 * A limit in the user's unit with its name, in decimals fine enough to be typed in again: rounded down where it is the
 * most that is allowed, up where it is the least.
 * @example sayLimit("in", "least")(0.8128) // "0.032 in"
 */
export function sayLimit(units: LengthUnit, limit: "most" | "least"): (lengthMm: Mm) => string {
  const [size, steps] = units === "in" ? [MM_PER_INCH, 10_000] : [1, 1000];
  const rounding = limit === "most" ? 1e-6 : -1e-6;
  const round = limit === "most" ? Math.floor : Math.ceil;
  return (lengthMm) => `${round((lengthMm / size) * steps + rounding) / steps} ${units}`;
}

/** Notes a problem and gives NaN, to be handed on as the value. */
export function refuse(reading: Reading, path: string, written: unknown, allowed: string): number {
  reading.problems.push({ path, found: foundText(written), allowed });
  return Number.NaN;
}

/** A written length in mm, or NaN and a problem. */
export function lengthAt(reading: Reading, path: string, written: Written, sign: Sign): Mm {
  const lengthMm = parseLength(written, reading.units);
  if (lengthMm !== undefined && fits(lengthMm, sign)) return lengthMm;
  const far = lengthMm !== undefined && Math.abs(lengthMm) > LONGEST_MM;
  const bound = far ? ` and no longer than ${sayLimit(reading.units, "most")(LONGEST_MM)}` : "";
  const meant = lengthMm === undefined ? lengthMeant(written) : undefined;
  return refuse(reading, path, written, meant ?? `${SIGN_WORDS[sign]}${bound}, such as 12, "3/8" or "5 mm"`);
}

function fits(lengthMm: Mm, sign: Sign): boolean {
  if (Math.abs(lengthMm) > LONGEST_MM) return false;
  return sign === "any" || lengthMm > 0 || (sign === "atLeast0" && lengthMm === 0);
}

/** Thinnest sheet that can be told from its own faces' inset of 0.01 mm, and thickest that any hand brake takes. */
const THINNEST_MM: Mm = 0.05;
const THICKEST_MM: Mm = 50;

/** A written thickness or gauge in mm, or NaN and a problem. */
export function thicknessAt(reading: Reading, path: string, written: Written): Mm {
  const thicknessMm = parseThickness(written, reading.units);
  if (thicknessMm !== undefined && thicknessMm >= THINNEST_MM && thicknessMm <= THICKEST_MM)
    return thicknessMm;
  return refuse(
    reading,
    path,
    written,
    `from ${THINNEST_MM} mm to ${THICKEST_MM} mm, a length such as "0.8 mm" or "1/32 in", or a gauge with its family such as "20 ga steel" or "16 ga aluminum"`,
  );
}

/** A range for a plain figure, its bounds allowed or not, and how to say it. */
export interface FigureRange {
  readonly from: number;
  readonly to: number;
  /** Which of the two are themselves out; both are in unless said. */
  readonly open?: "from" | "both";
  readonly allowed: string;
}

/** Words that may stand behind a figure, and what the figure is then multiplied by. */
type UnitWords = Readonly<Record<string, number>>;

const DEGREES: UnitWords = { "°": 1, º: 1, deg: 1, "deg.": 1, degree: 1, degrees: 1 };
const STRENGTHS: UnitWords = {
  mpa: 1,
  "n/mm2": 1,
  "n/mm²": 1,
  gpa: 1000,
  psi: 0.006894757,
  ksi: 6.894757,
};

/** A plain number, also written as text and with one of the given unit words behind it; or NaN and a problem. */
export function figureAt(
  reading: Reading,
  path: string,
  written: Written,
  range: FigureRange,
  unitWords: UnitWords = {},
): number {
  const figure = typeof written === "number" ? written : figureOf(written, unitWords);
  const fromFits = range.open ? figure > range.from : figure >= range.from;
  const toFits = range.open === "both" ? figure < range.to : figure <= range.to;
  return fromFits && toFits ? figure : refuse(reading, path, written, range.allowed);
}

function figureOf(text: string, unitWords: UnitWords): number {
  const parts = /^([+-]?(?:\d{1,20}(?:[.,]\d{0,20})?|[.,]\d{1,20}))\s*(\S{0,10})$/u.exec(text.trim());
  const word = parts?.[2]?.toLowerCase() ?? "";
  const times = word === "" ? 1 : Object.hasOwn(unitWords, word) ? unitWords[word]! : Number.NaN;
  return parts?.[1] === undefined ? Number.NaN : Number(parts[1].replace(",", ".")) * times;
}

/** An angle in degrees, or NaN and a problem. */
export function angleAt(reading: Reading, path: string, written: Written, range: FigureRange): Deg {
  return figureAt(reading, path, written, range, DEGREES);
}

/** A strength in MPa, also written in ksi, psi, GPa or N/mm², or NaN and a problem. */
export function strengthAt(reading: Reading, path: string, written: Written, range: FigureRange): Mpa {
  return figureAt(reading, path, written, range, STRENGTHS);
}

/** Notes a fault of the brake's shape at the key that would have to change. */
export function noteFault(reading: Reading, path: string, written: unknown, fault: BrakeFault): undefined {
  const say = sayLimit(reading.units, "most");
  reading.problems.push({
    path: `${path}.${fault.key}`,
    found: fault.found?.(say) ?? foundText(written),
    allowed: fault.allowed(say),
  });
}
