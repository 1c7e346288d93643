/**
 * Between what a person types and what the job file holds: a plain number becomes a number, anything else stays
 * as typed. The echo says how a figure was read, in the other unit too.
 */
import { parseThickness } from "../../src/units/gauge.ts";
import { formatLength, type LengthUnit, MM_PER_INCH, parseLength } from "../../src/units/length.ts";
import type { Typed } from "../store/jobFile.ts";

export type Kind = "length" | "thickness" | "angle" | "factor" | "strength" | "words";

/**
 * The file's value for typed text: a number only where it prints back the same, so that what is typed never changes
 * under the person's hands: the blank in "1 " is the beginning of "1 3/8". @example asTyped("1.50") // "1.50"
 */
export function asTyped(text: string): Typed {
  return /^-?\d+(\.\d+)?$/.test(text) && String(Number(text)) === text ? Number(text) : text;
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

/** Inches with three decimals, fractions set as the person wrote them. */
const inchWords = (mm: number) => `${(mm / MM_PER_INCH).toFixed(3)} in`;
const mmWords = (mm: number) => `${mm.toFixed(2)} mm`;

/** How a figure was read, or nothing to say. @example echo("3/8", "length", "in") // "3/8 in = 9.53 mm" */
export function echo(value: unknown, kind: Kind, units: LengthUnit): string {
  if (kind !== "length" && kind !== "thickness") return "";
  const mm = readMm(value, kind, units);
  if (mm === undefined) return "";
  const text = String(value).trim();
  const bare = /^[-\d./ ⁄¼½¾⅐-⅞]+$/u.test(text);
  const said = bare ? `${text} ${units}` : text;
  const writtenIn = bare ? units : /mm$/i.test(text) ? "mm" : /ga/i.test(text) ? "gauge" : "in";
  if (writtenIn === "mm") return `${said} = ${inchWords(mm)}`;
  if (writtenIn === "gauge") return `${said} = ${inchWords(mm)}, ${mmWords(mm)}`;
  return `${said} = ${mmWords(mm)}`;
}

/** A length for a label, fractions with the fraction slash. @example lengthLabel(9.525, "in") // "3⁄8 in" */
export function lengthLabel(mm: number, units: LengthUnit): string {
  return `${formatLength(mm, units).replace("/", "⁄")} ${units}`;
}
