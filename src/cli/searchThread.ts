/**
 * The other end of answerJob.ts: takes a task, does it, sends how far it is and at last the result.
 */
import { parentPort, workerData } from "node:worker_threads";
import type { TaskNews } from "./answerJob.ts";
import { done, type Task } from "./task.ts";

/** Oftener than this nobody can read. */
const NEWS_EVERY_MS = 200;

const send = (news: TaskNews) => parentPort?.postMessage(news);
let last = Date.now();
const watch = {
  progress(fraction: number) {
    const now = Date.now();
    if (now - last < NEWS_EVERY_MS) return;
    last = now;
    send({ fraction });
  },
  // Stopping ends the whole process, thread and all.
  stopped: () => false,
};
send({ result: done(workerData as Task, watch, (judged) => send({ judged })) });
