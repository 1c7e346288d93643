/**
 * The other end of answerJob.ts: takes a job, checks it, sends how far it is and at last the answer.
 */
import { parentPort, workerData } from "node:worker_threads";
import { check } from "../job/check.ts";
import type { Job } from "../job/job.ts";
import type { SearchNews } from "./answerJob.ts";

/** Oftener than this nobody can read. */
const NEWS_EVERY_MS = 200;

/** Runs in the thread; returns when the answer is on its way. */
export function runSearchThread(): void {
  const send = (news: SearchNews) => parentPort?.postMessage(news);
  let last = Date.now();
  const answer = check(workerData as Job, {
    progress(fraction) {
      const now = Date.now();
      if (now - last < NEWS_EVERY_MS) return;
      last = now;
      send({ fraction });
    },
    // Stopping ends the whole process, thread and all.
    stopped: () => false,
  });
  send({ answer });
}
