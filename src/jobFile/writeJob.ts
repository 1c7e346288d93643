/**
 * A job file as text: keys in the schema's order, short lists and groups on one line, so that it can be read and
 * changed by hand. Reading it back gives the same job.
 */
import type { JobFile } from "./schema.ts";
import { shapeOf } from "./shape.ts";
import type { WholeFile } from "./wholeSchema.ts";

type Json = string | number | boolean | undefined | readonly Json[] | { readonly [key: string]: Json };

/** What fits within this width stays on one line. */
const WIDTH = 100;

/** The file's text, ending with a line end. @example readJob(writeJob(file)) */
export function writeJob(file: JobFile): string {
  // Holding a file against the schema hands its keys back in the schema's order.
  const shape = shapeOf(file);
  return `${printed((shape.ok ? shape.file : file) as Json, "", 0)}\n`;
}

/** The same of a whole part's job; its keys keep the order in which they are written. */
export function writeWhole(file: WholeFile): string {
  return `${printed(file as unknown as Json, "", 0)}\n`;
}

/** `taken` is what already stands on the line before the value. */
function printed(value: Json, indent: string, taken: number): string {
  const flat = onOneLine(value);
  if (typeof value !== "object") return flat;
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
  if (typeof value !== "object") return JSON.stringify(value);
  if (isList(value)) return `[${value.map(onOneLine).join(", ")}]`;
  const entries = entriesOf(value).map(([key, item]) => `${JSON.stringify(key)}: ${onOneLine(item)}`);
  return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}

function entriesOf(group: { readonly [key: string]: Json }): [string, Json][] {
  return Object.entries(group).filter(([, item]) => item !== undefined);
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
