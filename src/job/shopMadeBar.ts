/**
 * One shop-made bar brake for all the parts that it must make: window of its thickness, plan of real stock, and the
 * made brake put back under every part. Thickest by clearance from the engine, thinnest by strength and stiffness.
 * Bound: lengths that a file does not give are guessed; the result says so.
 */
import { type BarLimits, type BarTrial, barLimits } from "../remedy/barLimits.ts";
import type { Trial } from "../remedy/change.ts";
import { Folders } from "../remedy/folders.ts";
import { type Outcome, outcomeOf } from "../remedy/folds.ts";
import { sheetToFold } from "../remedy/sheetToFold.ts";
import { designNarrowBrake } from "../remedy/shopMade/designNarrowBrake.ts";
import { madeBrake } from "../remedy/shopMade/madeBrake.ts";
import type { NarrowBrake } from "../remedy/shopMade/narrowBrake.ts";
import type { SheetToFold } from "../remedy/shopMade/requirements.ts";
import { Work } from "../remedy/work.ts";
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { Job } from "./job.ts";
import { jobOf } from "./readJob.ts";
import type { JobFile } from "./schema.ts";
import { writtenAtLeast, writtenLength } from "./writtenLength.ts";

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

/** Taken where a part gives no length along its bends. */
const GUESSED_LENGTH_MM: Mm = 300;
/** The front leans back this much more than the overbend asks for: common practice, no source. */
const BEVEL_SPARE_DEG: Deg = 1;
/** What the trial bar is held by: as large as any holder of the stock list, so that the real one clears too. */
const HOLDER_MM: Mm = 60;
const BAR_DEPTH_MM: Mm = 50;
const BED_HIGH_MM: Mm = 40;
const LEAF_HIGH_MM: Mm = 10;

/** Sharp nosed and square: every radius and angle can be read on it. */
const SHARP_BAR: BarTrial = {
  thicknessMm: 6,
  overhangMm: null,
  noseRadiusMm: 0,
  frontBevelDeg: 0,
  leafFaceMm: 20,
  liftMm: 20,
};

/**
 * The bar for these parts (their brakes are not looked at), or undefined where no bar makes them all.
 * @example shopMadeBar([trough]).design.window // thinnest and thickest bar
 */
export function shopMadeBar(files: readonly JobFile[], work = new Work()): ShopMadeBar | undefined {
  const [first] = files;
  const asked = files.map(onSharpBar);
  if (first === undefined || asked.some((job) => job === undefined)) return undefined;
  const jobs = asked.filter((job) => job !== undefined);
  const nose = {
    noseRadiusMm: Math.min(...jobs.flatMap((job) => job.askedInsideRadiiMm)),
    frontBevelDeg: bevelFor(jobs),
  };
  const folders = new Folders(work);
  const makes = (bar: BarTrial) =>
    trialsOn(files, (units) => barBrake(bar, units))?.every((trial, i) => folders.fold(i, trial)) ?? false;
  const limits = barLimits(nose, makes, first.units);
  if (limits === undefined || work.isDone) return undefined;
  const { thickestMm, overhangMm, leafFaceMaxMm, liftMm } = limits;
  const leafFaceMm = leafFaceMaxMm ?? HOLDER_MM;
  const trials = trialsOn(files, (units) =>
    barBrake({ ...nose, thicknessMm: thickestMm, overhangMm, leafFaceMm, liftMm }, units),
  );
  if (trials === undefined) return undefined;
  const design = designNarrowBrake({
    units: first.units,
    parts: trials.map((trial) =>
      sheetToFold(trial, outcomeOf(trial, 0).order, trial.part.lengthMm ?? GUESSED_LENGTH_MM),
    ),
    thickestByClearanceMm: thickestMm,
    overhangMm,
    noseRadiusMm: nose.noseRadiusMm,
    frontBevelDeg: nose.frontBevelDeg,
    ...(leafFaceMaxMm !== null && { leafFaceMaxMm }),
    liftMm,
  });
  const guessedLengths = trials
    .filter(({ part }) => part.lengthMm === undefined)
    .map(({ part }) => part.name);
  return { limits, design, ...proved(files, jobs, design), guessedLengths };
}

