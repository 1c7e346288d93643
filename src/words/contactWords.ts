/**
 * What meets what, in the words of the trade: the clamp is a finger or a clamp bar where it is one, else a clamp.
 * The answer's own keys keep "clamp" for all of them (src/model.md, section 10).
 */
import type { Clamp } from "../brake/brake.ts";
import type { ContactAnswer, Met } from "../jobFile/answer.ts";

export type ClampKind = Clamp["kind"];

/** What the clamp is called. @example clampWord("bar") // "clamp bar" */
export function clampWord(kind: ClampKind): "finger" | "clamp bar" | "clamp" {
  if (kind === "finger") return "finger";
  return kind === "bar" ? "clamp bar" : "clamp";
}

/** A piece of the brake with its article; the sheet's own other side for "part". @example metWords({ member: "bed" }, "finger") // "the bed" */
export function metWords({ member, name }: Met, kind: ClampKind): string {
  if (member === "part") return "its own other side";
  return `the ${name ?? (member === "clamp" ? clampWord(kind) : member)}`;
}

/** A contact's feature of the part: "flat 2" is a name, "end of flat 2" and "leaf" want their article. @example partWords("end of flat 1") // "the end of flat 1" */
export function partWords(part: string): string {
  return part.startsWith("flat ") ? part : `the ${part}`;
}

/** A contact's two sides. @example contactWords({ part: "end of flat 1", member: "clamp" }, "finger") // "the end of flat 1 meets the finger" */
export function contactWords(contact: Met & Pick<ContactAnswer, "part">, kind: ClampKind): string {
  const other = contact.member === "part" ? "another part of the sheet" : metWords(contact, kind);
  return `${partWords(contact.part)} meets ${other}`;
}
