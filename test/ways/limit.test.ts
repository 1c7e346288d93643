/**
 * Limits found on verdicts made up for the purpose: plain thresholds, gaps, and verdicts that pass nowhere.
 * The thresholds are the truth; nothing here knows sheet metal.
 */
import { describe, expect, test } from "vitest";
import { largestPassing, smallestPassing } from "../../src/ways/limit.ts";

const search = { most: 50, first: 0.5, step: 0.05, tolerance: 0.001 };

describe("smallestPassing", () => {
  test.each([0.01, 0.3, 3, 17.77, 49.9])("finds the threshold %f from above", (threshold) => {
    const found = smallestPassing({ ...search, passes: (amount) => amount >= threshold });
    expect(found).toBeGreaterThanOrEqual(threshold);
    expect(found).toBeLessThanOrEqual(threshold + 0.001);
  });

  test("finds the lower end of a gap, below which a whole step fails", () => {
    const passes = (amount: number) => (amount > 10 && amount < 10.6) || amount > 20;
    const found = smallestPassing({ ...search, first: 10.3, passes })!;
    expect(found).toBeCloseTo(10, 2);
    expect(passes(found)).toBe(true);
    expect(passes(found - search.step)).toBe(false);
  });

  test("walks down through gaps that lie nearer than a step", () => {
    const passes = (amount: number) => amount > 12 || (amount > 11.93 && amount < 11.98);
    const found = smallestPassing({ ...search, first: 16, passes })!;
    expect(passes(found)).toBe(true);
    expect(passes(found - search.step)).toBe(false);
    expect(found).toBeLessThan(11.98);
  });

  test("says nothing where nothing passes, or nothing may be changed", () => {
    expect(smallestPassing({ ...search, passes: () => false })).toBeUndefined();
    expect(smallestPassing({ ...search, most: 0, passes: () => true })).toBeUndefined();
    expect(smallestPassing({ ...search, most: Number.NaN, passes: () => true })).toBeUndefined();
  });

  test("gives up at once where even the largest harmless change fails", () => {
    let asked = 0;
    const passes = () => {
      asked++;
      return false;
    };
    expect(smallestPassing({ ...search, monotone: true, passes })).toBeUndefined();
    expect(asked).toBe(1);
  });
});

describe("largestPassing", () => {
  test.each([0.01, 3, 17.77, 49.9])("finds the threshold %f from below", (threshold) => {
    const found = largestPassing({ ...search, passes: (amount) => amount <= threshold });
    expect(found).toBeLessThanOrEqual(threshold);
    expect(found).toBeGreaterThanOrEqual(threshold - 0.001);
  });

  test("stops at the first gap, and at the end where nothing fails", () => {
    const passes = (amount: number) => amount < 7 || amount > 9;
    expect(largestPassing({ ...search, passes })).toBeCloseTo(7, 2);
    expect(largestPassing({ ...search, passes: () => true })).toBe(50);
  });
});
