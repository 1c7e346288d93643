/**
 * How much the search looks at: contact, clearance, loading, the part against itself and boxes, over parts of
 * six to eight bends. Source: none outside; these are budgets, what was needed when they were set, to be lowered, or raised
 * where that spares more elsewhere. A shortcut that no longer cuts anything short shows here and nowhere else.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ClearanceChecks } from "../../src/contact/clearance.ts";
import { ElementBox } from "../../src/contact/elementBox.ts";
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
  [LoadingChecks.prototype, "heightsOf"],
  [ElementBox.prototype, "take"],
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

/** By part: contact, against itself, clearance, clearance between elements, loading, heights alone, boxes. */
const NEEDED: readonly (readonly number[])[] = [
  [122, 24, 227, 0, 56, 0, 95],
  [109, 0, 179, 0, 24, 0, 126],
  [126, 0, 226, 6, 24, 0, 164],
  [122, 20, 243, 3, 56, 0, 122],
  [125, 24, 194, 3, 56, 0, 93],
  [118, 0, 205, 11, 184, 152, 320],
  [136, 0, 167, 3, 214, 155, 271],
  [122, 0, 171, 4, 168, 72, 225],
  [221, 2, 204, 17, 354, 245, 479],
  [263, 38, 256, 1, 100, 0, 252],
  [245, 54, 446, 9, 366, 133, 386],
  [192, 63, 561, 175, 64, 0, 461],
  [134, 24, 249, 3, 64, 0, 112],
  [191, 62, 317, 0, 274, 102, 276],
  [160, 0, 295, 0, 204, 136, 419],
  [250, 87, 457, 0, 112, 0, 373],
  [342, 153, 433, 0, 272, 0, 442],
  [202, 44, 582, 1, 72, 0, 417],
];

describe.each(parts.map((file, i) => ({ file, needed: NEEDED[i]! })))("a search", ({ file, needed }) => {
  it("looks at no more than it needs", () => {
    const { part, brake, marginMm } = jobOf(file);
    const calls = callsOf(() => void searchOrders(part, brake, marginMm));
    calls.forEach((count, i) => void expect(count, COUNTED[i]![1]).toBeLessThanOrEqual(needed[i]!));
  });
});
