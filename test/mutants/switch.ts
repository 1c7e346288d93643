/**
 * Which mutant is at work, how often its place was passed, and which mutants' places the running truth has passed. The
 * changed engine imports these; a mutant in what a module works out as it loads must be switched on before, so the
 * worker's first word is read here.
 */
import { workerData } from "node:worker_threads";

/** More than any one file has. */
const MOST_MUTANTS = 4096;

/** Number of the mutant at work; −1 for none. */
export let active: number = (workerData as { readonly first?: number } | null)?.first ?? -1;

export function activate(mutant: number): void {
  active = mutant;
}

/** What a loop that finds no end is stopped with. */
export const ENDLESS = "passed the mutant's place millions of times";
const MOST_HITS = 5e6;
let hits = 0;

/** Called each time the mutant at work is passed; true, so that it stands in the changed engine's switches. */
export function hit(): true {
  if (++hits > MOST_HITS) throw new Error(ENDLESS);
  return true;
}

export function forgetHits(): void {
  hits = 0;
}

/** A mark for each mutant whose place was passed; the changed engine sets them where a bundle is made to learn the cover. */
export const passed = new Uint8Array(MOST_MUTANTS);

/** The mutants passed since last asked. */
export function takePassed(): number[] {
  const taken: number[] = [];
  for (const [mutant, mark] of passed.entries()) if (mark === 1) taken.push(mutant);
  passed.fill(0);
  return taken;
}
