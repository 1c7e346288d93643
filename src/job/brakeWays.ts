/**
 * Ways out with another brake: one that the shop has, or a clamp bar to be made. The part's file is read anew on it
 * and run again; a brake that cannot form the part's radius is none.
 */
import { THICKEST_MM } from "../remedy/barLimits.ts";
import { OTHER_BRAKE_COST, SHOP_BAR_COST } from "../remedy/cost.ts";
import { type Outcome, outcomeOf, WHOLE_SEARCH } from "../remedy/folds.ts";
import { type Goal, reaches } from "../remedy/handling.ts";
import { largestFigure, leastFigure } from "../remedy/shopMade/shopMark.ts";
import { Work } from "../remedy/work.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { forceWarnings } from "./forceWarnings.ts";
import type { Job } from "./job.ts";
import { jobOf } from "./readJob.ts";
import type { JobFile } from "./schema.ts";
import { type ShopMadeBar, shopMadeBar } from "./shopMadeBar.ts";
import type { FileChange, WayOut } from "./wayOut.ts";
import { lengthIn, outcomeWords } from "./wayWords.ts";

/** How much may be looked at for a bar: some seconds at 20 bends. */
const MOST_BAR_STATES = 200_000;

type BrakeFile = JobFile["brake"];

/** The file on another brake; a user's own order, meant for the first one, is left out. */
export function withBrake(file: JobFile, brake: BrakeFile): JobFile {
  const { order: _, ...rest } = file;
  return { ...rest, brake };
}

/** The shop's other brakes that make the part. */
export function otherBrakes(file: JobFile, job: Job, goal: Goal, brakes: readonly BrakeFile[]): WayOut[] {
  return brakes.flatMap((brake): WayOut[] => {
    const outcome = outcomeOn(file, job, brake);
    if (!outcome || !reaches(outcome, goal)) return [];
    const sentence = `Use ${brake.name}: ${outcomeWords(outcome, job.units)}.`;
    return [{ kind: "otherBrake", sentence, ...told(outcome, brake), cost: OTHER_BRAKE_COST }];
  });
}

/** A clamp bar to be made for this part, where one would clear and stock is strong enough; else nothing. */
export function barToMake(file: JobFile, job: Job, goal: Goal): { ways: WayOut[]; cutShort: boolean } {
  const work = new Work(MOST_BAR_STATES);
  const bar = shopMadeBar([file], { work });
  const ways = bar?.brake ? barWays(file, job, goal, bar, bar.brake) : [];
  return { ways, cutShort: work.isDone };
}

function barWays(file: JobFile, job: Job, goal: Goal, bar: ShopMadeBar, brake: BrakeFile): WayOut[] {
  const outcome = outcomeOn(file, job, brake);
  if (!outcome || !reaches(outcome, goal)) return [];
  const { window } = bar.design;
  return [
    {
      kind: "shopBar",
      sentence: `${barWords(bar, job)}: ${outcomeWords(outcome, job.units)}.`,
      because: barReasons(bar, job),
      ...told(outcome, brake),
      cost: SHOP_BAR_COST,
      to: bar.design.plan?.bar.thicknessMm ?? window.thinnestMm,
      bar: {
        thinnest: window.thinnestMm,
        thickest: window.thickestMm,
        overhang: bar.limits.overhangMm,
        stock: window.stockInsideMm,
      },
    },
  ];
}

function outcomeOn(file: JobFile, job: Job, brake: BrakeFile): Outcome | undefined {
  const read = jobOf(withBrake(file, brake));
  // Where the part is longer or stronger than the brake is rated for, it is no way out.
  if (!read.ok || forceWarnings(read.job, (mm) => lengthIn(mm, job.units)).length > 0) return undefined;
  return outcomeOf(read.job, job.marginMm);
}

function told(outcome: Outcome & { verdict: "clear" | "tight" }, brake: BrakeFile) {
  const { verdict, clearanceMm, order } = outcome;
  // Where not all orders are ranked, the one that was found goes with the brake.
  const along: FileChange[] = order.length > WHOLE_SEARCH ? [{ kind: "order", order }] : [];
  return { changes: [{ kind: "brake", brake }, ...along], verdict, clearance: clearanceMm, order } as const;
}

function barWords({ design, limits }: ShopMadeBar, { units }: Job): string {
  const overhang = lengthIn(limits.overhangMm, units);
  const thickness = windowWords(design.window.stockInsideMm, limits.thickestMm, units);
  return `Make a brake with a clamp bar ${thickness} that stands out ${overhang} in front of its holder`;
}

/** Stock thicknesses of a window in words. @example windowWords([4.7625, 6.35], 7.5, "in") // "3/16 to 1/4 in thick" */
export function windowWords(stockMm: readonly Mm[], thickestMm: Mm, units: LengthUnit): string {
  const [thinnest, thickest] = [stockMm[0] ?? 0, stockMm.at(-1) ?? 0];
  if (thickestMm >= THICKEST_MM) return `${lengthIn(thinnest, units)} thick or more`;
  if (thinnest === thickest) return `${lengthIn(thinnest, units)} thick`;
  return `${formatLength(thinnest, units)} to ${lengthIn(thickest, units)} thick`;
}

function barReasons({ design, guessedLengths }: ShopMadeBar, { units }: Job): string {
  const { thinnestMm, thickestMm, governs } = design.window;
  const lack = governs === "nose" ? "round" : governs === "strength" ? "strong" : "stiff";
  const thickest =
    thickestMm >= THICKEST_MM
      ? ""
      : `, thicker than ${largestFigure(thickestMm, units)} ${units} does not clear`;
  const guess = guessedLengths.length > 0 ? " The length of the part is guessed: give it." : "";
  return `Thinner than ${leastFigure(thinnestMm, units)} ${units} is not ${lack} enough${thickest}.${guess}`;
}
