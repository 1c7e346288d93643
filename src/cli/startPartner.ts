/**
 * A second thread for a long search (sequence/partner.ts), where the machine has a second core to run it on.
 */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Partner } from "../sequence/partner.ts";

/** `thread` is partnerThread.ts as it was built. */
export function startPartner(thread: URL, cores: number = availableParallelism()): Partner | undefined {
  if (cores < 2) return undefined;
  return (share) => {
    const worker = new Worker(thread, { workerData: share });
    // Without it the search goes on by itself.
    worker.on("error", () => undefined);
  };
}
