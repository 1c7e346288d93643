/**
 * A small coverage-guided fuzzer: texts that reach code not reached before are kept and changed further. What is reached
 * comes from marks that the bundler lays at every branch of the readers (counted.mjs), so that asking costs next to nothing
 * and each text is asked about by itself.
 */
import { chance, Mutator } from "./mutate.ts";

export interface Finding {
  readonly text: string;
  readonly thrown: string;
}

export interface FuzzRun {
  runs: number;
  /** Branches reached. */
  branches: number;
  corpus: string[];
  findings: Finding[];
}

/** The branches reached so far: one byte each, set by the marks. */
class Ground {
  private readonly reached: Uint8Array;
  private readonly known: Uint8Array;

  constructor() {
    const { noseroomReached } = globalThis as { noseroomReached?: Uint8Array };
    this.reached = noseroomReached ?? new Uint8Array(0);
    this.known = new Uint8Array(this.reached.length);
  }

  /** Whether some branch ran that never had before; it is known from now on. */
  isNew(): boolean {
    if (Buffer.compare(this.reached, this.known) === 0) return false;
    this.known.set(this.reached);
    return true;
  }

  get branches(): number {
    return this.known.reduce((sum, mark) => sum + mark, 0);
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
/** The clock is looked at once in so many executions. */
const BATCH = 64;

/** Runs the reader on its seeds and on what comes of them. */
export async function fuzz(order: Order, run: FuzzRun): Promise<void> {
  const random = chance(order.seed);
  const mutator = new Mutator(random);
  const ground = new Ground();
  const until = Date.now() + order.seconds * 1000;
  const kinds = new Set<string>();
  const { corpus } = run;
  const find = (text: string, thrown: unknown) => {
    const words = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
    // One finding a kind: the message without figures, and where it was thrown.
    const kind = words.split("\n").slice(0, 3).join().replace(/\d+/g, "");
    if (kinds.has(kind)) return;
    kinds.add(kind);
    run.findings.push({ text, thrown: words });
  };
  const execute = async (text: string): Promise<void> => {
    order.onText?.(text);
    run.runs++;
    try {
      const later = order.reader(text);
      if (later) await later;
    } catch (thrown) {
      find(text, thrown);
    }
  };
  for (const text of order.seeds) await execute(text);
  corpus.push(...order.seeds);
  ground.isNew();
  while (run.runs < order.runs && Date.now() < until && run.findings.length < MOST_FINDINGS) {
    for (let i = 0; i < BATCH; i++) {
      // Half the time something kept lately, since that is where new ground is.
      const newest = random() < 0.5 ? Math.max(0, corpus.length - 20) : 0;
      const from = corpus[newest + mutator.below(corpus.length - newest)]!;
      const text = mutator.changed(from, mutator.pick(corpus));
      await execute(text);
      if (ground.isNew()) corpus.push(text);
    }
  }
  run.branches = ground.branches;
}
