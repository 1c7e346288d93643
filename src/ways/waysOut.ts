/**
 * Ways out of a job that does not fold, or folds only just: the smallest changes that the engine has proved.
 * Joins the remedies to the job file: each size tried is the file changed, read anew and run again.
 */

import { warningsFor } from "../answer/warnings.ts";
import { OverRange } from "../contact/overRange.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { OrderedBend, Tryout } from "../jobFile/change.ts";
import { finishedPart, type Job, type OrderStep } from "../jobFile/job.ts";
import { orderMade } from "../jobFile/orderMade.ts";
import { jobOf } from "../jobFile/readJob.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { Way } from "../jobFile/way.ts";
import type { FileChange, Remedy, WayOut } from "../jobFile/wayOut.ts";
import { parseLength } from "../units/length.ts";
import { untriedWords } from "../words/noWayWords.ts";
import { clearWords, limitWords, scantWords, waySentence } from "../words/wayWords.ts";
import { barToMake, otherBrakes, trimmedOnOthers, withBrake } from "./brakeWays.ts";
import { byHandRecipe } from "./byHand.ts";
import { changedFile } from "./changeFile.ts";
import { LAST_COST } from "./cost.ts";
import type { ClampMeasures } from "./family.ts";
import { fillerThickness } from "./filler.ts";
import { findWays, type Situation } from "./findWays.ts";
import { Machines } from "./machines.ts";
import { whyNothingHelps } from "./noWay.ts";
import { partWay } from "./partWay.ts";

/** Less to spare than this is not measured in a shop. */
const SPARE_MM = 0.1;

/**
 * The file as it is with the changes of a way out. `job` is what the unchanged file reads as.
 * @example applied(file, job, way.changes) // a job file to check, show or save
 */
export function applied(file: JobFile, job: Job, changes: readonly FileChange[]): JobFile {
  let changed = file;
  for (const change of changes) {
    changed =
      change.kind === "brake" ? withBrake(changed, change.brake) : changedFile(changed, job, [change]);
  }
  return changed;
}

export interface WaysOutOptions {
  /** Other brakes of the shop. */
  readonly brakes?: readonly JobFile["brake"][];
  /** Whether pairs of changes are tried where no single one does, and the recipe for the hand is given last. Not unless asked. */
  readonly pairs?: boolean;
  /** How many states the search for changes may judge; some seconds' work unless given. */
  readonly mostStates?: number;
}

/**
 * Ways out, cheapest first; empty for a job that is clear. Where nothing helps, one entry of kind "none" says why;
 * where the search ended before all changes were tried, a last one of kind "untried" says so.
 * @example waysOut(file, job, check(job))[0]?.sentence // "Trim flat 1 by 3/32 in. It then folds with 0.021 in to spare."
 */
export function waysOut(
  file: JobFile,
  job: Job,
  answer: Answer,
  { brakes = [], mostStates, pairs = false }: WaysOutOptions = {},
): Remedy[] {
  // Where only its readings make it tight, closer readings are the way out, and the warning says which.
  if (answer.verdict === "clear" || answer.order.every(({ verdict }) => verdict === "clear")) return [];
  const situation = situationOf(file, job, answer);
  const others = otherBrakes(file, job, situation.goal, brakes);
  const found = findWays({
    ...situation,
    ...(mostStates !== undefined && { mostStates }),
    pairs: pairs && others.length === 0,
  });
  const ways = found.ways.map((way) => wayOut(job, way));
  let { cutShort } = found;
  // Another order costs nothing: no change of brake can be cheaper.
  if (!ways.some(({ kind }) => kind === "order" || kind === "side")) {
    const bar = barToMake(file, job, situation.goal);
    const inTwoStrokes = partWay(job, situation.goal);
    if (inTwoStrokes) ways.push(wayOut(job, inTwoStrokes));
    ways.push(...others, ...bar.ways);
    if (pairs && others.length === 0) ways.push(...trimmedOnOthers(file, job, situation.goal, brakes));
    cutShort ||= bar.cutShort;
  }
  const untried: Remedy[] = cutShort
    ? [{ kind: "untried", sentence: untriedWords(job.part.bends.length, ways.length) }]
    : [];
  const ranked = lastOnesLast(file, job, answer, ways);
  const onlyHandled = ways.some(({ kind }) => kind === "order" || kind === "side");
  const byHand = pairs && answer.verdict === "hits" && !onlyHandled ? byHandRecipe(job, answer) : [];
  if (ways.length > 0 || answer.verdict === "tight") return [...ranked, ...untried, ...byHand];
  if (cutShort) return [...untried, ...byHand];
  return [{ kind: "none", sentence: whyNothingHelps(answer, job, pairs) }, ...byHand];
}

