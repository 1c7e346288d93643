/**
 * Lengths as they are written in a shop: "3/8", "1 1/2", "0.032", "12,5", "5 mm", 1/4 in, ½, 3⁄8, or a plain number.
 * One inch is 25.4 mm exactly (international inch, 1959); fractions are kept exact until the last step.
 * Reading is exact to the last bit of a double; writing rounds as each function says.
 */
import Fraction from "fraction.js";
import type { Mm } from "./quantity.ts";

export type LengthUnit = "mm" | "in";

/** Millimetres in one inch, exact. */
export const MM_PER_INCH = 25.4;

/** A decimal this near to a 64th is the 64th: .0336 is not 1/32, but .0156 is 1/64. */
export const FRACTION_WITHIN_IN = 0.0005;

/** Longer than any shop measure; a length from here on is a slip and has no words. */
const LONGEST_WORDED_MM: Mm = 1e9;

/** Longer text is no length; it also keeps a pasted book from being worked through. */
const LONGEST_TEXT = 40;

/** A comma that parts decimals; 1,250 may be meant for thousands and is left as it is. */
const DECIMAL_COMMA = /^([-+]?\d*),(?=\d+(?:\D|$))(?<!^[-+]?[1-9]\d{0,2},(?=\d{3}(?:\D|$)))/u;

const UNIT_WORDS: ReadonlyMap<string, LengthUnit> = new Map([
  ...["mm", "mm.", "millimeter", "millimeters", "millimetre", "millimetres"].map(
    (word): [string, LengthUnit] => [word, "mm"],
  ),
  ...["in", "in.", "inch", "inches", '"', "″", "”", "''"].map((word): [string, LengthUnit] => [word, "in"]),
]);

/** The unit that a word names, in letters of any size, or undefined. @example unitMeant("Inches") // "in" */
export function unitMeant(word: unknown): LengthUnit | undefined {
  return typeof word === "string" && word.length <= 40
    ? UNIT_WORDS.get(word.trim().toLowerCase())
    : undefined;
}

/**
 * A written length in mm, or undefined where it is no finite length. Negative lengths pass: callers judge.
 * A unit in the text beats the default unit.
 * @example parseLength("3/8", "in") // 9.525
 * @example parseLength("1 1/2", "in") // 38.1
 * @example parseLength("5 mm", "in") // 5
 * @example parseLength("about 3", "in") // undefined
 */
export function parseLength(written: string | number, unit: LengthUnit): Mm | undefined {
  if (typeof written === "number") return finite(unit === "in" ? written * MM_PER_INCH : written);
  const text = plainText(written);
  if (text === undefined) return undefined;
  const parts = /^([-+]?[\d./ -]*\d\.?)\s*([^\d\s./-].*)?$/u.exec(text);
  const number = parts?.[1];
  if (number === undefined) return undefined;
  const suffix = parts?.[2]?.toLowerCase();
  const own = suffix === undefined ? unit : UNIT_WORDS.get(suffix);
  const fraction = parseFraction(number.trim());
  if (own === undefined || fraction === undefined) return undefined;
  return finite((own === "in" ? fraction.mul(127, 5) : fraction).valueOf());
}

/**
 * A length in the user's unit, without the unit's name: mm to two decimals, inches as the nearest 64th when that
 * is within 0.0005 in, else with three decimals.
 * @example formatLength(9.525, "in") // "3/8"
 * @example formatLength(38.1, "in") // "1 1/2"
 * @example formatLength(1.016, "in") // "0.040"
 * @example formatLength(12.7, "mm") // "12.7"
 */
export function formatLength(lengthMm: Mm, unit: LengthUnit): string {
  if (!(Math.abs(lengthMm) < LONGEST_WORDED_MM)) return "–";
  if (unit === "mm") return String(Number(lengthMm.toFixed(2)) + 0);
  const { words, roundingMm } = nearestSixtyFourth(lengthMm);
  if (Math.abs(roundingMm) <= FRACTION_WITHIN_IN * MM_PER_INCH) return words;
  return (lengthMm / MM_PER_INCH).toFixed(3);
}

/**
 * The nearest 64th of an inch in words, and what the rounding adds: mark minus exact, positive when the mark is long.
 * At the half way point it rounds away from zero; what it adds is told to 1e-9 mm.
 * @example nearestSixtyFourth(9.525) // { words: "3/8", roundingMm: 0 }
 * @example nearestSixtyFourth(10).words // "25/64"
 */
export function nearestSixtyFourth(lengthMm: Mm): { readonly words: string; readonly roundingMm: Mm } {
  if (!(Math.abs(lengthMm) < LONGEST_WORDED_MM)) return { words: "–", roundingMm: 0 };
  const exact64ths = (lengthMm / MM_PER_INCH) * 64;
  const whole64ths = Math.sign(exact64ths) * Math.round(Math.abs(exact64ths));
  return {
    words: whole64ths === 0 ? "0" : new Fraction(whole64ths, 64).toFraction(true),
    roundingMm: Math.round(((whole64ths / 64) * MM_PER_INCH - lengthMm) * 1e9) / 1e9 + 0,
  };
}

/** Typographic signs made plain: ½ to " 1/2", ⁄ to /, − to -, 12,5 to 12.5; undefined when the text is too long to be a length. */
function plainText(written: string): string | undefined {
  const trimmed = written.trim();
  if (trimmed.length === 0 || trimmed.length > LONGEST_TEXT) return undefined;
  return trimmed
    .replace(/[¼½¾⅐-⅞⁰¹²³⁴-⁹]+/gu, (sign) => ` ${sign.normalize("NFKC")}`)
    .replace(/[₀-₉]/gu, (sign) => sign.normalize("NFKC"))
    .replace(/[⁄∕]/gu, "/")
    .replace(/[−–]/gu, "-")
    .replace(DECIMAL_COMMA, "$1.")
    .replace(/\s+/gu, " ")
    .trim();
}

/** "3/8", "1 1/2", "1-1/2", ".032" or "5", with a sign or without; undefined for any other form. */
function parseFraction(text: string): Fraction | undefined {
  const parts =
    /^([-+]?)(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+))$/u.exec(text) ?? undefined;
  if (parts === undefined) return undefined;
  const [, sign, decimal, whole, over, under] = parts;
  const size =
    decimal === undefined
      ? mixedNumber(whole, over ?? "", under ?? "")
      : new Fraction(decimal.replace(/\.$/u, ""));
  return sign === "-" ? size?.neg() : size;
}

/** A fraction beside a whole number must be a proper one: "1 5/4" is a slip of the pen. */
function mixedNumber(whole: string | undefined, over: string, under: string): Fraction | undefined {
  if (Number(under) === 0) return undefined;
  const part = new Fraction(`${over}/${under}`);
  if (whole === undefined) return part;
  return part.lt(1) ? part.add(new Fraction(whole)) : undefined;
}

function finite(lengthMm: number): Mm | undefined {
  return Number.isFinite(lengthMm) ? lengthMm : undefined;
}
