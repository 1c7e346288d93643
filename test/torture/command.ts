/**
 * The torture run from the command line: how many cases, from which seed, for how long, on how many threads; prints a
 * tally as it goes and each disagreement as a job file with the state to look at. Exit status 1 where there was any.
 */
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { noTally, runBatch, type Shares, type Tally } from "./torture.ts";

const BATCH_JOBS = 50;
const MOST_DISAGREEMENTS = 50;
const SAY_EVERY_SECONDS = 30;

/** What a thread works on: every batch whose number leaves `first` when divided by `threads`. */
interface Share {
  readonly seed: number;
  readonly first: number;
  readonly threads: number;
  readonly shares: Shares;
}

if (isMainThread) command();
else workOn(workerData as Share);

/** Works through its batches until it is stopped, and sends the tally of each. */
function workOn({ seed, first, threads, shares }: Share): void {
  for (let batch = first; ; batch += threads) {
    const tally = noTally();
    runBatch(seed * 1_000_000 + batch, BATCH_JOBS, shares, tally);
    parentPort?.postMessage(tally);
  }
}

function command(): void {
  const { values } = parseArgs({
    options: {
      cases: { type: "string", default: "200000" },
      seed: { type: "string", default: "1" },
      seconds: { type: "string", default: "1200" },
      whole: { type: "string", default: "20" },
      grazes: { type: "string", default: "50" },
      threads: { type: "string", default: "1" },
    },
  });
  const [cases, seed, seconds] = [Number(values.cases), Number(values.seed), Number(values.seconds)];
  const threads = Number(values.threads);
  const shares = { wholePerMille: Number(values.whole), grazePerMille: Number(values.grazes) };
  const tally = noTally();
  const start = Date.now();
  const since = () => (Date.now() - start) / 1000;
  let said = 0;

  const report = () => {
    const { disagreements, ...counts } = tally;
    const rest = Object.entries(counts).map(([word, count]) => `${count} ${word}`);
    console.log(
      `${since().toFixed(0)} s, seed ${seed}: ${rest.join(", ")}; ${disagreements.length} disagreements`,
    );
  };
  const take = (batch: Tally) => {
    add(tally, batch);
    for (const { sentence, file, pick, seed: own } of batch.disagreements) {
      const name = `dist/torture/seed-${own}.json`;
      writeFileSync(name, `${JSON.stringify({ sentence, pick, file }, null, 1)}\n`);
      console.log(`\n${sentence}\n${JSON.stringify(pick)}\n${JSON.stringify(file)}\nkept as ${name}`);
    }
    const enough = tally.cases >= cases || tally.disagreements.length >= MOST_DISAGREEMENTS;
    if (enough || since() >= seconds) {
      report();
      process.exit(tally.disagreements.length > 0 ? 1 : 0);
    }
    if (since() - said < SAY_EVERY_SECONDS) return;
    said = since();
    report();
  };
  for (let first = 0; first < threads; first++) {
    const share: Share = { seed, first, threads, shares };
    const worker = new Worker(new URL(import.meta.url), { workerData: share });
    worker.on("message", take);
    worker.on("error", (reason) => {
      throw reason;
    });
  }
}

/** Adds one batch's counts and disagreements to the whole. */
function add(tally: Tally, { disagreements, ...counts }: Tally): void {
  for (const [word, count] of Object.entries(counts) as [keyof typeof counts, number][]) tally[word] += count;
  tally.disagreements.push(...disagreements);
}