/** The planned brake under every part again: offered only where all of them fold on it. */
function proved(
  files: readonly JobFile[],
  jobs: readonly Job[],
  design: NarrowBrake,
): Pick<ShopMadeBar, "brake" | "outcomes"> {
  const none = { brake: null, outcomes: [] };
  if (!design.feasible) return none;
  const outcomes = trialsOn(files, (units) => brakeFileOf(design, units))?.map((trial, i) =>
    outcomeOf(trial, jobs[i]?.marginMm ?? 0),
  );
  if (!outcomes || outcomes.some((outcome) => outcome.verdict === "hits")) return none;
  return { brake: brakeFileOf(design, design.requirements.units), outcomes };
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
  const read = jobOf({ ...rest, brake: sharpBarBrake(file.units) });
  return read.ok ? read.job : undefined;
}

function bevelFor(jobs: readonly Job[]): Deg {
  const overbends = jobs.flatMap((job) => job.part.bends.map((bend) => bend.overbendDeg));
  return Math.max(0, Math.ceil(Math.max(...overbends) - 90 + BEVEL_SPARE_DEG));
}

/** A brake whose bar forms any radius, to read the parts' own figures with. */
export function sharpBarBrake(units: LengthUnit): BrakeFile {
  return barBrake(SHARP_BAR, units);
}

/** The trial bar as a job file of this unit has it, on a bed and leaf of plain rectangles. */
function barBrake(bar: BarTrial, units: LengthUnit): BrakeFile {
  // Plain numbers: reading written lengths would take longer than trying them.
  const inUnit = (lengthMm: Mm) => (units === "in" ? lengthMm / MM_PER_INCH : lengthMm);
  const rectangle = (fromX: Mm, toX: Mm, highMm: Mm): BrakeFile["bed"]["profile"] => [
    [inUnit(fromX), inUnit(-highMm)],
    [inUnit(toX), inUnit(-highMm)],
    [inUnit(toX), 0],
    [inUnit(fromX), 0],
  ];
  const { overhangMm } = bar;
  const depthMm = overhangMm === null ? BAR_DEPTH_MM : overhangMm + HOLDER_MM;
  const holder = overhangMm !== null && {
    holderBack: inUnit(overhangMm),
    holderHeight: inUnit(HOLDER_MM),
    holderDepth: inUnit(HOLDER_MM),
  };
  return {
    name: "clamp bar to be made",
    clamp: {
      type: "bar",
      thickness: inUnit(bar.thicknessMm),
      depth: inUnit(depthMm),
      noseRadius: inUnit(bar.noseRadiusMm),
      noseAngle: 90 - bar.frontBevelDeg,
      ...holder,
    },
    bed: { profile: rectangle(-depthMm, 0, BED_HIGH_MM) },
    leaf: { profile: rectangle(0, bar.leafFaceMm, LEAF_HIGH_MM), swing: 135 },
    lift: inUnit(bar.liftMm),
    openEnds: false,
  };
}

/** The made brake as a job file of this unit has it: stock sizes as they are called there. */
function brakeFileOf(design: NarrowBrake, units: LengthUnit): BrakeFile {
  const { clamp, bed, leaf, ...made } = madeBrake(design);
  const { parts } = design.requirements;
  // Rated for what it was designed for: the sheet that takes the most force, the longest part.
  const force = ({ metal, thicknessMm }: SheetToFold) => metal.yieldMpa * thicknessMm ** 2;
  const strongest = parts.reduce((most, part) => (force(part) > force(most) ? part : most));
  const inUnit = (lengthMm: Mm) => writtenLength(lengthMm, units);
  return {
    name: made.name,
    clamp: {
      type: "bar",
      thickness: inUnit(clamp.thickness),
      depth: inUnit(clamp.depth),
      noseRadius: inUnit(clamp.noseRadius),
      noseAngle: clamp.noseAngle,
      holderBack: inUnit(clamp.holderBack),
      holderHeight: inUnit(clamp.holderHeight),
      holderDepth: inUnit(clamp.holderDepth),
    },
    bed: { profile: bed.profile.map((corner) => corner.map(inUnit)) },
    leaf: { profile: leaf.profile.map((corner) => corner.map(inUnit)), swing: leaf.swing },
    lift: inUnit(made.lift),
    openEnds: made.openEnds,
    setback: made.setback,
    rated: {
      thickness: writtenAtLeast(strongest.thicknessMm, units),
      length: writtenAtLeast(Math.max(...parts.map(({ lengthMm }) => lengthMm)), units),
      yield: strongest.metal.yieldMpa,
    },
  };
}
