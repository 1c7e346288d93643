/**
 * Slips with brackets, told by the group or list that they leave open: one too few, one too many, one of the wrong kind.
 * Where a bracket is missing only the end of the text shows it; the first key that stands no further in than the group
 * around it tells where the bracket most likely belongs.
 */
import type { Place } from "./textPlaces.ts";

/** A slip in words: what stands there, and what should; `at` where it is not the place that was looked at. */
export interface Slip {
  readonly found: string;
  readonly allowed: string;
  readonly at?: number;
}

/** A group or list that was begun and not yet ended. */
export interface OpenGroup {
  readonly closer: "}" | "]";
  readonly line: number;
  readonly indent: number;
  /** Key that it stands under. */
  readonly name: string | undefined;
  /** Key read last in it. */
  key?: string;
  /** How far in the first key stood that began its line. */
  keyIndent?: number;
}

/** A key, and the group or list around it as it was when the key came. */
export interface PlacedKey {
  readonly place: Place;
  readonly group: OpenGroup;
}

/** The end of the text came with brackets open. */
export function atEnd(open: readonly OpenGroup[], outdented: PlacedKey | undefined): Slip {
  const inner = open.at(-1);
  const found = "the end of the text";
  if (inner === undefined) return { found, allowed: "a job in braces" };
  if (outdented !== undefined) {
    const { place, group } = outdented;
    return {
      found: keyAt(place),
      allowed: `after a ${group.closer}, to close ${named(group)}`,
      at: place.at,
    };
  }
  if (open.length === 1) return { found, allowed: `a ${inner.closer} at the end, to close ${named(inner)}` };
  const closers = open.map(({ closer }) => closer).reverse();
  const allowed = `${closers.join(" ")} at the end: ${named(inner)} is open, and all around it`;
  return { found, allowed };
}

/** A } where a ] is due, or the other way round, or a bracket that closes nothing. */
export function wrongCloser(sign: string, open: readonly OpenGroup[]): Slip {
  const inner = open.at(-1);
  const found = `"${sign}"`;
  if (inner === undefined || !open.some(({ closer }) => closer === sign)) {
    const what = sign === "]" ? "list" : "group";
    return { found, allowed: `left out, since no ${what} is open here` };
  }
  return { found, allowed: `after a ${inner.closer}, to close ${named(inner)}` };
}

/** A key where only values can be: the list around it was never closed, or a brace before the key is missing. */
export function keyInList(place: Place, open: readonly OpenGroup[], first: boolean): Slip {
  const found = keyAt(place);
  if (first) return { found, allowed: "after a {, since a key and its value stand in braces", at: place.at };
  return { found, allowed: `after a ], to close ${named(open.at(-1)!)}`, at: place.at };
}

/** The job ended early, and a key stood further in than those beside it: a bracket before it is one too many. */
export function closedEarly({ place }: PlacedKey): Slip {
  return {
    found: keyAt(place),
    allowed: "in the group before it: take the bracket away that ends it",
    at: place.at,
  };
}

/** A { where a key of the group should be. */
export function groupInGroup(open: readonly OpenGroup[]): Slip {
  const [outer, inner] = [open.at(-2), open.at(-1)!];
  if (outer?.closer !== "]") return { found: '"{"', allowed: 'after a key and its colon, such as "clamp":' };
  return { found: '"{"', allowed: `after a }, to close ${named(inner)}` };
}

function keyAt({ text, at }: Place): string {
  const key =
    /^(?:"[^"\n]{0,40}"?|'[^'\n]{0,40}'?|[^\s:]{1,40})/u.exec(text.slice(at, at + 42))?.[0] ?? "a key";
  return /^["']/u.test(key) ? key : `"${key}"`;
}

function named({ closer, line, name }: OpenGroup): string {
  const what = closer === "]" ? "list" : "group";
  return `the ${what}${name === undefined ? "" : ` "${name.slice(0, 40)}"`} that begins at line ${line}`;
}
