/**
 * The fuzzer in a thread of its own, so that a text that never comes back, or eats all memory, can be told and named.
 */
import { parentPort, workerData } from "node:worker_threads";
import { type FuzzRun, fuzz } from "./fuzzer.ts";
import { READERS, type ReaderName } from "./readers.ts";
import { seedsOf } from "./seeds.ts";

const { reader, runs, seconds, seed, text, beat } = workerData as {
  reader: ReaderName;
  runs: number;
  seconds: number;
  seed: number;
  /** The text being tried, for the watcher: bytes, after four that say how many. */
  text: SharedArrayBuffer;
  /** Counts executions. */
  beat: SharedArrayBuffer;
};

const bytes = new Uint8Array(text, 4);
const length = new Int32Array(text, 0, 1);
const count = new Int32Array(beat);
const encoder = new TextEncoder();
const run: FuzzRun = { runs: 0, branches: 0, corpus: [], findings: [] };

await fuzz(
  {
    reader: READERS[reader],
    seeds: seedsOf(reader, "examples"),
    runs,
    seconds,
    seed,
    onText: (tried) => {
      length[0] = encoder.encodeInto(tried, bytes).written;
      Atomics.add(count, 0, 1);
    },
  },
  run,
);
parentPort?.postMessage({ ...run, corpus: run.corpus.length });
