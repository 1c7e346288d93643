/**
 * What a slip of syntax is taken for, and what to type instead: an inch mark inside the quotes, a measure or a word
 * without quotes, curly quotes, a decimal comma, a comma or a quote left out.
 * Each looks at the text around one place; where nothing is recognised it says what may stand there.
 */
import { parseThickness } from "../units/gauge.ts";
import { lengthMeant } from "../units/lengthSlips.ts";
import type { Slip } from "./openGroups.ts";
import { foundText } from "./problem.ts";

const CURLY = /^[“”„‟‘’‚‛«»]/u;
const INCH_MARK = /\s*(?:["″”]|'')$/u;
/** A measure or word that wants quotes ends here at the latest. */
const BARE = /^[^,\]}\n\r]{1,60}/u;
const A_FIGURE = 'a number such as 2.5, or a length in quotes such as "5/8"';

/** Something that is no value stands where one should. */
export function wantsValue(text: string, at: number): Slip {
  const shared = anywhere(text, at);
  if (shared) return shared;
  const sign = text[at]!;
  if (sign === ",") return { found: '","', allowed: "after a value, or left out" };
  if (/^[\]}:]/u.test(sign)) return { found: foundText(sign), allowed: "after a value" };
  if (sign === "(") return { found: '"("', allowed: "[ in front of a list, and ] behind it" };
  const bare = bareAt(text, at);
  const isKey = /^[\p{L}_$][\p{L}\p{Nd}_$]*\s*:/u.test(bare);
  return { found: shown(bare), allowed: isKey ? "after a {, since a job stands in braces" : insteadOf(bare) };
}

