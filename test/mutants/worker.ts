/**
 * Runs the truths in a thread of its own: once each to learn their cover and time, or mutant by mutant until one is missed.
 * What it is at stands in shared memory, for the watchdog outside can only end a thread that hangs, not ask it.
 */
import { parentPort, workerData } from "node:worker_threads";
import { truths } from "./collect.ts";
import { activate, ENDLESS, forgetHits, takePassed } from "./switch.ts";
import { AT, type Learned, type LearnTask, type TryTask, VERDICT } from "./task.ts";

const task = workerData as LearnTask | TryTask;

async function missed(number: number): Promise<string | undefined> {
  task.at[AT.truth] = number;
  task.at[AT.begun]!++;
  forgetHits();
  try {
    await truths[number]!.run();
    return undefined;
  } catch (miss) {
    return String(miss instanceof Error ? miss.message : miss) || "missed";
  }
}

async function learn(): Promise<void> {
  // What is passed while the modules load is passed by every truth.
  const loading = takePassed();
  const learned: Learned[] = [];
  for (const [number, { name }] of truths.entries()) {
    const before = process.cpuUsage();
    const miss = await missed(number);
    const { user, system } = process.cpuUsage(before);
    learned.push({ name, ms: (user + system) / 1000, passed: takePassed(), missed: miss });
  }
  parentPort!.postMessage({ loading, learned });
}

async function tryMutants({ mutants, ms, mostMs, at, verdicts, noticed }: TryTask): Promise<void> {
  let last = -1;
  for (const { number, truths: asked } of mutants) {
    at[AT.mutant] = number;
    activate(number);
    verdicts[number] = VERDICT.survived;
    // What noticed the neighbour first, then what notices most for its time.
    const worth = (truth: number) =>
      truth === last ? Infinity : (noticed[truth]! + 0.1) / (ms[truth]! + 0.05);
    let spentMs = 0;
    for (const truth of asked.toSorted((a, b) => worth(b) - worth(a))) {
      spentMs += ms[truth]!;
      if (spentMs > mostMs) break;
      const miss = await missed(truth);
      if (miss === undefined) continue;
      verdicts[number] = miss === ENDLESS ? VERDICT.timedOut : truth;
      noticed[truth]!++;
      last = truth;
      break;
    }
    activate(-1);
  }
  parentPort!.postMessage("done");
}

if (task.kind === "learn") await learn();
else await tryMutants(task);
