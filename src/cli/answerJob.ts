/**
 * Does what may take long in a thread of its own, so that Ctrl-C and progress get through (stops.ts).
 * Few bends are answered on the spot: starting a thread would take longer than the answer.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { Shop } from "../jobFile/shopFile.ts";
import type { ShopFit } from "../jobFile/shopFit.ts";
import type { WholeAnswer, WholeDoubts } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import type { WholeWay } from "../jobFile/wholeWay.ts";
import { progressLine } from "./progressLine.ts";
import { breath } from "./stops.ts";
import { type Done, type DoubtTask, done, type JobTask, type Task } from "./task.ts";

/** Up to so many bends a check, and with its ways out, stays well under a second; Ctrl-C waits for its end. */
const CHECKED_ON_THE_SPOT = 8;
const ON_THE_SPOT = 4;

/** What the thread sends: how far it is, the answer before its ways out, the result. */
export type TaskNews =
  | { readonly fraction: number }
  | { readonly judged: Answer }
  | { readonly result: unknown };

/** Told the answer as soon as it is known, while ways out are still to be looked for. */
type Judged = (answer: Answer) => Promise<void>;

/** The answer to a job; with its file also the ways out, on the shop's `brakes` too. */
export async function answerJob(
  job: Job,
  file?: JobFile,
  more: Pick<JobTask, "brakes" | "pairs"> = {},
  judged?: Judged,
): Promise<Answer> {
  const task: JobTask = { kind: "answer", job, ...(file && { file }), ...more };
  const bends = job.part.bends.length;
  if (bends > CHECKED_ON_THE_SPOT) return inThread(task, judged);
  const answer = done<JobTask>({ kind: "answer", job });
  await breath();
  await judged?.(answer);
  return file && answer.verdict !== "clear" ? worked({ ...task, answer }, bends) : answer;
}

/** The answer to a whole part's job. */
export function answerWhole(job: WholeJob): Promise<WholeAnswer> {
  return worked({ kind: "whole", job } as const, job.part.sheet.pattern.bends.length);
}

/** What would let a whole part fold; none where it does. */
export async function waysForWhole(
  job: WholeJob,
  file: WholeFile,
  answer: WholeAnswer,
): Promise<readonly WholeWay[]> {
  if (answer.verdict !== "hits") return [];
  return worked({ kind: "wholeWays", job, file, answer } as const, job.part.sheet.pattern.bends.length);
}

/** Every part of a shop on every brake. */
export function answerShop(shop: Shop): Promise<ShopFit> {
  const most = Math.max(0, ...shop.parts.map((part) => part.bends.length));
  return worked({ kind: "fit", shop } as const, most);
}

/** Whether a job still folds with its flats misread. */
export function answerDoubts(task: Omit<DoubtTask, "kind">): Promise<Done<DoubtTask>> {
  return worked({ kind: "doubt", ...task } as const, task.job.part.bends.length);
}

/** Whether a whole part still folds with its sizes misread. */
export function answerWholeDoubts(
  task: Omit<Extract<Task, { kind: "wholeDoubt" }>, "kind">,
): Promise<WholeDoubts> {
  return worked({ kind: "wholeDoubt", ...task } as const, task.answer.blank.bends.length);
}

async function worked<T extends Task>(task: T, bends: number): Promise<Done<T>> {
  if (bends > ON_THE_SPOT) return inThread(task);
  const result = done(task);
  await breath();
  return result;
}

async function inThread<T extends Task>(task: T, judged?: Judged): Promise<Done<T>> {
  const { Worker } = await import("node:worker_threads");
  return new Promise((resolve, reject) => {
    const progress = progressLine(process.stderr);
    const worker = new Worker(new URL("./searchThread.mjs", import.meta.url), { workerData: task });
    const fails = (reason: unknown) => {
      progress.clear();
      reject(reason);
      worker.terminate();
    };
    let told = Promise.resolve();
    worker.on("message", (news: TaskNews) => {
      if ("fraction" in news) {
        progress.show(news.fraction);
        return;
      }
      progress.clear();
      if ("judged" in news) {
        told = judged?.(news.judged) ?? told;
        told.catch(fails);
        return;
      }
      told.then(() => resolve(news.result as Done<T>), fails);
    });
    worker.on("error", fails);
  });
}
