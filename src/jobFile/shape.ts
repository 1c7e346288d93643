/**
 * Holds a file against the schema and words each thing that doesn't fit as a problem of ours.
 * The schema's messages are what is allowed; what was found is looked up in the file itself.
 */
import type { z } from "zod";
import { foundText, type Problem, pathText } from "./problem.ts";
import { type JobFile, jobFileSchema } from "./schema.ts";
import { strayKeys } from "./strayKeys.ts";

type Issue = z.core.$ZodIssue;

/** More than these nobody reads at once. */
const MOST_PROBLEMS = 20;

export type Shaped<File> =
  | { readonly ok: true; readonly file: File }
  | { readonly ok: false; readonly problems: Problem[] };

/** The job file when its shape is right, else what isn't. */
export function shapeOf(file: unknown): Shaped<JobFile> {
  return shapedBy(jobFileSchema, file);
}

/** A file of any schema when its shape is right, else what isn't. */
export function shapedBy<Schema extends z.ZodType>(schema: Schema, file: unknown): Shaped<z.output<Schema>> {
  const result = schema.safeParse(file);
  if (result.success) return { ok: true, file: result.data };
  const problems: Problem[] = [];
  const meant: string[] = [];
  for (const issue of result.error.issues) collect(issue, [], { file, problems, meant });
  // A key that is misspelt, or stands in the wrong group, is not told as missing from its own place too.
  return {
    ok: false,
    problems: eachOnce(problems.filter(({ path, found }) => found !== "nothing" || !meant.includes(path))),
  };
}

/** Problems without those that say no more: twice the same, what lies in a list that is wrong itself, and all but the first of a list of which the first items are all wrong alike. */
function eachOnce(problems: readonly Problem[]): Problem[] {
  return problems.filter(({ path, allowed }, i) => {
    const [, list, item] = /^(.*)\[(\d+)\]$/u.exec(path) ?? [];
    const alike = (before: Problem) =>
      before.allowed === allowed && (before.path === path || before.path === `${list}[${Number(item) - 1}]`);
    const inWrongList = problems.some((other) => path.startsWith(`${other.path}[`) && other.path === list);
    return !inWrongList && !problems.slice(0, i).some(alike);
  });
}

/** The file, and what has been found wrong so far; `meant` are the keys that stray ones stand for. */
interface Findings {
  readonly file: unknown;
  readonly problems: Problem[];
  readonly meant: string[];
}

function collect(issue: Issue, above: readonly PropertyKey[], findings: Findings): void {
  const { file, problems, meant } = findings;
  if (problems.length >= MOST_PROBLEMS) return;
  const path = [...above, ...issue.path];
  if (issue.code === "unrecognized_keys") {
    const strays = strayKeys(path, issue.keys, issue.message.split(", "));
    problems.push(...strays.problems.slice(0, MOST_PROBLEMS - problems.length));
    meant.push(...strays.meant);
    return;
  }
  // "a name or a group": where a group was begun, say what is wrong inside it.
  const begun = issue.code === "invalid_union" ? issue.errors.find(reachesInside) : undefined;
  if (begun) {
    for (const inner of begun) collect(inner, path, findings);
    return;
  }
  problems.push({ path: pathText(path), found: foundText(valueAt(file, path)), allowed: issue.message });
}

function reachesInside(issues: readonly Issue[]): boolean {
  return issues.some((issue) => issue.path.length > 0 || issue.code === "unrecognized_keys");
}

function valueAt(file: unknown, path: readonly PropertyKey[]): unknown {
  let value = file;
  for (const step of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}
