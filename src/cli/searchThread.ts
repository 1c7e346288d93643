/**
 * The other end of answerJob.ts: takes a job, checks it, sends how far it is and at last the answer.
 */
import { parentPort, workerData } from "node:worker_threads";
import type { SearchNews } from "./answerJob.ts";
import { fullAnswer, type Question } from "./fullAnswer.ts";

/** Oftener than this nobody can read. */
const NEWS_EVERY_MS = 200;

/** Runs in the thread; returns when the answer is on its way. */
export function runSearchThread(): void {
  const send = (news: SearchNews) => parentPort?.postMessage(news);
  let last = Date.now();
  const answer = fullAnswer(workerData as Question, {
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
