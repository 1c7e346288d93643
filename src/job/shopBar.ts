/**
 * One clamp bar for as many of some parts as one bar can make: all of them if it can, else taken one by one.
 * Greedy in the order of the file: another choice of parts may make as many, never one bar for all that was missed.
 */
import type { JobFile } from "./schema.ts";
import { type ShopMadeBar, shopMadeBar } from "./shopMadeBar.ts";

export interface BarForParts {
  readonly bar: ShopMadeBar;
  /** The made brake, as a job file has it. */
  readonly brake: JobFile["brake"];
  /** Which of the files it makes, from 0. */
  readonly makes: readonly number[];
}

/** The bar, or null where none makes any of the parts. */
export function barForParts(files: readonly JobFile[]): BarForParts | null {
  const barOf = (makes: readonly number[]): BarForParts | null => {
    const bar = shopMadeBar(makes.flatMap((i) => files[i] ?? []));
    return bar?.brake ? { bar, brake: bar.brake, makes } : null;
  };
  const every = files.map((_, i) => i);
  const all = barOf(every);
  if (all || every.length < 2) return all;
  return every.reduce<BarForParts | null>(
    (best, part) => barOf(best === null ? [part] : [...best.makes, part]) ?? best,
    null,
  );
}
