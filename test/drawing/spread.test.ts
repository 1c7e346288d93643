import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../src/drawing/spread.ts";

const rising = fc
  .array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 12 })
  .map((values) => values.toSorted((a, b) => a - b));

describe("spread", () => {
  it("leaves labels that have room where they belong", () => {
    expect(spread([0, 5, 11], 4)).toEqual([0, 5, 11]);
    expect(spread([], 4)).toEqual([]);
  });

  it("keeps the gap, and no small shift of any label would bring them nearer to where they belong", () => {
    fc.assert(
      fc.property(rising, fc.double({ min: 0.5, max: 8, noNaN: true }), (wanted, gap) => {
        const placed = spread(wanted, gap);
        const cost = (at: number[]) => at.reduce((sum, x, i) => sum + (x - wanted[i]!) ** 2, 0);
        for (let i = 1; i < placed.length; i++)
          expect(placed[i]! - placed[i - 1]!).toBeGreaterThanOrEqual(gap - 1e-9);
        // Convex cost over a convex set: where no allowed nudge of a run of labels helps, the place is the best one.
        for (let first = 0; first < placed.length; first++) {
          for (let last = first; last < placed.length; last++) {
            for (const nudge of [-1e-3, 1e-3]) {
              const other = placed.map((x, i) => (i >= first && i <= last ? x + nudge : x));
              const allowed = other.every((x, i) => i === 0 || x - other[i - 1]! >= gap - 1e-12);
              if (allowed) expect(cost(other)).toBeGreaterThanOrEqual(cost(placed) - 1e-9);
            }
          }
        }
      }),
      { seed: 4, numRuns: 300 },
    );
  });
});
