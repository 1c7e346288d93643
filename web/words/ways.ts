/**
 * The ways out that the engine proves, as sentences. The answer carries them as plain data; whatever has a sentence
 * is shown, anything else is passed over, so that an older page still shows what it can of a newer answer.
 */
import type { Answer } from "../../src/job/answer.ts";

export interface Way {
  readonly sentence: string;
  /** Where a source or reason stands beside it. */
  readonly because: string | null;
}

/** Every way out of an answer that can be read out. */
export function waysOf(answer: Answer): readonly Way[] {
  return answer.remedies.flatMap((remedy): Way[] => {
    if (typeof remedy !== "object" || remedy === null) return [];
    const { sentence, because } = remedy as { sentence?: unknown; because?: unknown };
    if (typeof sentence !== "string") return [];
    return [{ sentence, because: typeof because === "string" ? because : null }];
  });
}

/** The first way out, for the answer's own line; null when there is none. */
export function readableWay(answer: Answer): string | null {
  return waysOf(answer)[0]?.sentence ?? null;
}
