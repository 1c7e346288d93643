/**
 * Fuzzing from the command line: each reader in a thread with a bounded memory, watched from outside. Findings are written
 * to dist/fuzz/ and told; exit status 1 where there was any.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { Worker } from "node:worker_threads";
import type { FuzzRun } from "./fuzzer.ts";
import { READERS, type ReaderName } from "./readers.ts";

const HANG_SECONDS = 20;
const MOST_MEMORY_MB = 900;
const names = Object.keys(READERS) as ReaderName[];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    runs: { type: "string", default: "100000" },
    seconds: { type: "string", default: "600" },
    seed: { type: "string", default: "1" },
  },
});
const unknown = positionals.filter((name) => !names.includes(name as ReaderName));
if (unknown.length > 0) {
  console.error(`There is no reader ${unknown.join(", ")}; the readers are ${names.join(", ")}.`);
  process.exit(2);
}

mkdirSync("dist/fuzz", { recursive: true });
for (const reader of positionals.length > 0 ? (positionals as ReaderName[]) : names)
  if (!(await attack(reader))) process.exitCode = 1;

/** Whether the reader stood. */
function attack(reader: ReaderName): Promise<boolean> {
  const text = new SharedArrayBuffer(1 << 18);
  const beat = new SharedArrayBuffer(4);
  const count = new Int32Array(beat);
  const [runs, seconds, seed] = [Number(values.runs), Number(values.seconds), Number(values.seed)];
  const worker = new Worker(new URL("worker.mjs", import.meta.url), {
    workerData: { reader, runs, seconds, seed, text, beat },
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
    stdout: true,
    stderr: true,
  });
  // The drawing reader's library remarks on every odd line.
  worker.stdout.resume();
  worker.stderr.resume();
  const start = Date.now();
  const tried = () => {
    const length = new Int32Array(text, 0, 1)[0]!;
    return new TextDecoder().decode(new Uint8Array(text, 4, length).slice());
  };
  const keep = (words: string, found: string) => {
    const name = `dist/fuzz/${reader}-${Date.now()}-${findings++}.txt`;
    writeFileSync(name, found);
    console.log(`${reader}: ${words.split("\n").slice(0, 4).join("\n  ")}\n  kept as ${name}`);
  };
  let findings = 0;
  return new Promise((done) => {
    let [last, still] = [-1, 0];
    const watch = setInterval(() => {
      still = count[0] === last ? still + 1 : 0;
      last = count[0]!;
      if (still < HANG_SECONDS) return;
      keep(`does not come back within ${HANG_SECONDS} s`, tried());
      void worker.terminate();
    }, 1000);
    worker.on("message", (run: Omit<FuzzRun, "corpus"> & { corpus: number }) => {
      for (const finding of run.findings) keep(finding.thrown, finding.text);
      const took = ((Date.now() - start) / 1000).toFixed(0);
      console.log(
        `${reader}: ${run.runs} executions in ${took} s, seed ${seed}; ${run.branches} branches reached, ` +
          `${run.corpus} texts kept; ${run.findings.length} findings`,
      );
    });
    worker.on("error", (thrown) => keep(String(thrown), tried()));
    worker.on("exit", () => {
      clearInterval(watch);
      done(findings === 0);
    });
  });
}
