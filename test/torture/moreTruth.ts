/**
 * What must hold of doubts, hems and second strokes whatever the job. Doubts: a bend can be made where it can at each end of its leaf
 * angles, written into the job outright and read anew. Hems: both strokes by themselves say what the search says, from either end of
 * the part. Second strokes: the independent reference (test/reference/twoStrokes).
 */
import { Machine } from "../../src/contact/machine.ts";
import { judgeStage, judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { partWayMade } from "../../src/motion/partWay.ts";
import { stagesOf } from "../../src/motion/stages.ts";
import { LEAST_FOLD_DEG } from "../../src/part/hem.ts";
import type { End, Part } from "../../src/part/part.ts";
import { ENDS, SectionJudge } from "../../src/section/sectionJudge.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import type { State } from "../reference/plainJob.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import { checkSecondStroke } from "../reference/twoStrokes.ts";

/** Whether the search lets a bend be made after a set of others. */
function searched({ part, brake, marginMm }: Job, done: number, bend: number, end: End): boolean {
  const judge = new SectionJudge(part, new Machine(brake, part.thicknessMm), marginMm, "all");
  return judge.held(done, 2 * bend + ENDS.indexOf(end)).length > 0;
}

/** Doubts of the leaf angle by so many degrees and of a given setback by so many mm; undefined where all agrees. */
export function doubtFault(file: RandomJob, state: State, done: number, byDeg: number): string | undefined {
  const given = typeof file.brake.setback === "number" ? file.brake.setback : undefined;
  const byMm = given === undefined ? 0 : byDeg / 10;
  const doubts = { overbend: byDeg, ...(byMm > 0 && { setback: byMm }) };
  const read = readJob(JSON.stringify({ ...file, brake: { ...file.brake, doubts } }));
  if (!read.ok) return `its doubts cannot be read: ${JSON.stringify(read.problems)}`;
  const { job } = read;
  // A nose that springs to its least, or is kept for all bends, stands elsewhere in a job of its own.
  if (file.brake.setback === "one") return undefined;
  if (given !== undefined && job.part.bends.some(({ noseSetbackMm }) => noseSetbackMm !== given))
    return undefined;
  const backs = byMm > 0 ? [0, byMm, -byMm] : [0];
  const ends = backs.flatMap((backMm) => [0, 1, -1].map((way) => atEnd(file, job, way * byDeg, backMm)));
  if (ends.some((end) => end === undefined)) return undefined;
  const truth = ends.every(
    (end) =>
      judgeStep(
        end!.part,
        end!.brake,
        { bendsDone: done, bend: state.bend, clamped: state.end },
        end!.marginMm,
      ).verdict !== "hits",
  );
  const found = searched(job, done, state.bend, state.end);
  return found === truth
    ? undefined
    : `with the leaf ${byDeg}° and the nose ${byMm} mm either way the search says ${found}, its ends ${truth}`;
}

/**
 * The job with every leaf angle at one end and its given setback off by so much, on the blank that was cut for the likely ones; undefined
 * where a nose springs to its least, or a flat lacks more than half of itself.
 */
function atEnd(file: RandomJob, { part }: Job, offDeg: number, backMm: number): Job | undefined {
  const bends = file.part.bends.map((bend, i) => {
    const [low, high] = part.bends[i]!.overbendRangeDeg!;
    return { ...bend, overbend: Math.min(high, Math.max(low, bend.overbend + offDeg)) };
  });
  const { setback } = file.brake;
  const at = typeof setback === "number" ? setback + backMm : setback;
  const changed = { ...file, part: { ...file.part, bends }, brake: { ...file.brake, setback: at } };
  const read = readJob(JSON.stringify(changed));
  if (!read.ok) return undefined;
  if (
    backMm !== 0 &&
    read.job.part.bends.some(({ noseSetbackMm, pinched }) => pinched || noseSetbackMm !== at)
  )
    return undefined;
  const more = read.job.part.bends.map(
    ({ allowanceMm }, i) => (allowanceMm - part.bends[i]!.allowanceMm) / 2,
  );
  const flatsMm = part.flatsMm.map((flat, i) => flat - (more[i - 1] ?? 0) - (more[i] ?? 0));
  return flatsMm.every((flat, i) => flat > Math.max(0.1, part.flatsMm[i]! / 2))
    ? { ...read.job, part: { ...read.job.part, flatsMm } }
    : undefined;
}

/** A hem put before the part's first flat; undefined where all agrees or there can be no such hem. */
export function hemFault(file: RandomJob, state: State, done: number): string | undefined {
  const { part } = jobOf(file);
  const lipMm = Math.min(12, part.flatsMm[0]! / 2) + 3 * part.thicknessMm;
  const hemmed = hemmedJob(file, part, lipMm, false);
  const turned = hemmedJob(file, part, lipMm, true);
  if (!hemmed || !turned) return undefined;
  const count = part.bends.length + 1;
  const after = done << 1;
  const mirrored = Array.from({ length: count }, (_, b) => ((after >> b) & 1) << (count - 1 - b)).reduce(
    (a, b) => a | b,
    0,
  );
  const other = state.end === "start" ? "end" : "start";
  const before = state.done.flatMap((made, bend) =>
    made ? [{ bend: bend + 1, clamped: "start" as const }] : [],
  );
  const step = { bend: 0, clamped: state.end, foldDeg: LEAST_FOLD_DEG };
  const machine = new Machine(hemmed.brake, part.thicknessMm);
  const strokes = stagesOf(hemmed.part, hemmed.brake, [...before, step]).slice(-2);
  const truth = strokes.every((stage) => judgeStage(stage, hemmed.marginMm, machine).verdict !== "hits");
  const found = searched(hemmed, after, 0, state.end);
  if (found !== truth) return `of a hem the search says ${found}, its two strokes ${truth}`;
  const back = searched(turned, mirrored, count - 1, other);
  return back === found ? undefined : `of a hem the search says ${found}, and ${back} turned end for end`;
}

function hemmedJob(file: RandomJob, part: Part, lipMm: number, turned: boolean): Job | undefined {
  const order = <T>(list: T[]): T[] => (turned ? list.toReversed() : list);
  const flats = order([lipMm, ...part.flatsMm].map((mm) => `${mm} mm`));
  const bends = order<object>([{ hem: "open", turn: "up", gap: file.part.thickness }, ...file.part.bends]);
  const read = readJob(JSON.stringify({ ...file, part: { ...file.part, dimensions: "flat", flats, bends } }));
  return read.ok ? read.job : undefined;
}

/** The second stroke of a bend left at a share of its angle; undefined where it is as the reference has it. */
export function secondStrokeFault(file: RandomJob, state: State, share: number): string | undefined {
  const { part, brake, marginMm } = jobOf(file);
  const leftDeg = Number((part.bends[state.bend]!.angleDeg * share).toFixed(2));
  if (!(leftDeg > 0) || !partWayMade(part, state.bend, state.end, leftDeg, brake.leaf.pivot))
    return undefined;
  const one = { bend: state.bend, clamped: state.end };
  const before = state.done.flatMap((made, bend) => (made ? [{ bend, clamped: "start" as const }] : []));
  const stage = stagesOf(part, brake, [...before, { ...one, toDeg: leftDeg }, one]).at(-1)!;
  const step = judgeStage(stage, marginMm, new Machine(brake, part.thicknessMm));
  const truth = checkSecondStroke(file, state, leftDeg);
  if (truth.liesInItself || step.contact?.tag === -1 || step.refused || truth.refused) return undefined;
  if (step.load !== truth.load)
    return `second stroke from ${leftDeg}°: in by ${step.load}, reference ${truth.load}`;
  // Where the begun part has no room to lie, the two may tell it as no way in, or as contact from the start.
  if (step.load === "blocked") return undefined;
  const found = step.contact && toDeg(step.contact.leafAngleRad);
  if ((found === undefined) !== (truth.contact === null))
    return `second stroke from ${leftDeg}°: contact at ${found}, reference ${truth.contact?.angleDeg}`;
  if (found !== undefined && truth.contact && Math.abs(found - truth.contact.angleDeg) > 0.05)
    return `second stroke from ${leftDeg}°: contact at ${found}, reference ${truth.contact.angleDeg}`;
  return undefined;
}
