/**
 * All mutants of one file of the engine against the truths: bundles it twice (to learn the cover, to try), asks of each mutant
 * only the truths that pass its place. A mutant that no truth passes is not covered, and counts as survived.
 */
import { mkdirSync } from "node:fs";
import { bundleTruths, SWITCH } from "./bundle.ts";
import { instrumented, type Mutant } from "./instrument.ts";
import type { Fate, Tried } from "./tally.ts";
import { VERDICT } from "./task.ts";
import { learnCover, tryAll } from "./threads.ts";

/** A truth slower than this is left out: each survivor would pay for it. */
const SLOWEST_MS = 500;

export interface Campaign {
  readonly tried: readonly Tried[];
  /** Truths asked, with their time; those too slow to ask; and those missed without any mutant, which count for nothing. */
  readonly truths: readonly { readonly name: string; readonly ms: number }[];
  readonly slow: readonly string[];
  readonly missed: readonly string[];
}

export async function tryFile(
  file: string,
  truthFiles: readonly string[],
  wanted: (mutant: Mutant) => boolean,
  mostMs = Infinity,
): Promise<Campaign> {
  const folder = "dist/mutants";
  mkdirSync(folder, { recursive: true });
  const base = `${folder}/${file.replaceAll("/", "-").replace(/\.ts$/, "")}`;
  const { text, mutants } = await instrumented(file, SWITCH);
  const [coverBundle, bundle] = [`${base}.cover.mjs`, `${base}.mjs`];
  await bundleTruths(coverBundle, truthFiles, { file, text }, true);
  await bundleTruths(bundle, truthFiles, { file, text }, false);
  const { loading, learned } = await learnCover(coverBundle);
  const asked = learned.map(({ missed, ms }) => missed === undefined && ms <= SLOWEST_MS);
  const covers: number[][] = mutants.map(() => []);
  for (const [truth, { passed }] of learned.entries()) {
    if (asked[truth]) for (const mutant of passed) covers[mutant]!.push(truth);
  }
  const all = learned.flatMap((_, truth) => (asked[truth] ? [truth] : []));
  for (const mutant of loading) covers[mutant] = all;
  const chosen = mutants.filter(wanted);
  const tasks = chosen
    .filter(({ number }) => covers[number]!.length > 0)
    .map(({ number }) => ({ number, truths: covers[number]! }));
  const ms = learned.map((truth) => truth.ms);
  const verdicts = await tryAll(bundle, mutants.length, tasks, new Set(loading), ms, mostMs);
  return {
    tried: chosen.map((mutant): Tried => {
      const verdict = verdicts[mutant.number]!;
      if (verdict >= 0) return { ...mutant, fate: "noticed", by: learned[verdict]!.name };
      return { ...mutant, fate: fateOf(verdict, covers[mutant.number]!.length) };
    }),
    truths: all.map((truth) => ({ name: learned[truth]!.name, ms: ms[truth]! })),
    slow: learned.filter(({ ms }) => ms > SLOWEST_MS).map(({ name, ms }) => `${name} (${Math.round(ms)} ms)`),
    missed: learned.flatMap(({ name, missed }) => (missed === undefined ? [] : [`${name}: ${missed}`])),
  };
}

function fateOf(verdict: number, covered: number): Fate {
  if (verdict === VERDICT.timedOut) return "timed out";
  return covered === 0 ? "not covered" : "survived";
}
