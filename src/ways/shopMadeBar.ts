/**
 * One shop-made bar brake for all the parts that it must make: window of its thickness, plan of real stock, and the made brake put
 * back under every part, over the whole range of leaf angles. Thickest by clearance from the engine, thinnest by strength.
 * Designed, then tried again with the holder, bolts, bed and leaf that came out, until these stay the same.
 * Bound: lengths that a file does not give are guessed; the result says so.
 */

import type { Trial } from "../jobFile/change.ts";
import type { Job } from "../jobFile/job.ts";
import { jobOf } from "../jobFile/readJob.ts";
import { SHARP_BAR } from "../jobFile/readShop.ts";
import type { JobFile } from "../jobFile/schema.ts";
import { designNarrowBrake } from "../narrowBrake/designNarrowBrake.ts";
import { madeBrakeFile } from "../narrowBrake/madeBrakeFile.ts";
import type { NarrowBrake } from "../narrowBrake/narrowBrake.ts";
import {
  MOST_LOST_IN_ALL,
  type NarrowBrakeWishes,
  resolvedGive,
  type SheetToFold,
} from "../narrowBrake/requirements.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { type BarLimits, type BarTrial, barLimits, thinnestBar } from "./barLimits.ts";
import {
  type BarMembers,
  BOLT_PLACES,
  barTrialBrake,
  LARGE_MEMBERS,
  membersOf,
  NARROW_MEMBERS,
  SMALL_MEMBERS,
  sameMembers,
} from "./barTrialBrake.ts";
import { Folders } from "./folders.ts";
import { type Outcome, outcomeOf } from "./folds.ts";
import { atEnd, type OverbendRange, overbendRange } from "./overbendRange.ts";
import { harderOf, sheetToFold } from "./sheetToFold.ts";
import { type Known, onBrake, throughRange, trialsOn } from "./trialsOn.ts";
import { Work } from "./work.ts";

type BrakeFile = JobFile["brake"];

export interface ShopMadeBar {
  readonly limits: BarLimits;
  readonly design: NarrowBrake;
  /** The made brake as a job file has it; null where there is no plan or the made brake does not make every part. */
  readonly brake: BrakeFile | null;
  /** How each part comes out on it, in the order of the parts; empty without a brake. */
  readonly outcomes: readonly Outcome[];
  /** Leaf angles over which each part was checked on it. */
  readonly ranges: readonly OverbendRange[];
  /** Names of parts whose length was guessed. */
  readonly guessedLengths: readonly string[];
}

export interface ShopMadeBarOptions {
  /** Safety factors, hand force, vise, steel, give: what the person wants otherwise than taken. */
  readonly wishes?: NarrowBrakeWishes;
  /** How much may be looked at; without end unless given. */
  readonly work?: Work;
}

/** Taken where a part gives no length along its bends. */
const GUESSED_LENGTH_MM: Mm = 300;
/** The front leans back this much more than the largest leaf angle asks for: common practice, no source. */
const BEVEL_SPARE_DEG: Deg = 0.5;
/** Face of the leaf where no part limits it. */
const LONG_LEAF_MM: Mm = 60;
/** Its height, likewise. */
const HIGH_LEAF_MM: Mm = 305;
/** Holder, bed and leaf mostly stay the same from the second round on. */
const MOST_ROUNDS = 4;

/**
 * The bar for these parts (their brakes are not looked at), or undefined where no bar makes them all.
 * @example shopMadeBar([trough]).design.window // thinnest and thickest bar
 */
export function shopMadeBar(
  files: readonly JobFile[],
  { wishes = {}, work = new Work() }: ShopMadeBarOptions = {},
): ShopMadeBar | undefined {
  const asked = files.map(onSharpBar);
  if (files.length === 0 || asked.some((job) => job === undefined)) return undefined;
  const jobs = asked.filter((job) => job !== undefined);
  const round = new Round(files, jobs, wishes, work);
  let refused: ShopMadeBar | undefined;
  for (const members of firstMembers()) {
    const found = settled(round, members);
    if (found?.brake || work.isDone) return found;
    refused = nearer(refused, found);
  }
  return refused;
}

/** Of two refusals the one that comes nearer to a brake: a longer one would do. */
function nearer(one: ShopMadeBar | undefined, other: ShopMadeBar | undefined): ShopMadeBar | undefined {
  const longest = (bar: ShopMadeBar | undefined) => bar?.design.refused?.longestMm ?? -1;
  return longest(other) > longest(one) ? other : (one ?? other);
}

