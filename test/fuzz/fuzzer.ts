/**
 * A small coverage-guided fuzzer: texts that reach code not reached before are kept and changed further. What is reached
 * comes from V8's own block coverage (inspector protocol, Profiler domain), asked for once in many executions, and again
 * one by one where something new turned up.
 */
import { Session } from "node:inspector";
import { chance, Mutator } from "./mutate.ts";

const BATCH = 256;

export interface Finding {
  readonly text: string;
  readonly thrown: string;
}

export interface FuzzRun {
  runs: number;
  /** Blocks of code reached. */
  blocks: number;
  corpus: string[];
  findings: Finding[];
}

/** Asks V8 which blocks have run since the last time. */
class Coverage {
  private readonly session = new Session();
  readonly known = new Set<string>();

  constructor() {
    this.session.connect();
    this.session.post("Profiler.enable");
    this.session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });
  }

  /** How many blocks ran that never had before; they are known from now on. */
  fresh(): number {
    const before = this.known.size;
    this.session.post("Profiler.takePreciseCoverage", (_, { result }) => {
      for (const script of result) {
        if (!script.url.includes("fuzz")) continue;
        for (const { ranges } of script.functions)
          for (const { count, startOffset, endOffset } of ranges)
            if (count > 0) this.known.add(`${startOffset}-${endOffset}`);
      }
    });
    return this.known.size - before;
  }

  end(): void {
    this.session.disconnect();
  }
}

/** What to fuzz, from what, and for how long. */
export interface Order {
  readonly reader: (text: string) => void | Promise<void>;
  readonly seeds: readonly string[];
  readonly runs: number;
  readonly seconds: number;
  readonly seed: number;
  /** Told each text before it is tried, so that one that never comes back can be named. */
  readonly onText?: (text: string) => void;
}

const MOST_FINDINGS = 10;

/** Runs the reader on its seeds and on what comes of them. */
export async function fuzz(order: Order, run: FuzzRun): Promise<void> {
  const random = chance(order.seed);
  const mutator = new Mutator(random);
  const coverage = new Coverage();
  const until = Date.now() + order.seconds * 1000;
  const kinds = new Set<string>();
  const execute = async (text: string): Promise<void> => {
    order.onText?.(text);
    run.runs++;
    try {
      await order.reader(text);
    } catch (thrown) {
      const words = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
      // One finding a kind: the message without figures, and where it was thrown.
      const kind = words.split("\n").slice(0, 3).join().replace(/\d+/g, "");
      if (kinds.has(kind)) return;
      kinds.add(kind);
      run.findings.push({ text, thrown: words });
    }
  };
  for (const text of order.seeds) await execute(text);
  run.corpus.push(...order.seeds);
  coverage.fresh();
  while (run.runs < order.runs && Date.now() < until && run.findings.length < MOST_FINDINGS) {
    const batch = Array.from({ length: BATCH }, () =>
      // Half the time something kept lately, since that is where new ground is.
      mutator.changed(
        random() < 0.5 ? mutator.pick(run.corpus.slice(-20)) : mutator.pick(run.corpus),
        mutator.pick(run.corpus),
      ),
    );
    for (const text of batch) await execute(text);
    const before = new Set(coverage.known);
    if (coverage.fresh() === 0) continue;
    const reached = new Set(coverage.known);
    coverage.known.clear();
    for (const block of before) coverage.known.add(block);
    for (const text of batch) {
      await execute(text);
      if (coverage.fresh() > 0) run.corpus.push(text);
    }
    for (const block of reached) coverage.known.add(block);
    run.blocks = coverage.known.size;
  }
  run.blocks = coverage.known.size;
  coverage.end();
}
