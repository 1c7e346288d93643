/**
 * How much the search looks at: checks of contact, clearance, loading and of the part against itself, counted over some parts of
 * six to eight bends. Source: none outside; these are budgets, what was needed when they were set, and may only be
 * lowered. A shortcut that no longer cuts anything short shows here and nowhere else.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ClearanceChecks } from "../../src/contact/clearance.ts";
import { LoadingChecks } from "../../src/contact/loading.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { jobOf } from "../cases/answers.ts";
import { randomJobs } from "../reference/randomJob.ts";

const COUNTED = [
  [SideChecks.prototype, "withBrake"],
  [SideChecks.prototype, "withSelf"],
  [ClearanceChecks.prototype, "withBrake"],
  [ClearanceChecks.prototype, "betweenElements"],
  [LoadingChecks.prototype, "piece"],
] as const;

/** Gentle bends on a thin bar leave much to look at; lift and open ends as they come. */
function partsOf(bends: number, seed: number, count: number) {
  const some = randomJobs(bends).filter(({ part }) => part.bends.length === bends);
  return fc.sample(fc.noBias(some), { seed, numRuns: count }).map((file) => {
    const bent = file.part.bends.map((bend) => ({
      ...bend,
      angle: bend.angle / 2,
      overbend: bend.overbend / 2,
    }));
    const { noseRadius } = file.brake.clamp;
    const clamp = { type: "bar" as const, thickness: 4, depth: 14, noseRadius, topRadius: noseRadius };
    return {
      ...file,
      part: { ...file.part, dimensions: "flat" as const, bends: bent },
      brake: { ...file.brake, clamp, lift: 60, frame: file.brake.openEnds ? [] : (file.brake.frame ?? []) },
    };
  });
}

/** Calls of each of COUNTED while `work` runs. */
function callsOf(work: () => void): number[] {
  const counts = COUNTED.map(() => 0);
  const real = COUNTED.map(([checks, name], i) => {
    const method = (checks as unknown as Record<string, (...args: unknown[]) => unknown>)[name]!;
    (checks as unknown as Record<string, unknown>)[name] = function (this: unknown, ...args: unknown[]) {
      counts[i]!++;
      return method.apply(this, args);
    };
    return method;
  });
  try {
    work();
  } finally {
    COUNTED.forEach(([checks, name], i) => {
      (checks as unknown as Record<string, unknown>)[name] = real[i];
    });
  }
  return counts;
}

const parts = [...partsOf(6, 33, 8), ...partsOf(7, 31, 7), ...partsOf(8, 32, 3)];

/** By part: contact, against itself, clearance, clearance between elements, loading. */
const NEEDED: readonly (readonly number[])[] = [
  [176, 24, 194, 0, 56],
  [198, 0, 179, 0, 24],
  [238, 0, 226, 6, 24],
  [223, 20, 195, 3, 56],
  [176, 24, 188, 3, 56],
  [398, 0, 205, 11, 618],
  [346, 0, 167, 3, 538],
  [300, 0, 171, 4, 459],
  [586, 2, 204, 17, 992],
  [374, 38, 167, 1, 100],
  [612, 57, 227, 9, 972],
  [688, 71, 522, 165, 64],
  [308, 24, 193, 3, 64],
  [368, 62, 215, 0, 550],
  [522, 0, 295, 0, 793],
  [441, 85, 402, 0, 112],
  [576, 153, 188, 0, 272],
  [603, 45, 364, 1, 72],
];

describe.each(parts.map((file, i) => ({ file, needed: NEEDED[i]! })))("a search", ({ file, needed }) => {
  it("looks at no more than it needs", () => {
    const { part, brake, marginMm } = jobOf(file);
    const calls = callsOf(() => void searchOrders(part, brake, marginMm));
    calls.forEach((count, i) => void expect(count, COUNTED[i]![1]).toBeLessThanOrEqual(needed[i]!));
  });
});
