/**
 * The torture run: seeded random cases, each judged by the engine and held against what must be true of it. A case is
 * one bend of one job in one state. Disagreements are shrunk by fast-check and come back as job files.
 */
import fc from "fast-check";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { jobOf } from "../cases/answers.ts";
import { type Pick, picks, roughJobs, stateOf } from "../contact/roughJob.ts";
import { LeafAlone } from "../reference/contact.ts";
import { type RandomJob, randomJobs } from "../reference/randomJob.ts";
import { sheetOf } from "../reference/sheet.ts";
import { grazeFault } from "./graze.ts";
import { hardJobs } from "./hardJob.ts";
import { doubtFault, hemFault, secondStrokeFault } from "./moreTruth.ts";
import { differs, inchFile, judgeTurned, pointFault, turnedFile } from "./sameness.ts";
import { sampledFault, zoneTakes } from "./sampledTruth.ts";
import { wholeFault } from "./wholeTruth.ts";

/** A case that went wrong, as small as it could be made. */
export interface Disagreement {
  readonly sentence: string;
  readonly file: RandomJob;
  readonly pick: Pick;
  readonly seed: number;
}

export interface Tally {
  cases: number;
  /** Of these against the whole reference. */
  whole: number;
  /** Of these with a grazing block, seven depths each. */
  grazes: number;
  /** With doubts of the leaf angle, with a hem before the first flat, and with the bend made in two strokes. */
  doubts: number;
  hems: number;
  seconds: number;
  /** With a contact after rest. */
  met: number;
  measured: number;
  ties: number;
  /** Where the bend zone grows past a whole flat at some angle, and more of the sheet is left. */
  passed: number;
  /** Where it takes all of the moving side: tried for sameness alone. */
  taken: number;
  /** Where the reference's own geometry library gave up. */
  unanswered: number;
  /** Jobs that the reader refuses (profiles that cross themselves and the like); not counted as cases. */
  refused: number;
  disagreements: Disagreement[];
}

export const noTally = (): Tally => ({
  cases: 0,
  whole: 0,
  grazes: 0,
  doubts: 0,
  hems: 0,
  seconds: 0,
  met: 0,
  measured: 0,
  ties: 0,
  passed: 0,
  taken: 0,
  unanswered: 0,
  refused: 0,
  disagreements: [],
});

/** What every case is tried with: how many of a thousand also go to the whole reference, and get a grazing block. */
export interface Shares {
  readonly wholePerMille: number;
  readonly grazePerMille: number;
}

const STATES = 4;
/** So many of the cases are tried with doubts and a hem too; those that go to the whole reference are among them. */
const MORE_SHARE = 0.25;
/** Only shrinking ever takes this long. */
const LONGEST_BATCH_MS = 120_000;
const jobs = fc.oneof(
  { weight: 3, arbitrary: hardJobs(4) },
  { weight: 2, arbitrary: roughJobs(4) },
  { weight: 1, arbitrary: randomJobs(4) },
);
const cases = fc.record({
  file: jobs,
  states: picks(STATES),
  // fast-check leans toward small numbers unless told not to.
  lot: fc.noBias(fc.array(fc.nat(999), { minLength: 2 * STATES, maxLength: 2 * STATES })),
  wayRad: fc.oneof(
    fc.nat(359).map((deg) => (deg * Math.PI) / 180),
    fc.constant(Number.NaN),
  ),
});

/** A job read as it is, from its other end, and in inches. */
interface Readings {
  readonly file: RandomJob;
  readonly job: Job;
  readonly turned: Job;
  readonly inch: Job;
  readonly alone: LeafAlone;
}

function readingsOf(file: RandomJob): Readings {
  return {
    file,
    job: jobOf(file),
    turned: jobOf(turnedFile(file)),
    inch: jobOf(inchFile(file)),
    alone: new LeafAlone(),
  };
}

