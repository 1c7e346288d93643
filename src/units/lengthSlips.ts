/**
 * What to type for a length that was written as people say it but that no length can be read from: a comma that may part
 * thousands, centimetres, feet, thousandths, a range. Guesses at what was meant; the person decides.
 */
import { type LengthUnit, MM_PER_INCH, parseLength } from "./length.ts";

/** How much longer than its unit's name says, in mm or inches. */
const OTHER_UNITS: readonly (readonly [words: string, times: number, unit: LengthUnit])[] = [
  ["cm centimeter centimeters centimetre centimetres", 10, "mm"],
  ["m meter meters metre metres", 1000, "mm"],
  ["ft ft. feet foot ' ’ ′", 12, "in"],
  ["thou mil mils thousandths", 0.001, "in"],
];

/**
 * What to type in its place, or undefined where nothing is recognised.
 * @example lengthMeant("2 cm") // "\"20 mm\""
 * @example lengthMeant("1,250") // "1.250 with a decimal point, or 1250 without the comma"
 */
export function lengthMeant(written: string | number): string | undefined {
  if (typeof written === "number" || written.length > 40) return undefined;
  const text = written.trim().toLowerCase();
  if (/^[-+]?\d{1,3},\d{3}\D*$/u.test(text)) {
    return `${text.replace(",", ".")} with a decimal point, or ${text.replace(",", "")} without the comma`;
  }
  const [, figure, word] = /^([-+]?[\d./,¼½¾ ]*[\d¼½¾.])\s*(\D+)$/u.exec(text) ?? [];
  const other = OTHER_UNITS.find(([words]) => word !== undefined && words.split(" ").includes(word.trim()));
  const plain = figure === undefined ? undefined : parseLength(figure, "mm");
  if (plain !== undefined && other !== undefined) {
    return `"${Number((plain * other[1]).toPrecision(12))} ${other[2]}"`;
  }
  const range = /^(.*\d)\s*(?:to|\.\.+|…|–|-)\s*(.*\d)\s*(?:mm|in)?$/u.exec(text);
  if (range?.[1] !== undefined && parseLength(range[1], "mm") !== undefined) return "one length, not a range";
  const doubt = /^(.*\d)\s*(?:±|\+-|\+\/-)\s*(.*)$/u.exec(text);
  if (doubt?.[1] !== undefined) return `${doubt[1].trim()} alone, with its doubt under part.doubts`;
  const sum = /^([\d./ ]+)\+([\d./ ]+)$/u.exec(text);
  const parts = sum?.slice(1).map((part) => parseLength(part, "in"));
  if (parts?.every((part) => part !== undefined)) {
    return `${Number((parts.reduce((a, b) => a + b, 0) / MM_PER_INCH).toPrecision(12))}, as one number`;
  }
  const about = /^(?:about|approx\.?|ca\.?|~|≈)\s*(.+)$/u.exec(text);
  if (about?.[1] !== undefined && parseLength(about[1], "mm") !== undefined) return `${about[1]} alone`;
  return undefined;
}
