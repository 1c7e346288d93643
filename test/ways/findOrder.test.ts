/**
 * The quick search for any order against the one that ranks and counts all of them (section/searchSection.ts, itself held to
 * the independent reference), and what it says when it may not look at everything.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { findOrder } from "../../src/ways/findOrder.ts";
import { outcomeOf } from "../../src/ways/folds.ts";
import { randomJobs } from "../reference/randomJob.ts";
import { longJobs } from "./longJobs.ts";
import { readAs } from "./tryWays.ts";

const few = fc.sample(randomJobs(5), { seed: 12, numRuns: 120 });
const many = [7, 9, 11].flatMap((bends) => longJobs(bends, bends, 14));
const jobs = [...few, ...many].map((job) => readAs(job).job);

describe("whether any order folds the part", () => {
  test("is the same as the whole search says, and the order it gives folds", () => {
    const kinds = { order: 0, none: 0, unknown: 0 };
    for (const job of jobs) {
      const found = findOrder(job, { leastMm: 0 });
      kinds[found.kind]++;
      expect(found.kind).toBe(check(job).verdict === "hits" ? "none" : "order");
      if (found.kind === "order") expect(outcomeOf(job, 0.5, found.order()).verdict).not.toBe("hits");
    }
    expect(kinds.order).toBeGreaterThan(20);
    expect(kinds.none).toBeGreaterThan(20);
  });

  test("and whether any leaves the margin", () => {
    const clear = jobs.map((job) => {
      const found = findOrder(job, { leastMm: job.marginMm });
      expect(found.kind).toBe(check(job).verdict === "clear" ? "order" : "none");
      if (found.kind === "order") expect(outcomeOf(job, job.marginMm, found.order()).verdict).toBe("clear");
      return found.kind === "order";
    });
    expect(clear.filter(Boolean).length).toBeGreaterThan(10);
  });

  test("is not known where the states run out before, and never taken for none", () => {
    let unknown = 0;
    for (const job of jobs) {
      const whole = findOrder(job, { leastMm: 0 });
      const cut = findOrder(job, { leastMm: 0, mostStates: 3 });
      if (cut.kind === "unknown") unknown++;
      else expect(cut.kind).toBe(whole.kind);
    }
    expect(unknown).toBeGreaterThan(30);
  });

  test("takes an order that is given first, with other ends where these do not pass", () => {
    const job = jobs.find((one) => one.part.bends.length > 3 && check(one).verdict !== "hits")!;
    const found = findOrder(job, { leastMm: 0 });
    const bends = found.kind === "order" ? found.bends : [];
    const again = findOrder(job, { leastMm: 0, hint: bends });
    expect(again.kind === "order" && again.bends).toEqual(bends);
    expect(again.states).toBeLessThanOrEqual(2 * bends.length);
  });
});
