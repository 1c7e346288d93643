/**
 * The text of a job or shop file as data: JSON (RFC 8259) or JSON5 (json5.org), which takes comments, a comma too many,
 * single quotes, bare keys and .625 as people type them. A slip is told by jsonWalk.ts in one sentence; the values are
 * left to the libraries. A byte order mark in front is passed over.
 */
import parseJson5 from "json5/lib/parse.js";
import { jsonFault } from "./jsonWalk.ts";
import type { Problem } from "./problem.ts";

export type TextRead =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problems: Problem[] };

/**
 * The data of a text of at most `mostSigns` signs, or the one thing that is wrong with it. Never throws.
 * @example dataOf("{lift: .5,} // open", 100) // { ok: true, value: { lift: 0.5 } }
 * @example dataOf("[1, 2", 100).problems[0].allowed // 'a ] at the end, to close the list that begins at line 1'
 */
export function dataOf(text: string, mostSigns: number): TextRead {
  if (text.length > mostSigns) {
    const found = `${text.length} signs of text`;
    return { ok: false, problems: [{ path: "", found, allowed: `at most ${mostSigns}` }] };
  }
  const plain = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const fault = jsonFault(plain);
  if (fault) return { ok: false, problems: [fault] };
  return { ok: true, value: quicklyRead(plain) };
}

/** The strict reader is forty times as quick, and most files are strict. */
function quicklyRead(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return parseJson5(text);
  }
}
