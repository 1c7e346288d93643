/**
 * Runs ways out again from the outside: the changed job written as text, read anew and checked.
 */
import { check } from "../../src/answer/check.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { jobOf, readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { type FileChange, isWayOut, type WayOut } from "../../src/jobFile/wayOut.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";
import { applied } from "../../src/ways/waysOut.ts";

export interface Read {
  readonly file: JobFile;
  readonly job: Job;
}

/** A job of text or plain data; throws where it cannot be read. */
export function readAs(job: unknown): Read {
  const read = readJob(typeof job === "string" ? job : JSON.stringify(job));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read;
}

export const isWay = isWayOut;

/** What is wrong with a way out; nothing where it holds as stated and one step less does not. */
export function faultsOf({ file, job }: Read, way: WayOut): string[] {
  const faults: string[] = [];
  const again = readJob(writeJob(applied(file, job, way.changes)));
  if (!again.ok) return [`cannot be read: ${JSON.stringify(again.problems)}`];
  const answer = check(again.job);
  if (answer.verdict !== way.verdict) faults.push(`comes out ${answer.verdict}, not ${way.verdict}`);
  const least = leastOf(answer.order.map(({ leastClearance }) => leastClearance));
  if (
    least === null || way.clearance === null
      ? least !== way.clearance
      : Math.abs(least - way.clearance) > 1e-6
  ) {
    faults.push(`leaves ${least}, not ${way.clearance}`);
  }
  if (way.clearFrom !== undefined) {
    const [main, ...rest] = way.changes;
    const clear = readJob(writeJob(applied(file, job, [atFigure(main!, way.clearFrom), ...rest])));
    if (!clear.ok || check(clear.job).verdict !== "clear") faults.push(`is not clear from ${way.clearFrom}`);
  }
  if (way.limit && !folds(file, job, way.limit.changes)) faults.push("its limit hits");
  if (way.limit?.oneStepLess && folds(file, job, way.limit.oneStepLess)) {
    faults.push("one step less would do");
  }
  return faults.map((fault) => `${way.sentence} ${fault}`);
}

/** The same change with another figure. */
function atFigure(change: FileChange, figure: number): FileChange {
  if ("byMm" in change) return { ...change, byMm: figure };
  if ("fromMm" in change) return { ...change, fromMm: figure };
  return {
    ...change,
    [change.kind === "noseAngle" || change.kind === "angle" || change.kind === "swing" ? "toDeg" : "toMm"]:
      figure,
  } as FileChange;
}

function leastOf(clearances: readonly (number | null)[]): number | null {
  const measured = clearances.filter((clearance) => clearance !== null);
  return measured.length === 0 ? null : Math.min(...measured);
}

function folds(file: JobFile, job: Job, changes: readonly FileChange[]): boolean {
  const read = jobOf(applied(file, job, changes));
  return read.ok && check(read.job).verdict !== "hits";
}