function* firstMembers(): Generator<BarMembers> {
  for (const sized of [LARGE_MEMBERS, SMALL_MEMBERS])
    for (const boltsBehindMm of BOLT_PLACES) yield { ...sized, boltsBehindMm };
  yield NARROW_MEMBERS;
}

/** A part on the thinnest bar that anybody would take, at the high end of its leaf angles; undefined where its file can't be read so. */
export function onThinnestBar(file: JobFile): Job | undefined {
  const job = onSharpBar(file);
  return job && new Round([file], [job], {}, new Work()).thinnest(0);
}

/** Tried again with what came out, until it stays the same. */
function settled(round: Round, first: BarMembers): ShopMadeBar | undefined {
  let members = first;
  let found: ShopMadeBar | undefined;
  for (let count = 0; count < MOST_ROUNDS; count++) {
    const bar = round.heldBy(members);
    // A round that comes out worse leaves the one before.
    if (bar === undefined || (found?.brake && !bar.brake)) return found;
    found = bar;
    const planned = bar.design.plan && membersOf(bar.design.plan);
    if (!planned || sameMembers(planned, members)) return found;
    members = planned;
  }
  return found;
}

/** One bar after the other for the same parts, each held by other members. */
class Round {
  private readonly folders: Folders;
  private readonly units: LengthUnit;
  private readonly nose: Pick<BarTrial, "noseRadiusMm" | "frontBevelDeg">;
  private readonly ranges: readonly OverbendRange[];
  /** The parts with each leaf angle as likely and no doubt of it … */
  private readonly files: readonly JobFile[];
  /** … and at the high and the low end of its range. */
  private readonly high: readonly JobFile[];
  private readonly low: readonly JobFile[];
  /** Bars tried before, by all that a part can meet of them: rounds that differ in their bolts try many alike. */
  private readonly tried = new Map<string, boolean>();
  private readonly held = new Map<string, ShopMadeBar | undefined>();

  constructor(
    files: readonly JobFile[],
    private readonly jobs: readonly Job[],
    private readonly wishes: NarrowBrakeWishes,
    private readonly work: Work,
  ) {
    this.folders = new Folders(work);
    this.units = files[0]?.units ?? "in";
    const lostDeg = MOST_LOST_IN_ALL * resolvedGive(wishes).angleDeg;
    this.ranges = jobs.map((job, i) => overbendRange(files[i]!, job, lostDeg));
    this.files = files.map((file, i) => atEnd(file, this.ranges[i]!, "likelyDeg"));
    this.high = files.map((file, i) => atEnd(file, this.ranges[i]!, "highDeg"));
    this.low = files.map((file, i) => atEnd(file, this.ranges[i]!, "lowDeg"));
    this.nose = {
      noseRadiusMm: Math.min(...jobs.flatMap((job) => job.askedInsideRadiiMm)),
      frontBevelDeg: bevelFor(this.ranges),
    };
  }

  thinnest(part: number): Job | undefined {
    const file = this.high[part]!;
    const brake = barTrialBrake(
      thinnestBar(this.nose),
      { ...SMALL_MEMBERS, boltsBehindMm: null },
      file.units,
    );
    const { order: _, ...rest } = file;
    const read = jobOf({ ...rest, brake });
    return read.ok ? read.job : undefined;
  }

  /** The bar that these members hold, designed; undefined where none makes the parts or the work ran out. */
  heldBy(members: BarMembers): ShopMadeBar | undefined {
    const key = JSON.stringify(members);
    if (!this.held.has(key)) this.held.set(key, this.designedFor(members));
    return this.held.get(key);
  }

  private designedFor(members: BarMembers): ShopMadeBar | undefined {
    const { nose, high, work } = this;
    const on = (of: readonly JobFile[], bar: BarTrial) =>
      trialsOn(of, (units) => barTrialBrake(bar, members, units));
    const makes = (bar: BarTrial) => this.makes((units) => barTrialBrake(bar, members, units));
    const limits = barLimits(nose, makes, this.units);
    if (limits === undefined || work.isDone) return undefined;
    const { thickestMm, overhangMm, leafFaceMaxMm, leafHighMaxMm, liftMm } = limits;
    const leaf = { leafFaceMm: leafFaceMaxMm ?? LONG_LEAF_MM, leafHighMm: leafHighMaxMm ?? HIGH_LEAF_MM };
    const trials = on(high, { ...nose, ...leaf, thicknessMm: thickestMm, overhangMm, liftMm });
    if (trials === undefined) return undefined;
    const guessedLengths = trials.flatMap(({ part }) => (part.lengthMm === undefined ? [part.name] : []));
    return { limits, ranges: this.ranges, ...this.designed(trials, limits), guessedLengths };
  }