/** Tries one case; the sentence of what is wrong, or undefined. */
function faultOf(
  { file, job, turned, inch, alone }: Readings,
  pick: Pick,
  wholeToo: boolean,
  wayRad: number | undefined,
  tally: Tally,
  more?: More,
): string | undefined {
  const bends = job.part.bends.length;
  const { state, bendsDone } = stateOf(bends, pick);
  const step = judgeStep(
    job.part,
    job.brake,
    { bendsDone, bend: state.bend, clamped: state.end },
    job.marginMm,
  );
  tally.cases++;
  tally.met += Number((step.contact?.leafAngleRad ?? 0) > 0);
  tally.measured += Number((step.clearanceMm ?? 0) > 0);
  const fromOtherEnd = judgeTurned(turned, bends, bendsDone, state);
  const simple = differs(step, fromOtherEnd, "turned end for end");
  if (simple) return simple;
  const inInches = judgeStep(
    inch.part,
    inch.brake,
    { bendsDone, bend: state.bend, clamped: state.end },
    inch.marginMm,
  );
  const unit = differs(step, inInches, "in inches");
  if (unit) return unit;
  if (step.refused) {
    const { bends: formed } = sheetOf(file);
    return formed[state.bend]!.pinched
      ? undefined
      : `refused as ${step.refused}, and the reference begins it`;
  }
  const takes = zoneTakes(file, state);
  if (takes === "all") {
    tally.taken++;
    return undefined;
  }
  tally.passed += Number(takes === "flat");
  const point = pointFault(job, step);
  if (point) return point;
  if (more) {
    tally.doubts++;
    tally.hems++;
    const fault = doubtFault(file, state, bendsDone, more.byDeg) ?? hemFault(file, state, bendsDone);
    if (fault) return fault;
    if (wholeToo) {
      tally.seconds++;
      const second = secondStrokeFault(file, state, more.share);
      if (second) return second;
    }
  }
  const sampled = sampledFault(file, state, step);
  // Flattened arcs blur an angle where levers are short: the whole reference looks closer.
  if (sampled && wholeFault(file, state, step, alone).fault) return sampled;
  if (wayRad !== undefined) {
    tally.grazes++;
    // Not a number asks for the block along the moving flat's inner face where the leaf stops.
    const flush = ((job.part.bends[state.bend]!.overbendDeg + 90) * Math.PI) / 180;
    const graze = grazeFault(file, state, bendsDone, Number.isNaN(wayRad) ? flush : wayRad);
    if (graze) return graze;
  }
  if (!wholeToo) return undefined;
  tally.whole++;
  const { fault, tie } = wholeFault(file, state, step, alone);
  if (tie) tally.ties++;
  return fault;
}

/** How far the leaf angle is doubted, and at what share of its angle a bend is left. */
interface More {
  readonly byDeg: number;
  readonly share: number;
}

/** The sentence, or what was thrown in its place. */
function sentenceOf(tried: () => string | undefined, tally: Tally): string | undefined {
  try {
    return tried();
  } catch (thrown) {
    if (thrown instanceof Error && thrown.stack?.startsWith("TopologyException")) {
      tally.unanswered++;
      return undefined;
    }
    return `thrown: ${thrown instanceof Error ? thrown.stack : thrown}`;
  }
}

/** A case found before, tried with everything there is. */
export function keptFault(file: RandomJob, pick: Pick): string | undefined {
  const more = { byDeg: 1.5, share: 0.6 };
  return faultOf(readingsOf(file), pick, true, Number.NaN, noTally(), more);
}

/** Runs a batch of jobs, four states each, from one seed; stops at its first disagreement, shrunk. */
export function runBatch(seed: number, jobCount: number, shares: Shares, tally: Tally): void {
  let last: { sentence: string; file: RandomJob; pick: Pick } | undefined;
  const result = fc.check(
    fc.property(cases, ({ file, states, lot, wayRad }) => {
      if (!readJob(JSON.stringify(file)).ok) {
        if (!last) tally.refused++;
        return true;
      }
      const readings = readingsOf(file);
      for (const [i, pick] of states.entries()) {
        const whole = lot[i]! < shares.wholePerMille;
        const way = lot[STATES + i]! < shares.grazePerMille ? wayRad : undefined;
        // What is tried while shrinking is not counted.
        const counted = last ? noTally() : tally;
        const one = lot[i]! * 0.001;
        const more = one < MORE_SHARE ? { byDeg: 0.2 + 12 * one, share: 0.15 + 3 * one } : undefined;
        const sentence = sentenceOf(() => faultOf(readings, pick, whole, way, counted, more), counted);
        if (sentence === undefined) continue;
        last = { sentence, file, pick };
        return false;
      }
      return true;
    }),
    { seed, numRuns: jobCount, endOnFailure: false, interruptAfterTimeLimit: LONGEST_BATCH_MS },
  );
  // The last failing run of a shrink is the smallest.
  if (result.failed && last) tally.disagreements.push({ ...last, seed });
}
