/**
 * Every part of a shop on every brake: which folds where, how it comes out, which bend is the worst, and what one
 * clamp bar would add. Plain data, lengths in mm, bends from 1, parts and brakes by their place from 0.
 */

import { check } from "../answer/check.ts";
import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { problemSentence } from "../jobFile/problem.ts";
import { jobOf } from "../jobFile/readJob.ts";
import { jobFileOf } from "../jobFile/readShop.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { Shop } from "../jobFile/shopFile.ts";
import { type FitCell, isMade, type ShopBar, type ShopFit } from "../jobFile/shopFit.ts";
import { overloadSentence } from "../words/refusalWords.ts";
import { barForParts } from "./shopBar.ts";

/** More parts than these without a brake are not tried one by one for a bar. */
const MOST_FOR_BAR = 24;

/**
 * The whole table and the bar.
 * @example fitShop(shop).cells[0]?.[0]?.verdict // "clear"
 */
export function fitShop(shop: Shop): ShopFit {
  const known = shop.brakes.map((): { file: JobFile; job: Job } | undefined => undefined);
  const cells = shop.parts.map((part) =>
    shop.brakes.map((brake, b): FitCell => {
      const file = jobFileOf(shop, part, brake);
      const read = jobOf(file, known[b]);
      if (!read.ok) return unfit(read.problems[0] && problemSentence(read.problems[0]));
      known[b] = { file, job: read.job };
      const { job } = read;
      const overload = overloadSentence(job);
      return overload === undefined ? cellOf(check(job)) : unfit(overload);
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

function unfit(because: string | undefined): FitCell {
  return {
    verdict: "unfit",
    clearance: null,
    worstBend: null,
    stopsAt: null,
    order: [],
    because: because ?? null,
  };
}

function cellOf(answer: Answer): FitCell {
  const worst = worstStep(answer);
  const stops = worst?.verdict === "hits" ? worst.reached : null;
  return {
    verdict: answer.verdict,
    clearance: worst?.verdict === "hits" ? null : (worst?.clearance ?? null),
    worstBend: worst?.bend ?? null,
    stopsAt: stops,
    order: answer.order.map(({ bend, clamped }) => ({ bend, clamped })),
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

function barFor(shop: Shop, unmade: readonly number[]): ShopBar | null {
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
    length: plan.places.barLongMm,
    makes: found.makes.map((i) => unmade[i]!),
    brake: found.brake,
  };
}

/** Jobs of the parts that no brake makes, each on the shop's first brake. */
export function unmadeFiles(shop: Shop, unmade: readonly number[]): JobFile[] {
  return unmade.map((part) => jobFileOf(shop, shop.parts[part]!, shop.brakes[0]!));
}