  /** Whether every part folds on this bar, at its likely leaf angles and at the highest. */
  private makes(brakeIn: (units: LengthUnit) => BrakeFile): boolean {
    const brakes = { in: brakeIn("in"), mm: brakeIn("mm") };
    const key = JSON.stringify(brakes.mm);
    const before = this.tried.get(key);
    if (before !== undefined) return before;
    let known: Known | undefined;
    const made = [...this.high, ...this.files].every((file, i) => {
      known = onBrake(file, brakes[file.units], known);
      return known !== undefined && this.folders.fold(i, known.job);
    });
    if (!this.work.isDone) this.tried.set(key, made);
    return made;
  }

  /** The design, strong enough for the order in which each part is folded on the brake that comes of it. */
  private designed(
    trials: readonly Trial[],
    limits: BarLimits,
  ): Pick<ShopMadeBar, "design" | "brake" | "outcomes"> {
    let sheets = trials.map((trial, i) => sheetOf(trial, outcomeOf(trial, this.marginOf(i))));
    for (;;) {
      const design = this.designFor(sheets, limits);
      if (design.plan === null) return { design, brake: null, outcomes: [] };
      const brakeIn = (units: LengthUnit) => madeBrakeFile(design, units);
      const made = this.overRange(brakeIn);
      // Offered only where every part folds on the planned brake, at every leaf angle of its range.
      if (made === undefined) return { design, brake: null, outcomes: [] };
      const harder = sheets.map((sheet, i) => harderOf(sheet, sheetOf(made.trials[i]!, made.outcomes[i]!)));
      if (harder.every((sheet, i) => asksTheSame(sheet, sheets[i]!))) {
        return { design, brake: brakeIn(this.units), outcomes: made.outcomes };
      }
      sheets = harder;
    }
  }

  /** How the parts come out at the likely leaf angle in an order that also does at both ends of the range; undefined where some don't. */
  private overRange(brakeIn: (units: LengthUnit) => BrakeFile) {
    const [likely, high, low] = [this.files, this.high, this.low].map((of) => trialsOn(of, brakeIn));
    if (!likely || !high || !low) return undefined;
    const outcomes: Outcome[] = [];
    for (const [i, trial] of likely.entries()) {
      const outcome = throughRange([trial, high[i]!, low[i]!], this.marginOf(i));
      if (outcome === undefined) return undefined;
      outcomes.push(outcome);
    }
    return { trials: high, outcomes };
  }

  private designFor(parts: readonly SheetToFold[], limits: BarLimits): NarrowBrake {
    const { thickestMm, overhangMm, holderDepthMaxMm, leafFaceMaxMm, leafHighMaxMm, liftMm } = limits;
    return designNarrowBrake({
      ...this.wishes,
      ...this.nose,
      units: this.units,
      parts,
      thickestByClearanceMm: thickestMm,
      overhangMm,
      ...(holderDepthMaxMm !== null && { holderDepthMaxMm }),
      ...(leafFaceMaxMm !== null && { leafFaceMaxMm }),
      ...(leafHighMaxMm !== null && { leafHighMaxMm }),
      liftMm,
    });
  }

  private marginOf(place: number): Mm {
    return this.jobs[place]?.marginMm ?? 0;
  }
}

function sheetOf(trial: Trial, { order }: Outcome): SheetToFold {
  return sheetToFold(trial, order, trial.part.lengthMm ?? GUESSED_LENGTH_MM);
}

function asksTheSame(a: SheetToFold, b: SheetToFold): boolean {
  return (
    a.shortestFlangeMm === b.shortestFlangeMm &&
    a.shortestClampedMm === b.shortestClampedMm &&
    a.deepestClampedMm === b.deepestClampedMm
  );
}

function onSharpBar(file: JobFile): Job | undefined {
  const { order: _, ...rest } = file;
  const read = jobOf({ ...rest, brake: SHARP_BAR });
  return read.ok ? read.job : undefined;
}

/** The bar's front clears the flange at the largest leaf angle of any bend. */
function bevelFor(ranges: readonly OverbendRange[]): Deg {
  const highest = Math.max(...ranges.flatMap(({ bends }) => bends.map(({ highDeg }) => highDeg)));
  return Math.max(0, Math.ceil(highest - 90 + BEVEL_SPARE_DEG));
}
