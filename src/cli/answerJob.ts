/**
 * Runs the check of a job where it may take long in a thread of its own, so that Ctrl-C and progress get through.
 * Few bends are answered on the spot: starting a thread would take longer than the answer.
 */
import { Worker } from "node:worker_threads";
import type { Answer } from "../job/answer.ts";
import type { Job } from "../job/job.ts";
import type { JobFile } from "../job/schema.ts";
import { fullAnswer, type Question } from "./fullAnswer.ts";
import { progressLine } from "./progressLine.ts";

/** Up to so many bends the whole check stays well under a second; a plain Ctrl-C ends that at once. */
const ON_THE_SPOT = 4;

/** What the thread sends: how far it is, or the answer. */
export type SearchNews = { readonly fraction: number } | { readonly answer: Answer };

/**
 * The answer to a job, with ways out if its file is given too. Exits with 130 and one sentence when the person presses
 * Ctrl-C meanwhile.
 */
export function answerJob(job: Job, file?: JobFile): Promise<Answer> {
  const question: Question = { job, ...(file === undefined ? {} : { file }) };
  if (job.part.bends.length <= ON_THE_SPOT) return Promise.resolve(fullAnswer(question));
  return new Promise((resolve, reject) => {
    const progress = progressLine(process.stderr);
    const worker = new Worker(new URL(import.meta.url), { workerData: question });
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
