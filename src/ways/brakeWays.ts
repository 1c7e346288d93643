/**
 * Ways out with another brake: one that the shop has, or a clamp bar to be made. The part's file is read anew on it
 * and run again; a brake that cannot form the part's radius is none.
 */

import type { Tryout } from "../jobFile/change.ts";
import type { Job } from "../jobFile/job.ts";
import { jobOf } from "../jobFile/readJob.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { FileChange, WayOut } from "../jobFile/wayOut.ts";
import { overloadOf } from "../motion/rated.ts";
import { MOST_RANKED } from "../section/searchSection.ts";
import { barReasonWords, makeBarWords } from "../words/barWayWords.ts";
import { lengthIn, outcomeSentence } from "../words/wayWords.ts";
import { changedFile } from "./changeFile.ts";
import { OTHER_BRAKE_COST, SHOP_BAR_COST, TRIMMED_ON_OTHER_COST } from "./cost.ts";
import { flatsOf } from "./family.ts";
import { waysOfKind } from "./familyWay.ts";
import { type Outcome, outcomeOf } from "./folds.ts";
import { type Goal, reaches } from "./handling.ts";
import { Machines } from "./machines.ts";
import { Prober } from "./prober.ts";
import { type ShopMadeBar, shopMadeBar } from "./shopMadeBar.ts";
import { Work } from "./work.ts";

/** How much may be looked at for a bar: some seconds at 20 bends. */
const MOST_BAR_STATES = 200_000;

/** How much may be looked at for a flat to trim on one other brake. */
const MOST_TRIM_STATES = 60_000;

type BrakeFile = JobFile["brake"];

/** The file on another brake; a user's own order and what it left to the hand were meant for the first one. */
export function withBrake(file: JobFile, brake: BrakeFile): JobFile {
  const { order: _order, finishByHand: _byHand, ...rest } = file;
  return { ...rest, brake };
}

/** The shop's other brakes that make the part. */
export function otherBrakes(file: JobFile, job: Job, goal: Goal, brakes: readonly BrakeFile[]): WayOut[] {
  return brakes.flatMap((brake): WayOut[] => {
    const outcome = outcomeOn(file, job, brake);
    if (!outcome || !reaches(outcome, goal)) return [];
    const sentence = `Use ${brake.name}. ${outcomeSentence(outcome, job.units)}`;
    return [{ kind: "otherBrake", sentence, ...told(outcome, brake), cost: OTHER_BRAKE_COST }];
  });
}

/** The shop's other brakes with one flat trimmed: each brake that reads the part and does not make it as it is. */
export function trimmedOnOthers(file: JobFile, job: Job, goal: Goal, brakes: readonly BrakeFile[]): WayOut[] {
  return brakes.flatMap((brake): WayOut[] => {
    const on = withBrake(file, brake);
    const read = jobOf(on);
    if (!read.ok || overloadOf(read.job.part, read.job.brake) !== undefined) return [];
    const trial = read.job;
    const tryout: Tryout = (changes) => {
      const again = jobOf(changedFile(on, trial, changes), { file: on, job: trial });
      return again.ok ? again.job : undefined;
    };
    const prober = new Prober({
      trial,
      reached: [],
      goal,
      tryout,
      machines: new Machines(),
      work: new Work(MOST_TRIM_STATES),
    });
    const trims = flatsOf(trial).filter(({ kind }) => kind === "trimFlat");
    return waysOfKind(prober, trims, { units: job.units, marginMm: goal.marginMm })
      .slice(0, 1)
      .map(
        (way): WayOut => ({
          kind: "otherBrake",
          sentence: `Use ${brake.name}, and trim flat ${way.index} by ${lengthIn(Math.abs(way.to ?? 0), job.units)}. ${outcomeSentence(way, job.units)}`,
          changes: [{ kind: "brake", brake }, ...way.changes],
          verdict: way.verdict,
          clearance: way.clearanceMm,
          order: way.order,
          cost: TRIMMED_ON_OTHER_COST,
          ...(way.index !== undefined && { index: way.index }),
          ...(way.to !== undefined && { from: 0, to: way.to }),
        }),
      );
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
      sentence: `${makeBarWords({ ...window, thickestMm: bar.limits.thickestMm }, bar.limits.overhangMm, job.units)}. ${outcomeSentence(outcome, job.units)}`,
      because: barReasonWords(window, bar.guessedLengths.length > 0, job.units),
      ...told(outcome, brake),
      cost: SHOP_BAR_COST,
      to: bar.design.plan?.sizes.barMm ?? window.thinnestMm,
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
  if (!read.ok || overloadOf(read.job.part, read.job.brake) !== undefined) return undefined;
  return outcomeOf(read.job, job.marginMm);
}

function told(outcome: Outcome & { verdict: "clear" | "tight" }, brake: BrakeFile) {
  const { verdict, clearanceMm, order } = outcome;
  // Where not all orders are ranked, the one that was found goes with the brake.
  const along: FileChange[] = order.length > MOST_RANKED ? [{ kind: "order", order }] : [];
  return { changes: [{ kind: "brake", brake }, ...along], verdict, clearance: clearanceMm, order } as const;
}
