/**
 * One clamp bar for as many of some parts as one bar can make: all of them if it can, else taken one by one; and for
 * each part that is left, why.
 * Greedy in the order of the file: another choice of parts may make as many, never one bar for all that was missed.
 */
import { check } from "../answer/check.ts";
import type { JobFile } from "../jobFile/schema.ts";
import { refusalSentence } from "../narrowBrake/designNarrowBrake.ts";
import type { Refused } from "../narrowBrake/narrowBrake.ts";
import { NOT_WITH_THE_REST, noBarWords, notOnMadeWords } from "../words/barWayWords.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { onThinnestBar, type ShopMadeBar, type ShopMadeBarOptions, shopMadeBar } from "./shopMadeBar.ts";

export interface BarForParts {
  readonly bar: ShopMadeBar;
  /** The made brake, as a job file has it. */
  readonly brake: JobFile["brake"];
  /** Which of the files it makes, from 0. */
  readonly makes: readonly number[];
}

/** A part that the bar does not make. */
export interface LeftPart {
  /** Which of the files, from 0. */
  readonly part: number;
  /** Why, as a sentence. */
  readonly because: string;
  /** The same with the longest brake that would do; 0 where none would. */
  readonly refused: Refused;
}

export interface BarChoice {
  /** Null where no bar makes any of the parts. */
  readonly found: BarForParts | null;
  readonly left: readonly LeftPart[];
}

/** @example barForParts([trough, duct]).left[0]?.because // "No clamp bar makes it. On the thinnest, with no holder behind it, the part does not fold: …" */
export function barForParts(files: readonly JobFile[], wishes?: ShopMadeBarOptions["wishes"]): BarChoice {
  const barOf = (makes: readonly number[]) =>
    shopMadeBar(
      makes.flatMap((i) => files[i] ?? []),
      wishes && { wishes },
    );
  const every = files.map((_, i) => i);
  const all = barOf(every);
  if (all?.brake) return { found: { bar: all, brake: all.brake, makes: every }, left: [] };
  let found: BarForParts | null = null;
  const left: LeftPart[] = [];
  for (const part of every) {
    const makes: readonly number[] = [...(found?.makes ?? []), part];
    const bar = every.length === 1 ? all : barOf(makes);
    if (bar?.brake) found = { bar, brake: bar.brake, makes };
    else {
      const alone = makes.length === 1 ? bar : barOf([part]);
      const because = alone?.brake ? NOT_WITH_THE_REST : whyNot(alone, files[part]!);
      left.push({ part, because, refused: alone?.design.refused ?? { why: because, longestMm: 0 } });
    }
  }
  return { found, left };
}

function whyNot(alone: ShopMadeBar | undefined, file: JobFile): string {
  if (alone === undefined) {
    const job = onThinnestBar(file);
    const answer = job && check(job);
    return noBarWords(job && answer?.verdict === "hits" ? verdictSentence(job, answer) : undefined);
  }
  const { design } = alone;
  if (design.refused) return refusalSentence(design.refused, design.requirements.units);
  return notOnMadeWords(design.windowSentence);
}
