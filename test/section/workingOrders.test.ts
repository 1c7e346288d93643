/**
 * The list of working orders against every order tried by itself, as a job that gives it.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { orderListLines } from "../../src/cli/orderList.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { workingOrders } from "../../src/section/workingOrders.ts";

function jobOf(name: string): Job {
  const read = readJob(readFileSync(new URL(`../../${name}.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(name);
  return read.job;
}

const shown = (job: Job) => check(job).order.map(({ bend }) => bend - 1);

describe.each(["examples/lens-box-tray", "test/cases/unique-three", "test/cases/u-square-pass"])(
  "the orders of %s",
  (name) => {
    const { order: _, ...job } = jobOf(name);
    const groups = workingOrders(job, shown(job))!;

    test("are as many as the check counts, and each of them folds", () => {
      const answer = check(job);
      expect(groups.reduce((sum, { orders }) => sum + orders, 0)).toBe(Number(answer.viableOrders));
      for (const { steps, clear } of groups) {
        const ends = steps.reduce<("start" | "end")[][]>(
          (so, step) => so.flatMap((chosen) => step.ends.map((end) => [...chosen, end])),
          [[]],
        );
        for (const chosen of ends) {
          const order = steps.map(({ bend }, i) => ({ bend, clamped: chosen[i]! }));
          expect(check({ ...job, order }).verdict).not.toBe("hits");
        }
        const best = check({ ...job, order: steps.map(({ bend, best }) => ({ bend, clamped: best })) });
        if (clear) expect(best.verdict).not.toBe("hits");
      }
    });

    test("begin with the one that the check shows", () => {
      expect(groups[0]!.steps.map(({ bend }) => bend)).toEqual(shown(job));
    });
  },
);

test("a part that does not fold has none, and the list says so", () => {
  const job = jobOf("examples/z-clip");
  expect(workingOrders(job, [])).toEqual([]);
  expect(orderListLines(job, check(job), 80)).toEqual(["None of the 8 orders works."]);
});

test("the list is as wide as a terminal", () => {
  const job = jobOf("examples/lens-box-tray");
  for (const line of orderListLines(job, check(job), 80)) expect(line.length).toBeLessThanOrEqual(80);
});
