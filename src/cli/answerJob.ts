/**
 * Runs the check of a job where it may take long in a thread of its own, so that Ctrl-C and progress get through.
 * Few bends are answered on the spot: starting a thread would take longer than the answer.
 */
import { Worker } from "node:worker_threads";
import type { Answer } from "../job/answer.ts";
import { check } from "../job/check.ts";
import type { Job } from "../job/job.ts";
import { progressLine } from "./progressLine.ts";

/** Up to so many bends the whole check stays well under a second; a plain Ctrl-C ends that at once. */
const ON_THE_SPOT = 6;

/** What the thread sends: how far it is, or the answer. */
export type SearchNews = { readonly fraction: number } | { readonly answer: Answer };

/**
 * The answer to a job. Exits with 130 and one sentence when the person presses Ctrl-C meanwhile.
 */
export function answerJob(job: Job): Promise<Answer> {
  if (job.part.bends.length <= ON_THE_SPOT) return Promise.resolve(check(job));
  return new Promise((resolve, reject) => {
    const progress = progressLine(process.stderr);
    const worker = new Worker(new URL(import.meta.url), { workerData: job });
    const stop = () => {
      progress.clear();
      process.stderr.write("Stopped before the search was done; nothing was decided.\n");
      process.exit(130);
    };
    process.once("SIGINT", stop);
    const settle = () => {
      process.removeListener("SIGINT", stop);
      progress.clear();
    };
    worker.on("message", (news: SearchNews) => {
      if ("fraction" in news) {
        progress.show(news.fraction);
        return;
      }
      settle();
      resolve(news.answer);
    });
    worker.on("error", (reason) => {
      settle();
      reject(reason);
    });
  });
}
