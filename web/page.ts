/**
 * What every panel can reach: the store, the standing answer, and which step is looked at. One object for the
 * whole page, handed down by context, so that a panel needs nothing but itself and this.
 */
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Answer } from "../src/jobFile/answer.ts";
import type { Job } from "../src/jobFile/job.ts";
import type { Look } from "./look.ts";
import type { JobFile } from "./store/jobFile.ts";
import type { Snapshot, Store } from "./store/store.ts";
import type { WholeShown } from "./whole/wholeShown.ts";
import type { Asker } from "./worker/asker.ts";
import type { Problem, Way } from "./worker/messages.ts";

/** The answer that stands at the top, and what it belongs to. */
export interface Standing {
  /** The file that this answer is about. */
  readonly file: JobFile | null;
  readonly problems: readonly Problem[];
  readonly job: Job | null;
  /** The file that `job` was read from: drawings tell its figures. */
  readonly jobFile: JobFile | null;
  readonly answer: Answer | null;
  /** The answer of a whole part; job and answer are null then. */
  readonly whole: WholeShown | null;
  /** Ways out of this answer once they are found; null until then, or where none is wanted. */
  readonly ways: readonly Way[] | null;
  /** A sentence when the answer could not be worked out at all. */
  readonly failed: string | null;
  /** True while a newer file is being worked on. */
  readonly working: boolean;
  /** How many orders have been looked at, on long searches. */
  readonly progress: string | null;
  /** Said when the worker had stopped by itself and was started again for this answer. */
  readonly restarted: string | null;
}

export interface Page {
  readonly store: Store;
  readonly snapshot: Snapshot;
  readonly standing: Standing;
  readonly look: Look;
  /** A second worker, for comparisons and imports, so that the answer never waits for them. */
  readonly asker: Asker;
  /** Saves a text as a file; where the browser won't take it a line says so and gives the text to copy. */
  readonly save: (name: string, text: string, type?: string) => boolean;
}

export const PageContext = createContext<Page | null>(null);

/** The page, inside any panel. */
export function usePage(): Page {
  const page = useContext(PageContext);
  if (page === null) throw new Error("A panel stands outside the page.");
  return page;
}
