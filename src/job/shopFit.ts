/**
 * Every part of a shop on every brake: which folds where, how it comes out, which bend is the worst, and what one
 * clamp bar would add. Plain data, lengths in mm, bends from 1, parts and brakes by their place from 0.
 */
import type { Deg, Mm } from "../units/quantity.ts";
import type { Answer, StepAnswer } from "./answer.ts";
import { check } from "./check.ts";
import { forceWarnings } from "./forceWarnings.ts";
import type { Job } from "./job.ts";
import { problemSentence } from "./problem.ts";
import { jobOf } from "./readJob.ts";
import { jobFileOf } from "./readShop.ts";
import type { JobFile } from "./schema.ts";
import { barForParts } from "./shopBar.ts";
import type { ShopFile } from "./shopFile.ts";
import { lengthIn } from "./wayWords.ts";

/** One part on one brake. */
export interface FitCell {
  /** `unfit`: longer or stronger than the brake is rated for, or a radius that its nose can't form, whatever the order. */
  readonly verdict: "clear" | "tight" | "hits" | "unfit";
  /** Null where nothing is near, or nothing was measured. */
  readonly clearance: Mm | null;
  /** The bend that comes nearest, or the one that hits; null where there is none. */
  readonly worstBend: number | null;
  /** Leaf angle at which the worst bend stops; null where it does not. */
  readonly stopsAt: Deg | null;
  /** Why it is unfit, as a sentence. */
  readonly because: string | null;
}

export interface ShopBar {
  readonly thinnest: Mm;
  readonly thickest: Mm;
  readonly stock: readonly Mm[];
  readonly overhang: Mm;
  readonly length: Mm;
  /** Parts that it makes. */
  readonly makes: readonly number[];
  /** The planned brake, as a job file has it. */
  readonly brake: JobFile["brake"];
}

export interface ShopFit {
  readonly parts: readonly string[];
  readonly brakes: readonly string[];
  /** A row a part, a cell a brake. */
  readonly cells: readonly (readonly FitCell[])[];
  /** Parts that no brake of the shop makes. */
  readonly unmade: readonly number[];
  /** One clamp bar for as many of them as one bar can make; null where it makes none. */
  readonly bar: ShopBar | null;
}

/** More parts than these without a brake are not tried one by one for a bar. */
const MOST_FOR_BAR = 24;

/**
 * The whole table and the bar.
 * @example fitShop(shop).cells[0]?.[0]?.verdict // "clear"
 */
export function fitShop(shop: ShopFile): ShopFit {
  const known = shop.brakes.map((): { file: JobFile; job: Job } | undefined => undefined);
  const cells = shop.parts.map((part) =>
    shop.brakes.map((brake, b): FitCell => {
      const file = jobFileOf(shop, part, brake);
      const read = jobOf(file, known[b]);
      if (!read.ok) return unfit(read.problems[0] && problemSentence(read.problems[0]));
      known[b] = { file, job: read.job };
      const { job } = read;
      const overRating = forceWarnings(job, (mm) => lengthIn(mm, job.units));
      return overRating.length > 0 ? unfit(overRating.join(" ")) : cellOf(check(job));
    }),
  );
  const unmade = cells.flatMap((row, i) => (row.some(isMade) ? [] : [i]));
  return {
    parts: shop.parts.map(({ name }) => name),
    brakes: shop.brakes.map(({ name }) => name),
    cells,
    unmade,
    bar: barFor(shop, unmade),
  };
}

/** Whether the part folds there. */
export function isMade({ verdict }: FitCell): boolean {
  return verdict === "clear" || verdict === "tight";
}

function unfit(because: string | undefined): FitCell {
  return { verdict: "unfit", clearance: null, worstBend: null, stopsAt: null, because: because ?? null };
}

function cellOf(answer: Answer): FitCell {
  const worst = worstStep(answer);
  const stops = worst?.verdict === "hits" ? worst.reached : null;
  return {
    verdict: answer.verdict,
    clearance: worst?.verdict === "hits" ? null : (worst?.clearance ?? null),
    worstBend: worst?.bend ?? null,
    stopsAt: stops,
    because: null,
  };
}

/** The step that hits, else the one with the least clearance. */
function worstStep({ order }: Answer): StepAnswer | undefined {
  const blocked = order.find(({ verdict }) => verdict === "hits");
  if (blocked) return blocked;
  const measured = order.filter(({ clearance }) => clearance !== null);
  return measured.toSorted((a, b) => (a.clearance ?? 0) - (b.clearance ?? 0))[0];
}

function barFor(shop: ShopFile, unmade: readonly number[]): ShopBar | null {
  if (unmade.length > MOST_FOR_BAR) return null;
  const { found } = barForParts(unmadeFiles(shop, unmade));
  const plan = found?.bar.design.plan;
  if (!found || !plan) return null;
  const { thinnestMm, thickestMm, stockInsideMm } = found.bar.design.window;
  return {
    thinnest: thinnestMm,
    thickest: thickestMm,
    stock: stockInsideMm,
    overhang: found.bar.limits.overhangMm,
    length: plan.bar.lengthMm,
    makes: found.makes.map((i) => unmade[i]!),
    brake: found.brake,
  };
}

/** Jobs of the parts that no brake makes, each on the shop's first brake. */
export function unmadeFiles(shop: ShopFile, unmade: readonly number[]): JobFile[] {
  return unmade.map((part) => jobFileOf(shop, shop.parts[part]!, shop.brakes[0]!));
}