/** A value has ended, and what follows is neither a comma nor the closing bracket; `from` is where it began. */
export function afterValue(text: string, at: number, from: number): Slip {
  const value = text.slice(from, Math.min(at, from + 80)).trimEnd();
  const oneLine = !/[\n\r]/u.test(text.slice(from + value.length, at));
  const quoted = /^(["'])(.*)\1$/su.exec(value)?.[2];
  const misquoted =
    quoted !== undefined && oneLine ? afterQuoted({ text, at, from, value, quoted }) : undefined;
  const known = misquoted ?? anywhere(text, at);
  if (known) return known;
  if (/^[^"'[\]{}]+$/u.test(value) && oneLine && /^[^"'[{;:]/u.test(text[at]!)) {
    const bare = bareAt(text, from);
    return { found: shown(bare), allowed: insteadOf(bare), at: from };
  }
  if (text[at] === ";") return { found: '";"', allowed: "a comma" };
  return { found: signsAt(text, at), allowed: "after a comma, or the closing bracket" };
}

/** "5/8"" and "5/8" in: the mark or the unit belongs inside. "up, "angle": the quote was forgotten. */
function afterQuoted(it: {
  text: string;
  at: number;
  from: number;
  value: string;
  quoted: string;
}): Slip | undefined {
  const { text, at, from, value, quoted } = it;
  if (/^[\d./ -]+$/u.test(quoted)) {
    const behind = /^(?:["″”'](?=\s*(?:[,\]}]|$))|[\p{L}.]+)/u.exec(text.slice(at, at + 20))?.[0];
    const unit = behind !== undefined && /^\p{L}/u.test(behind) ? behind : "in";
    const allowed = `"${quoted} ${unit}", with the unit inside the quotes`;
    if (behind !== undefined) return { found: value + behind, allowed, at: from };
  }
  const closed = quoted.replace(/[,:]\s*$/u, "");
  if (at !== from + value.length || closed === quoted) return undefined;
  const sign = quoted.trimEnd().endsWith(":") ? "colon" : "comma";
  return { found: value, allowed: `"${closed}" with its closing quote before the ${sign}`, at: from };
}

/** A quoted text begins at `at`, and its line ends before it does. */
export function openText(text: string, at: number): Slip {
  const line = /^[^\n\r]{0,200}/u.exec(text.slice(at, at + 200))?.[0] ?? "";
  const quote = line[0] === "'" ? "a single quote" : "a double quote";
  const inside = line.includes("\\") ? ", and any \\ in it written twice" : "";
  return { found: shown(line), allowed: `a text with ${quote} at its end, on the same line${inside}` };
}

/** Something that is no key stands where one should. */
export function wantsKey(text: string, at: number): Slip {
  const shared = anywhere(text, at);
  if (shared) return shared;
  if (text[at] === ",") return { found: '","', allowed: "after a key and its value, or left out" };
  const found = shown(bareAt(text, at));
  const decimals = /^\d+/u.exec(text.slice(at, at + 20))?.[0];
  const whole = /[-+]?\d+(?=,$)/u.exec(text.slice(Math.max(0, at - 20), at))?.[0];
  if (decimals === undefined) return { found, allowed: "a key in double quotes" };
  if (whole === undefined) return { found, allowed: "a key; several values stand in [ ], as in [20, 15]" };
  const allowed = `${whole}.${decimals}, with a decimal point`;
  return { found: `${whole},${decimals}`, allowed, at: at - whole.length - 1 };
}

/** A key has ended, and no colon follows; `from` is where the key began. */
export function wantsColon(text: string, at: number, from: number): Slip {
  const shared = anywhere(text, at);
  if (shared) return shared;
  if (text[at] === "=") return { found: '"="', allowed: "a colon" };
  const key = text.slice(from, at).trimEnd();
  const inside = /^["'](.*)["']$/su.exec(key)?.[1];
  if (inside?.includes(":")) {
    const allowed = `"${inside.replace(/:.*$/su, "")}": with the quote closed before the colon`;
    return { found: key, allowed, at: from };
  }
  const words = /^[^,:\]}[{"'\n\r]{1,60}(?=["']?\s*:)/u.exec(text.slice(from, from + 80))?.[0]?.trim();
  if (inside === undefined && words !== undefined) {
    return {
      found: shown(words),
      allowed: `"${camelled(words)}", in quotes at both ends or at none`,
      at: from,
    };
  }
  const named = inside === undefined ? `"${key}"` : key;
  return { found: signsAt(text, at), allowed: `after a colon, behind the key ${named}` };
}

/** The word, quoted text or sign at a place. */
export function signsAt(text: string, at: number): string {
  const signs = /^(?:[\p{L}\d_$+-]{1,20}|["'][^"'\n]{0,20}["']?|.)/u.exec(text.slice(at, at + 24))?.[0];
  if (signs === undefined) return "the end of the text";
  return /^["']./u.test(signs) ? signs : foundText(signs);
}

/** Slips that are the same wherever they stand. */
export function anywhere(text: string, at: number): Slip | undefined {
  const rest = text.slice(at, at + 10);
  if (rest === "") return { found: "the end of the text", allowed: "the rest of the job" };
  if (CURLY.test(rest)) {
    return { found: `the curly quote ${rest[0]}`, allowed: 'a straight quote, ", as everywhere in the file' };
  }
  if (rest.startsWith("/*")) return { found: '"/*"', allowed: "a remark that ends with */" };
  const mark = /^(?:#+|--+)/u.exec(rest)?.[0];
  return mark === undefined ? undefined : { found: foundText(mark), allowed: "// in front of a remark" };
}

function bareAt(text: string, at: number): string {
  return (BARE.exec(text.slice(at, at + 80))?.[0] ?? text[at] ?? "").trim();
}

/** What to type for a measure or word that stands without quotes. */
function insteadOf(bare: string): string {
  const word = bare.toLowerCase();
  if (/^(?:true|false|null)$/u.test(word)) return `${word}, in small letters`;
  if (/^(?:yes|on|y)$/u.test(word)) return "true";
  if (/^(?:no|off|n)$/u.test(word)) return "false";
  if (/^[-+]?(?:nan|inf(?:inity)?|0x[\da-f]+)$/u.test(word)) return "a plain number";
  if (/^0\d+$/u.test(bare)) return `${Number(bare)} without a 0 in front, or 0.${bare.slice(1)}`;
  const isFigure = /^[-+.\d]/u.test(bare);
  const inside = (isFigure ? bare.replace(INCH_MARK, " in") : bare).replace(/["“”]/gu, "");
  const isMeasure = parseThickness(inside, "mm") !== undefined || /^[\d.]+ ?(?:°|deg)/u.test(inside);
  if (!isFigure || isMeasure) return `"${inside}" in quotes`;
  return lengthMeant(inside) ?? A_FIGURE;
}

/** Signs as they stand in the file, cut where they run on. */
function shown(signs: string): string {
  return signs.length > 40 ? `${signs.slice(0, 37)}…` : signs;
}

function camelled(words: string): string {
  return words.replace(/[\s_-]+(\S)/gu, (_, letter: string) => letter.toUpperCase());
}