/** Ways by cost; those that hardly work, or bring a warning that the job has not, after all others, and saying so. */
function lastOnesLast(file: JobFile, job: Job, answer: Answer, ways: readonly WayOut[]): WayOut[] {
  const had = new Set(answer.warnings.map(kindOfWarning));
  const ranked = ways.map((way): WayOut => {
    const read = jobOf(applied(file, job, way.changes), { file, job });
    const brought = read.ok ? newWarning(read.job, way, had) : undefined;
    const scant = (way.clearance ?? Number.POSITIVE_INFINITY) < SPARE_MM;
    if (brought === undefined && !scant) return way;
    const said = [
      ...(scant ? [scantWords(job.units)] : []),
      ...(brought === undefined ? [] : [`But mind: ${brought}`]),
    ];
    const because = [...(way.because === undefined ? [] : [way.because]), ...said].join(" ");
    return { ...way, because, cost: way.cost + LAST_COST, last: true };
  });
  return ranked.sort((a, b) => a.cost - b.cost);
}

/** The first warning of the changed job that the job itself has not, figures aside. */
function newWarning(job: Job, { order }: WayOut, had: ReadonlySet<string>): string | undefined {
  const steps = order.map(
    ({ bend, clamped, to }): OrderStep => ({
      bend: bend - 1,
      clamped,
      ...(to !== undefined && { toDeg: to }),
    }),
  );
  const judged = new OverRange(job.part, job.brake, job.marginMm).judge(steps);
  const warnings = warningsFor(
    job,
    judged.map(({ likely }) => likely),
  );
  return warnings.find((one) => !had.has(kindOfWarning(one)) && !FORMED_RADIUS.test(one));
}

/** What a way that moves the nose says itself. */
const FORMED_RADIUS = /the nose set back by .* forms an inside radius/u;

/** A warning without its bends and figures. */
function kindOfWarning(warning: string): string {
  return warning.replace(/^Bends? [^:]*: /u, "").replace(/[\d.]+/gu, "");
}

function situationOf(file: JobFile, job: Job, answer: Answer): Situation {
  const tryout: Tryout = (changes) => {
    const read = jobOf(changedFile(file, job, changes), { file, job });
    return read.ok ? read.job : undefined;
  };
  return {
    trial: job,
    clamp: clampMeasures(file),
    ...(job.order && { own: wholeStrokes(job.order) }),
    reached: wholeStrokes(orderMade(answer)),
    goal: { marginMm: job.marginMm, leastMm: answer.verdict === "tight" ? job.marginMm : 0 },
    tryout,
    machines: new Machines(),
    units: job.units,
  };
}

/** The sequence of bends by where each is finished. */
function wholeStrokes(order: readonly OrderStep[]): OrderedBend[] {
  return order.flatMap(({ bend, clamped, toDeg }) =>
    toDeg === undefined ? [{ bend: bend + 1, clamped }] : [],
  );
}

function clampMeasures({ brake: { clamp }, units }: JobFile): ClampMeasures {
  const mm = (written: number | string) => parseLength(written, units) ?? 0;
  if (clamp.type === "profile") return { type: "profile", noseAngleDeg: 90, topRadiusMm: 0, heightMm: 0 };
  return {
    type: clamp.type,
    noseAngleDeg: Number.parseFloat(String(clamp.noseAngle ?? 90)),
    topRadiusMm: mm(clamp.topRadius ?? 0),
    heightMm: mm(clamp.type === "finger" ? clamp.height : clamp.thickness),
  };
}

function wayOut(job: Job, way: Way): WayOut {
  const leftOpen = leftOpenOf(job, way);
  const reasons = [limitWords(way, job.units), clearWords(way, job.units)].filter(
    (words) => words !== undefined,
  );
  const because = reasons.length === 0 ? undefined : reasons.join(" ");
  return {
    kind: way.kind,
    sentence: waySentence(job, way, leftOpen),
    ...(because !== undefined && { because }),
    changes: way.changes,
    verdict: way.verdict,
    clearance: way.clearanceMm,
    order: way.order,
    cost: way.cost,
    ...(way.index !== undefined && { index: way.index }),
    ...(way.twin !== undefined && { twin: way.twin }),
    ...(way.also !== undefined && { also: way.also }),
    ...(way.from !== undefined && { from: way.from }),
    ...(way.to !== undefined && { to: way.to }),
    ...(way.clearFrom !== undefined && { clearFrom: way.clearFrom }),
    ...(way.notUnder !== undefined && { notUnder: way.notUnder }),
    ...(way.limit && { limit: way.limit }),
    ...(way.thisOrderOnly && { thisOrderOnly: true as const }),
    ...(leftOpen && { leftOpen }),
  };
}

function leftOpenOf(job: Job, { kind, index, to }: Way): WayOut["leftOpen"] {
  const part = finishedPart(job);
  const bend = index === undefined ? undefined : part.bends[index - 1];
  if (kind !== "leaveOpen" || bend === undefined || index === undefined || to === undefined) return undefined;
  return {
    leafTo: (bend.overbendDeg * to) / bend.angleDeg,
    toClose: bend.angleDeg - to,
    filler: fillerThickness(part, index - 1) ?? null,
  };
}
