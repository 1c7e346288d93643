/**
 * Words as the fonts that every PDF reader has can print them (Helvetica, WinAnsi letters), and how wide they run.
 * Widths come from the fonts' own published metrics, exact to 1/1000 of the type size.
 * The height of words is their type size, as in the other pens: capitals stand 0.72 of it tall.
 */
import { Encodings, Font, FontNames } from "@pdf-lib/standard-fonts";
import type { Mm } from "../units/quantity.ts";

/** What stands in for letters that the fonts lack. */
const STAND_INS: Readonly<Record<string, string>> = {
  "\u2044": "/",
  "\u2212": "-",
  "\u2010": "-",
  "\u2011": "-",
  "\u2032": "'",
  "\u2033": '"',
  "\u2264": "<=",
  "\u2265": ">=",
  "\u2248": "about ",
  "\u2192": "to",
  "\u2300": "dia. ",
  "\u03b8": "angle",
  "\u2009": " ",
  "\u202f": " ",
  "\u215b": " 1/8",
  "\u215c": " 3/8",
  "\u215d": " 5/8",
  "\u215e": " 7/8",
  "\u2713": "x",
};

/** Height from which words are headings and print bold. */
export const HEADING_MM: Mm = 4.2;

/** Words with each letter that the fonts lack replaced; nothing is dropped silently. @example printable("3\u20448 in") // "3/8 in" */
export function printable(words: string): string {
  return [...words.normalize("NFC")].map(printableLetter).join("");
}

function printableLetter(letter: string): string {
  const standIn = STAND_INS[letter];
  if (standIn !== undefined) return standIn;
  if (isPrintable(letter)) return letter;
  const bare = letter.normalize("NFKD").replace(/\p{M}/gu, "");
  return bare !== letter && [...bare].every(isPrintable) ? bare : "?";
}

function isPrintable(letter: string): boolean {
  const code = letter.codePointAt(0) ?? 0;
  return code >= 0x20 && Encodings.WinAnsi.canEncodeUnicodeCodePoint(code);
}

/** Width of a line of words on the page. @example wordsWidth("", 3) // 0 */
export function wordsWidth(words: string, heightMm: Mm): Mm {
  const font = Font.load(heightMm >= HEADING_MM ? FontNames.HelveticaBold : FontNames.Helvetica);
  const letters = [...printable(words)];
  const units = letters.map((letter) => {
    const { name } = Encodings.WinAnsi.encodeUnicodeCodePoint(letter.codePointAt(0) ?? 0x20);
    return font.getWidthOfGlyph(name) ?? 0;
  });
  return (units.reduce((sum, width) => sum + width, 0) / 1000) * heightMm;
}

/** Between words, but not between a whole number and its fraction: 1 11/16 stays on one line. */
const BREAKS = /(?<!\d)\s+|\s+(?!\d+\/\d)/u;

/**
 * Words broken into lines no wider than `widthMm`, between words; a single word that is wider is broken inside.
 * @example wrapWords("one two", 3, 1000) // ["one two"]
 */
export function wrapWords(words: string, heightMm: Mm, widthMm: Mm): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of words.split(BREAKS).flatMap((whole) => broken(whole, heightMm, widthMm))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && wordsWidth(longer, heightMm) > widthMm) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return line === "" ? lines : [...lines, line];
}

function broken(word: string, heightMm: Mm, widthMm: Mm): readonly string[] {
  if (wordsWidth(word, heightMm) <= widthMm) return [word];
  const pieces: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && wordsWidth(piece + letter, heightMm) > widthMm) {
      pieces.push(piece);
      piece = "";
    }
    piece += letter;
  }
  return [...pieces, piece];
}
