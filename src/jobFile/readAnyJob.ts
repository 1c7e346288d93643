/**
 * From a job file's text to a job of either kind: a section, or a whole part.
 */
import type { Job } from "./job.ts";
import { dataOf } from "./jsonText.ts";
import type { Problem } from "./problem.ts";
import { readJob } from "./readJob.ts";
import { readWhole } from "./readWhole.ts";
import type { JobFile } from "./schema.ts";
import type { WholeJob } from "./wholeJob.ts";
import { isWholeFile, type WholeFile } from "./wholeSchema.ts";

export type AnyJobRead =
  | { readonly ok: true; readonly kind: "section"; readonly job: Job; readonly file: JobFile }
  | { readonly ok: true; readonly kind: "whole"; readonly job: WholeJob; readonly file: WholeFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A job of 20 bends with 50 profiles of many corners stays far below. */
const MOST_TEXT = 1_000_000;

/**
 * Reads a job file's text.
 * @example readAnyJob("{}").problems[0].path // "noseroom"
 */
export function readAnyJob(text: string): AnyJobRead {
  const data = dataOf(text, MOST_TEXT);
  if (data.ok && isWholeFile(data.value)) {
    const read = readWhole(data.value);
    return read.ok ? { ...read, kind: "whole" } : read;
  }
  const read = readJob(text);
  return read.ok ? { ...read, kind: "section" } : read;
}
