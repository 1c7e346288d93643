/**
 * Words made safe for the text and attributes of an XML document.
 * XML 1.0 (W3C), 2.2: control characters and lone halves of a surrogate pair may not occur, not even escaped.
 */

const NAMED: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function allowed(code: number): boolean {
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}

/** Escaped words; what XML forbids is shown as the replacement sign. @example escapeText("a < b & c") // "a &lt; b &amp; c" */
export function escapeText(words: string): string {
  let text = "";
  for (const letter of words) {
    text += allowed(letter.codePointAt(0) ?? 0) ? (NAMED[letter] ?? letter) : "\uFFFD";
  }
  return text;
}
