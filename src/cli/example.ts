/**
 * `noseroom example [NAME]`: a ready job or shop file to start from, or the list of them.
 */
import lines from "noseroom:example-lines";
import shops from "noseroom:example-shops";
import wholes from "noseroom:example-wholes";
import jobs from "noseroom:examples";
import { Refusal } from "./refusal.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

/** The list: a name, and under it what the example teaches. */
function exampleLines(): string[] {
  return names().flatMap((name) => [name, `    ${taught(name)}`]);
}

function names(): string[] {
  return [...Object.keys(jobs), ...Object.keys(wholes.texts), ...Object.keys(shops.texts)];
}

function taught(name: string): string {
  return lines[name] ?? wholes.lines[name] ?? shops.lines[name] ?? "";
}

function textOf(name: string): string | undefined {
  if (Object.hasOwn(jobs, name)) return jobs[name];
  if (Object.hasOwn(wholes.texts, name)) return wholes.texts[name];
  return Object.hasOwn(shops.texts, name) ? shops.texts[name] : undefined;
}

/**
 * Writes example `name` to a file ("-" prints it), or lists them all.
 * @throws Refusal for a name that is none, or a file that is there already
 */
export async function runExample(
  name: string | undefined,
  options: WriteOptions & { readonly output?: string },
): Promise<number> {
  if (name === undefined) {
    process.stdout.write(`${exampleLines().join("\n")}\n\nWrite one with: noseroom example NAME\n`);
    return 0;
  }
  const text = textOf(name);
  if (text === undefined) {
    throw new Refusal(`There is no example "${name}". There are: ${names().join(", ")}.`);
  }
  // Into a pipe or another file it is the file that is wanted.
  const file = options.output ?? (process.stdout.isTTY ? `${name}.json` : "-");
  if (file === "-") {
    process.stdout.write(text);
    return 0;
  }
  await writeOut(file, text, options);
  const command = Object.hasOwn(shops.texts, name) ? "fit" : "check";
  process.stdout.write(`${taught(name)}\n\nWritten to ${file}. Now: noseroom ${command} ${file}\n`);
  return 0;
}
