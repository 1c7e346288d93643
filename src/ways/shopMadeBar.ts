/**
 * One shop-made bar brake for all the parts that it must make: window of its thickness, plan of real stock, and the
 * made brake put back under every part. Thickest by clearance from the engine, thinnest by strength and stiffness.
 * Designed, then tried again with the holder, bed and leaf that came out, until these stay the same.
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
import type { NarrowBrakeWishes, SheetToFold } from "../narrowBrake/requirements.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { type BarLimits, type BarTrial, barLimits } from "./barLimits.ts";
import {
  type BarMembers,
  barTrialBrake,
  LARGE_MEMBERS,
  membersOf,
  SMALL_MEMBERS,
  sameMembers,
} from "./barTrialBrake.ts";
import { Folders } from "./folders.ts";
import { type Outcome, outcomeOf } from "./folds.ts";
import { harderOf, sheetToFold } from "./sheetToFold.ts";
import { Work } from "./work.ts";

type BrakeFile = JobFile["brake"];

export interface ShopMadeBar {
  readonly limits: BarLimits;
  readonly design: NarrowBrake;
  /** The made brake as a job file has it; null where there is no plan or the made brake does not make every part. */
  readonly brake: BrakeFile | null;
  /** How each part comes out on it, in the order of the parts; empty without a brake. */
  readonly outcomes: readonly Outcome[];
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
/** The front leans back this much more than the overbend asks for: common practice, no source. */
const BEVEL_SPARE_DEG: Deg = 1;
/** Face of the leaf where no part limits it. */
const LONG_LEAF_MM: Mm = 60;
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
  const round = new Round(
    files,
    asked.filter((job) => job !== undefined),
    wishes,
    work,
  );
  let members = LARGE_MEMBERS;
  let found: ShopMadeBar | undefined;
  for (let count = 0; count < MOST_ROUNDS; count++) {
    const bar = round.heldBy(members) ?? (count === 0 ? round.heldBy(SMALL_MEMBERS) : undefined);
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

  constructor(
    private readonly files: readonly JobFile[],
    private readonly jobs: readonly Job[],
    private readonly wishes: NarrowBrakeWishes,
    private readonly work: Work,
  ) {
    this.folders = new Folders(work);
    this.units = files[0]?.units ?? "in";
    this.nose = {
      noseRadiusMm: Math.min(...jobs.flatMap((job) => job.askedInsideRadiiMm)),
      frontBevelDeg: bevelFor(jobs),
    };
  }

  /** The bar that these members hold, designed; undefined where none makes the parts or the work ran out. */
  heldBy(members: BarMembers): ShopMadeBar | undefined {
    const { nose, files, work } = this;
    const trialsWith = (bar: BarTrial) => trialsOn(files, (units) => barTrialBrake(bar, members, units));
    const makes = (bar: BarTrial) =>
      trialsWith(bar)?.every((trial, i) => this.folders.fold(i, trial)) ?? false;
    const limits = barLimits(nose, makes, this.units);
    if (limits === undefined || work.isDone) return undefined;
    const { thickestMm, overhangMm, leafFaceMaxMm, liftMm } = limits;
    const leafFaceMm = leafFaceMaxMm ?? LONG_LEAF_MM;
    const trials = trialsWith({ ...nose, thicknessMm: thickestMm, overhangMm, leafFaceMm, liftMm });
    if (trials === undefined) return undefined;
    const designed = this.designed(trials, limits);
    const guessedLengths = trials.flatMap(({ part }) => (part.lengthMm === undefined ? [part.name] : []));
    return { limits, ...designed, guessedLengths };
  }

  /** The design, strong enough for the order in which each part is folded on the brake that comes of it. */
  private designed(
    trials: readonly Trial[],
    limits: BarLimits,
  ): Pick<ShopMadeBar, "design" | "brake" | "outcomes"> {
    let sheets = trials.map((trial, i) => sheetOf(trial, outcomeOf(trial, this.marginOf(i))));
    for (;;) {
      const design = this.designFor(sheets, limits);
      const made = design.feasible
        ? trialsOn(this.files, (units) => madeBrakeFile(design, units))
        : undefined;
      const outcomes = made?.map((trial, i) => outcomeOf(trial, this.marginOf(i)));
      // Offered only where every part folds on the planned brake.
      if (!made || !outcomes || outcomes.some(({ verdict }) => verdict === "hits")) {
        return { design, brake: null, outcomes: [] };
      }
      const harder = sheets.map((sheet, i) => harderOf(sheet, sheetOf(made[i]!, outcomes[i]!)));
      if (harder.every((sheet, i) => asksTheSame(sheet, sheets[i]!))) {
        return { design, brake: madeBrakeFile(design, this.units), outcomes };
      }
      sheets = harder;
    }
  }

  private designFor(parts: readonly SheetToFold[], limits: BarLimits): NarrowBrake {
    const { thickestMm, overhangMm, leafFaceMaxMm, liftMm } = limits;
    return designNarrowBrake({
      ...this.wishes,
      ...this.nose,
      units: this.units,
      parts,
      thickestByClearanceMm: thickestMm,
      overhangMm,
      ...(leafFaceMaxMm !== null && { leafFaceMaxMm }),
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

function trialsOn(files: readonly JobFile[], brakeIn: (units: LengthUnit) => BrakeFile): Trial[] | undefined {
  const trials: Trial[] = [];
  const brakes = { in: brakeIn("in"), mm: brakeIn("mm") };
  let known: { readonly file: JobFile; readonly job: Job } | undefined;
  for (const file of files) {
    const { order: _, ...rest } = file;
    const changed = { ...rest, brake: brakes[file.units] };
    // One brake for all: read once.
    const read = jobOf(changed, known);
    if (!read.ok) return undefined;
    known = { file: changed, job: read.job };
    trials.push(read.job);
  }
  return trials;
}

function onSharpBar(file: JobFile): Job | undefined {
  const { order: _, ...rest } = file;
  const read = jobOf({ ...rest, brake: SHARP_BAR });
  return read.ok ? read.job : undefined;
}

function bevelFor(jobs: readonly Job[]): Deg {
  const overbends = jobs.flatMap((job) => job.part.bends.map((bend) => bend.overbendDeg));
  return Math.max(0, Math.ceil(Math.max(...overbends) - 90 + BEVEL_SPARE_DEG));
}
