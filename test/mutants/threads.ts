/**
 * The threads in which mutants are tried, and the watchdog over them. A truth that takes ten times its usual time of the
 * processor, and half a second more, hangs: its mutant counts as noticed (timed out) and a new thread goes on with the next.
 */
import { resolve } from "node:path";
import { Worker } from "node:worker_threads";
import { AT, type Learned, type LearnTask, type TryTask, VERDICT } from "./task.ts";

const LOOK_MS = 40;
const LIMIT_MS = 500;
const LOADING_MS = 60_000;
const LIMIT_TIMES = 10;
const MEMORY_MB = 1500;

type End = { readonly said: unknown } | { readonly hung: true };

/** Runs a worker to its one message; `limitMs` says how long the truth of a number may take. */
function runWorker(
  bundle: string,
  task: LearnTask | TryTask,
  limitMs: (truth: number) => number,
): Promise<End> {
  const worker = new Worker(resolve(bundle), {
    workerData: task,
    resourceLimits: { maxOldGenerationSizeMb: MEMORY_MB },
    stdout: true,
    stderr: true,
  });
  return new Promise((done) => {
    let begun = -1;
    let since = process.cpuUsage();
    const look = setInterval(() => {
      if (task.at[AT.begun] !== begun) {
        begun = task.at[AT.begun]!;
        since = process.cpuUsage();
        return;
      }
      // The processor's time, not the clock's: on a busy machine a good truth must not be taken for one that hangs.
      const { user, system } = process.cpuUsage(since);
      const most = begun === 0 ? LOADING_MS : limitMs(task.at[AT.truth]!);
      if ((user + system) / 1000 > most) finish({ hung: true });
    }, LOOK_MS);
    let finished = false;
    const finish = (end: End) => {
      if (finished) return;
      finished = true;
      clearInterval(look);
      void worker.terminate().then(() => done(end));
    };
    worker.on("message", (said) => finish({ said }));
    // A mutant that eats all memory, or throws where no truth stands (as the modules load), ends its thread.
    worker.on("error", () => finish({ hung: true }));
    worker.on("exit", () => finish({ hung: true }));
  });
}

const newAt = () => new Int32Array(new SharedArrayBuffer(12));

export interface Cover {
  readonly loading: readonly number[];
  readonly learned: readonly Learned[];
}

/** Which mutants each truth passes, and how long it takes, without any mutant at work. */
export async function learnCover(bundle: string): Promise<Cover> {
  const end = await runWorker(bundle, { kind: "learn", at: newAt() }, () => 60_000);
  if (!("said" in end)) throw new Error("the truths do not run through without a mutant");
  return end.said as Cover;
}

/** Tries the mutants one by one; gives the truth that noticed each, VERDICT.timedOut or VERDICT.survived. */
export async function tryAll(
  bundle: string,
  count: number,
  mutants: TryTask["mutants"],
  loading: ReadonlySet<number>,
  ms: readonly number[],
  mostMs: number,
): Promise<Int32Array> {
  const verdicts = new Int32Array(new SharedArrayBuffer(4 * count)).fill(VERDICT.unknown);
  const noticed = new Int32Array(new SharedArrayBuffer(4 * ms.length));
  const limitMs = (truth: number) => LIMIT_MS + LIMIT_TIMES * (ms[truth] ?? 0);
  // A mutant in what a module works out as it loads needs a thread that begins with it.
  const alone = mutants.filter(({ number }) => loading.has(number)).map((mutant) => [mutant]);
  const together = mutants.filter(({ number }) => !loading.has(number));
  for (const group of [together, ...alone]) {
    let left = group;
    while (left.length > 0) {
      const first = loading.has(left[0]!.number) ? left[0]!.number : -1;
      const at = newAt();
      at[AT.mutant] = left[0]!.number;
      const end = await runWorker(
        bundle,
        { kind: "try", first, mutants: left, ms, mostMs, at, verdicts, noticed },
        limitMs,
      );
      if ("said" in end) break;
      const hung = at[AT.mutant]!;
      verdicts[hung] = VERDICT.timedOut;
      left = left.slice(left.findIndex(({ number }) => number === hung) + 1);
    }
  }
  return verdicts;
}
