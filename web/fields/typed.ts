/**
 * Between what a person types and what the job file holds: a plain number becomes a number, anything else stays
 * as typed. The echo says how a figure was read, in the other unit too.
 */
import { familyOf } from "../../src/jobFile/oddFigures.ts";
import { parseThickness } from "../../src/units/gauge.ts";
import {
  formatLength,
  type LengthUnit,
  MM_PER_INCH,
  nearestSixtyFourth,
  parseLength,
} from "../../src/units/length.ts";
import type { Typed } from "../store/jobFile.ts";

export type Kind = "length" | "thickness" | "angle" | "factor" | "strength" | "words";

/**
 * The file's value for typed text: a number only where it prints back the same, so that what is typed never changes
 * under the person's hands: the blank in "1 " is the beginning of "1 3/8". @example asTyped("1.50") // "1.50"
 */
export function asTyped(text: string): Typed {
  return /^-?\d+(\.\d+)?$/.test(text) && String(Number(text)) === text ? Number(text) : text;
}

/** Whether this browser's language writes decimals with a comma. */
export function writesComma(language: string): boolean {
  try {
    return (1.5).toLocaleString(language).includes(",");
  } catch {
    // Some systems name a language that the browser itself can't read, as "en-US@posix".
    return false;
  }
}

/** How this person writes, for reading what they type. */
export interface Hand {
  /** Whether their language writes decimals with a comma. */
  readonly comma: boolean;
  /** The metal chosen, which says what a gauge number means. */
  readonly metal: string;
}

/**
 * The file's value for typed text of a kind: a decimal comma becomes a point, a bare gauge number takes the metal's family.
 * "1,250" may mean a thousand where commas part thousands: it then stays as typed, to be asked about.
 * @example valueTyped("0,8", "length", { comma: false, metal: "mild steel" }) // 0.8
 * @example valueTyped("20 ga", "thickness", { comma: false, metal: "mild steel" }) // "20 ga steel"
 */
export function valueTyped(text: string, kind: Kind, { comma, metal }: Hand): Typed {
  if (kind === "words") return text;
  const decimal = /^(\s*-?\d*),(\d+)(\D*)$/u.exec(text);
  const thousands = decimal?.[2]?.length === 3 && !/^\s*-?0*$/u.test(decimal[1] ?? "");
  if (decimal && (comma || !thousands))
    return asTyped(`${decimal[1] === "" ? "0" : decimal[1]}.${decimal[2]}${decimal[3]}`);
  const bare =
    kind === "thickness" && /^\s*(?:no\.? ?|# ?)?\d+(?:\/0)?[ -]?(?:gauge|gage|ga\.?)\s*$/iu.test(text);
  const family = bare ? familyOf(metal) : undefined;
  return family === undefined ? asTyped(text) : `${text.trim()} ${family}`;
}

/** No brake is a kilometre long: what is longer counts as not readable. */
const LONGEST_MM = 1e6;

/** Millimetres of a typed length or thickness; undefined when it can't be read. */
export function readMm(value: unknown, kind: Kind, units: LengthUnit): number | undefined {
  if (typeof value !== "number" && typeof value !== "string") return undefined;
  if (kind !== "length" && kind !== "thickness") return undefined;
  const mm = kind === "length" ? parseLength(value, units) : parseThickness(value, units);
  return mm !== undefined && Math.abs(mm) <= LONGEST_MM ? mm : undefined;
}

/** Inches as a fraction where they are one exactly, else in decimals: 3/8 and 0.375 read the same. */
function inchWords(mm: number): string {
  const { words, roundingMm } = nearestSixtyFourth(mm);
  return `${Math.abs(roundingMm) < 1e-4 ? words : (mm / MM_PER_INCH).toFixed(3)} in`;
}
/** 0.375 in is a hair under 9.525 mm in a computer; half a hundredth is rounded up all the same. */
const mmWords = (mm: number) => `${Number(mm.toFixed(9)).toFixed(2)} mm`;

/**
 * How a figure was read, in both units, or nothing to say.
 * @example echo("0.375", "length", "in") // "3/8 in = 9.53 mm"
 */
export function echo(value: unknown, kind: Kind, units: LengthUnit): string {
  if (kind !== "length" && kind !== "thickness") return "";
  const mm = readMm(value, kind, units);
  if (mm === undefined) return "";
  const text = String(value).trim();
  if (/ga/i.test(text)) return `${text} = ${inchWords(mm)} = ${mmWords(mm)}`;
  const bare = /^[-\d./ ⁄¼½¾⅐-⅞]+$/u.test(text);
  const writtenIn = bare ? units : /mm$/i.test(text) ? "mm" : "in";
  if (writtenIn === "in") return `${inchWords(mm)} = ${mmWords(mm)}`;
  return `${Number(mm.toFixed(3))} mm = ${(mm / MM_PER_INCH).toFixed(3)} in`;
}

/** A length for a label, with a plain slash: some fonts let the fraction slash touch its digits. @example lengthLabel(9.525, "in") // "3/8 in" */
export function lengthLabel(mm: number, units: LengthUnit): string {
  return `${formatLength(mm, units)} ${units}`;
}
