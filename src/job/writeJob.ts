/**
 * A job file as text: keys in the contract's order, short lists and groups on one line, so that it can be read and
 * changed by hand. Reading it back gives the same job.
 */
import type { JobFile } from "./schema.ts";

type Json = string | number | boolean | null | undefined | readonly Json[] | { readonly [key: string]: Json };

/** What fits within this width stays on one line. */
const WIDTH = 100;

/** Keys in the order in which a person would fill them in; each group uses those that it has. */
const KEY_ORDER = [
  ...["noseroom", "type", "name", "units", "part", "material", "yield", "modulus", "ultimate"],
  ...["noseAngle", "thickness", "height", "depth", "footDepth", "noseRadius", "topRadius"],
  ...["holderBack", "holderHeight", "holderDepth", "profiles"],
  ...["insideRadius", "kFactor", "length", "dimensions", "flats", "bends"],
  ...["angle", "turn", "overbend", "brake", "clamp", "bed", "leaf", "profile", "swing", "pivot"],
  ...["frame", "lift", "openEnds", "setback", "rated", "order", "bend", "clamped", "margin"],
];

/** The file's text, ending with a line end. @example readJob(writeJob(file)) // ok, with the same job */
export function writeJob(file: JobFile): string {
  return `${printed(file as Json, "", 0)}\n`;
}

/** `taken` is what already stands on the line before the value. */
function printed(value: Json, indent: string, taken: number): string {
  const flat = onOneLine(value);
  if (typeof value !== "object" || value === null) return flat;
  if (indent !== "" && indent.length + taken + flat.length <= WIDTH) return flat;
  const inner = `${indent}  `;
  if (isList(value)) {
    const items = value.map((item) => inner + printed(item, inner, 0));
    return `[\n${items.join(",\n")}\n${indent}]`;
  }
  const lines = entriesOf(value).map(([key, item]) => {
    const label = `${JSON.stringify(key)}: `;
    return inner + label + printed(item, inner, label.length);
  });
  return `{\n${lines.join(",\n")}\n${indent}}`;
}

function onOneLine(value: Json): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (isList(value)) return `[${value.map(onOneLine).join(", ")}]`;
  const entries = entriesOf(value).map(([key, item]) => `${JSON.stringify(key)}: ${onOneLine(item)}`);
  return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}

function entriesOf(group: { readonly [key: string]: Json }): [string, Json][] {
  const place = (key: string) => KEY_ORDER.indexOf(key);
  return Object.entries(group)
    .filter(([, item]) => item !== undefined)
    .sort(([a], [b]) => place(a) - place(b));
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
