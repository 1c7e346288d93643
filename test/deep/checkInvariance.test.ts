/**
 * What must not change in an answer when a job is told another way, and what may only get better when a brake gives way.
 * Source: symmetry and set inclusion (a body inside another meets no more than that one does); no outside figures needed.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Answer } from "../../src/jobFile/answer.ts";
import { answerOf, rankOf, unheld } from "../cases/answers.ts";
import { atScale, fromOtherEnd, inInches, type NumbersJob } from "../cases/sameJob.ts";
import type { PlainClamp } from "../reference/plainJob.ts";
import { type RandomJob, randomJobs } from "../reference/randomJob.ts";

const JOBS = 80;

function expectSameRank(answer: Answer, wanted: Answer, scale = 1): void {
  expect([answer.verdict, answer.viableOrders, answer.order.length]).toEqual([
    wanted.verdict,
    wanted.viableOrders,
    wanted.order.length,
  ]);
  if (wanted.viableOrders === 0) return;
  const [found, first] = [rankOf(answer), rankOf(wanted)];
  expect(found.changes).toBe(first.changes);
  expect(found.swung).toBeCloseTo(scale * first.swung, 1);
  expect(found.clearance === null).toBe(first.clearance === null);
  expect(found.clearance ?? 0).toBeCloseTo(scale * (first.clearance ?? 0), 5);
}

/** How many orders work; parts of few bends are always counted. */
function ordersOf({ viableOrders }: Answer): number {
  return Number(viableOrders);
}

/** Runs the property over random jobs and counts those that can be made, so that it cannot be about none. */
function overJobs(seed: number, property: (job: NumbersJob, answer: Answer) => void): void {
  let viable = 0;
  fc.assert(
    fc.property(randomJobs(4), (file) => {
      const job = unheld(file) as RandomJob;
      const answer = answerOf(job);
      viable += Number(ordersOf(answer) > 0);
      property(job, answer);
    }),
    { seed, numRuns: JOBS },
  );
  expect(viable).toBeGreaterThan(JOBS / 8);
}

it("check answers the same for the part turned end for end", () => {
  overJobs(51, (job, answer) => expectSameRank(answerOf(fromOtherEnd(job)), answer));
});

it("check answers the same for the job in inches, step by step", () => {
  overJobs(52, (job, answer) => {
    const inches = answerOf(inInches(job));
    expectSameRank(inches, answer);
    inches.order.forEach((step, i) => {
      const wanted = answer.order[i]!;
      expect([step.bend, step.clamped, step.verdict]).toEqual([wanted.bend, wanted.clamped, wanted.verdict]);
      expect(step.reached).toBeCloseTo(wanted.reached, 6);
    });
  });
});

it("check answers the same at another size, but for the inset that does not grow with it", () => {
  // Twice as big, the inset of 0.01 mm is half as wide beside the part: no order can come free by that, a few may be lost.
  let same = 0;
  overJobs(53, (job, answer) => {
    const big = answerOf(atScale(job, 2));
    const small = answerOf(atScale(job, 0.5));
    expect(ordersOf(big)).toBeLessThanOrEqual(ordersOf(answer));
    expect(ordersOf(small)).toBeGreaterThanOrEqual(ordersOf(answer));
    if (big.viableOrders !== small.viableOrders) return;
    same++;
    if (answer.viableOrders === 0) return;
    expectSameRank(big, answer, 2);
    expectSameRank(small, answer, 0.5);
  });
  expect(same).toBeGreaterThan(0.9 * JOBS);
});

it("check answers for its own best order as the search did", () => {
  overJobs(54, (job, answer) => {
    if (answer.viableOrders === 0) return;
    const order = answer.order.map(({ bend, clamped }) => ({ bend, clamped }));
    expect(answerOf({ ...job, order }).order).toEqual(answer.order);
  });
});

/** A bar without a holder: under one, a thinner bar would also lower what it carries. */
const barJobs: fc.Arbitrary<RandomJob> = fc
  .tuple(randomJobs(3), fc.integer({ min: 70, max: 90 }))
  .map(([file, noseAngle]) => {
    const { noseRadius } = file.brake.clamp;
    const clamp: PlainClamp = {
      type: "bar",
      noseRadius,
      noseAngle,
      thickness: 14,
      depth: 40,
      topRadius: noseRadius,
    };
    return { ...file, brake: { ...file.brake, clamp } };
  });

it("a thinner bar never loses an order, and now and then wins some", () => {
  let won = 0;
  fc.assert(
    fc.property(barJobs, (file) => {
      let before = -1;
      for (const thickness of [14, 11, 8.5, 6.5, 5, 4]) {
        const clamp = { ...file.brake.clamp, thickness } as PlainClamp;
        const orders = ordersOf(answerOf({ ...file, brake: { ...file.brake, clamp } }));
        expect(orders).toBeGreaterThanOrEqual(before);
        if (before >= 0 && orders > before) won++;
        before = orders;
      }
    }),
    { seed: 55, numRuns: JOBS },
  );
  expect(won).toBeGreaterThan(5);
});

it("more lift never takes away a way in or out", () => {
  const better = { front: 2, end: 1, blocked: 0 };
  let won = 0;
  fc.assert(
    fc.property(randomJobs(3), fc.boolean(), (file, openEnds) => {
      const steps = file.part.bends.map((_, i) => ({ bend: i + 1, clamped: "start" as const }));
      let before: Answer | undefined;
      for (const lift of [0, 3, 8, 20, 60, 200]) {
        const answer = answerOf({ ...file, order: steps, brake: { ...file.brake, lift, openEnds } });
        answer.order.forEach((step, i) => {
          const lower = before?.order[i];
          if (!lower) return;
          expect(better[step.load]).toBeGreaterThanOrEqual(better[lower.load]);
          expect(better[step.unload]).toBeGreaterThanOrEqual(better[lower.unload]);
          won += Number(step.load !== lower.load) + Number(step.unload !== lower.unload);
        });
        expect(ordersOf(answer)).toBeGreaterThanOrEqual(before ? ordersOf(before) : 0);
        before = answer;
      }
    }),
    { seed: 56, numRuns: JOBS },
  );
  expect(won).toBeGreaterThan(5);
});
