/**
 * Jobs of the tests read and answered, and what an answer's order is worth: verdict, changes, swung width, least clearance.
 */

import { check } from "../../src/answer/check.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";

/**
 * The file with no least grip and no least flange, where it does not say any: the reference and the closed forms know none, and a
 * rough part's flats may be shorter.
 */
export function unheld(file: object): object {
  const { brake } = file as { readonly brake?: object };
  return { ...file, brake: { leastGrip: 0, leastFlange: 0, ...brake } };
}

/** The answer to a job file as it stands, least grip and flange with it. */
export function heldAnswerOf(file: object): Answer {
  return check(readAs(file));
}

/** The engine's job, its sheet held by however little; throws with the problems where the file does not read. */
export function jobOf(file: object): Job {
  return readAs(unheld(file));
}

function readAs(file: object): Job {
  const read = readJob(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job;
}

export function answerOf(file: object): Answer {
  return check(jobOf(file));
}

export interface AnswerRank {
  readonly verdict: string;
  readonly changes: number;
  /** Developed width beyond the bend on the moving side, summed over the bends. */
  readonly swung: number;
  /** Least clearance, null where no bend has anything to measure. */
  readonly clearance: number | null;
}

/** src/model.md, section 8: all clear before tight, fewest changes of end plus changes of face, less sheet swung, larger least clearance. */
export function rankOf({ verdict, order, blank }: Answer): AnswerRank {
  const changes = order.slice(1).reduce((sum, step, i) => {
    const before = order[i]!;
    return sum + Number(before.clamped !== step.clamped) + Number(before.markedFaceUp !== step.markedFaceUp);
  }, 0);
  const swung = order.reduce((sum, { bend, clamped }) => {
    const [near, far] = blank.bends[bend - 1]!.tangents;
    return sum + (clamped === "start" ? blank.developedWidth - far : near);
  }, 0);
  const measured = order.map((step) => step.clearance).filter((mm) => mm !== null);
  return { verdict, changes, swung, clearance: measured.length === 0 ? null : Math.min(...measured) };
}

/** Bends made before the one that blocks. */
export function furthestOf({ order }: Answer): number {
  const blocked = order.findIndex((step) => step.verdict === "hits");
  return blocked < 0 ? order.length : blocked;
}
