/**
 * The verdict over a range of leaf angle and nose setback against a dense sampling of it: every sample is a job of its own that gives
 * its overbends and its setback outright and doubts nothing. Random parts and brakes; the nose stands 1 mm over what the widest bend wants,
 * so that every setback of the doubt forms its radius. The single judgement is held against the independent reference in test/reference.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { OverRange } from "../../src/contact/overRange.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { answerOf, jobOf } from "../cases/answers.ts";
import { drawn } from "../drawn.ts";
import { type RandomJob, randomJobs } from "../reference/randomJob.ts";

const [BACK, OVERBEND] = [0.9, 3];
const [ANGLES, BACKS] = [7, 13];

type Order = { bend: number; clamped: "start" | "end" }[];

/** The job with its bends in their order, its nose at a given setback and every overbend given, no doubts; undefined where it hits or stays far off everything. */
function sureJob(file: RandomJob, starts: readonly boolean[]) {
  const order = file.part.bends.map((_, i) => ({
    bend: i + 1,
    clamped: starts[i] ? ("start" as const) : ("end" as const),
  }));
  const { part, marginMm } = jobOf({ ...file, brake: { ...file.brake, setback: "auto" } });
  const wide = Math.max(...part.bends.map(({ noseSetbackMm }) => noseSetbackMm)) + 1;
  const job = { ...file, brake: { ...file.brake, setback: wide } };
  const set = jobOf(job);
  const judged = new OverRange(set.part, set.brake, marginMm).judge(stepsOf(order));
  const least = Math.min(...judged.map(({ leastMm }) => leastMm ?? Number.POSITIVE_INFINITY));
  if (judged.some(({ verdict }) => verdict === "hits") || least > 4) return undefined;
  return { job, order };
}

function stepsOf(order: Order) {
  return order.map(({ bend, clamped }) => ({ bend: bend - 1, clamped }));
}

/**
 * Verdicts by bend of the same part with every bend's leaf at some angle and the nose `back` farther back: half of what an arc
 * takes up more lacks in the flats beside it. Nothing is doubted there, so each bend is judged once.
 */
function sampler(job: RandomJob, order: Order, likely: readonly number[]) {
  const { part, brake } = job;
  const readAt = (overbends: readonly number[], back: number, flats: readonly number[]) => {
    const bends = part.bends.map((bend, i) => ({ ...bend, overbend: overbends[i] }));
    const setback = (brake.setback as number) + back;
    return jobOf({ ...job, part: { ...part, flats, bends }, brake: { ...brake, setback } });
  };
  const takes = (read: Job) => read.part.bends.map(({ allowanceMm }) => allowanceMm);
  const before = takes(readAt(likely, 0, part.flats));
  return (overbends: readonly number[], back: number) => {
    const after = takes(readAt(overbends, back, part.flats));
    const more = before.map((allowance, i) => (after[i]! - allowance) / 2);
    const flats = part.flats.map((flat, i) => flat - (more[i - 1] ?? 0) - (more[i] ?? 0));
    const read = readAt(overbends, back, flats);
    const judged = new OverRange(read.part, read.brake, read.marginMm).judge(stepsOf(order));
    return new Map(judged.map(({ verdict }, i) => [order[i]!.bend, verdict]));
  };
}

it("folds over the whole range where no sample of it hits, and fails from where it says", () => {
  let [folds, fails] = [0, 0];
  fc.assert(
    fc.property(randomJobs(3), fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }), (file, starts) => {
      const sure = sureJob({ ...file, part: { ...file.part, dimensions: "flat" } } as RandomJob, starts);
      // A doubt never takes more than half of a flat; the samples here know no such rule.
      if (!sure || Math.min(...sure.job.part.flats) < 5) return;
      const { job, order } = sure;
      const doubts = { setback: BACK, overbend: OVERBEND };
      const answer = answerOf({ ...job, order, brake: { ...job.brake, doubts } });
      const ranges = job.part.bends.map((_, i) => answer.order.find(({ bend }) => bend === i + 1)!);
      const sample = sampler(
        job,
        order,
        ranges.map(({ overbend }) => overbend),
      );
      const overbends = (u: number) =>
        ranges.map(({ overbend, overbendRange: [low, high] }) => {
          return overbend + Math.abs(u) * ((u < 0 ? low : high) - overbend);
        });
      const failing = answer.order.find(({ verdict }) => verdict === "hits");
      if (!failing) {
        folds += 1;
        for (let i = 0; i < ANGLES; i++) {
          for (let j = 0; j < BACKS; j++) {
            const back = BACK * ((2 * j) / (BACKS - 1) - 1);
            const verdicts = sample(overbends((2 * i) / (ANGLES - 1) - 1), back);
            expect([...verdicts.values()]).not.toContain("hits");
          }
        }
        return;
      }
      const {
        failsAt,
        overbend,
        overbendRange: [low, high],
      } = failing;
      if (!failsAt) return;
      fails += 1;
      const far = failsAt.overbend < overbend ? low : high;
      const u = far === overbend ? 0 : Math.abs((failsAt.overbend - overbend) / (far - overbend));
      const way = failsAt.overbend < overbend ? -1 : 1;
      const hitsAt = (share: number) =>
        sample(overbends(way * u * share), failsAt.noseSetbackBy * share).get(failing.bend) === "hits";
      expect(hitsAt(1)).toBe(true);
      expect(hitsAt(0.98)).toBe(false);
    }),
    drawn(31, 10000),
  );
  expect(folds).toBeGreaterThan(2);
  expect(fails).toBeGreaterThan(2);
}, 300_000);
