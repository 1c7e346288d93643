/**
 * Choice of fingers against trying every subset of up to 12 fingers (4,096 of them), and two sets worked out by hand.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseFingers, type FingerStock, gapBesideWalls } from "../../src/blank/fingers.ts";

const INCH = 25.4;

/** Fewest fingers, then the widest fill, over all subsets. */
function byEverySubset(stock: readonly FingerStock[], length: number, least: number, most: number) {
  const each = stock.flatMap(({ widthMm, count }) => Array.from({ length: count }, () => widthMm));
  let best: { fingers: number; filled: number } | undefined;
  for (let mask = 1; mask < 1 << each.length; mask += 1) {
    const taken = each.filter((_, i) => (mask >> i) & 1);
    const filled = taken.reduce((sum, width) => sum + width, 0);
    const gap = length - filled;
    if (gap < least - 1e-7 || gap > most + 1e-7) continue;
    const better =
      best === undefined ||
      taken.length < best.fingers ||
      (taken.length === best.fingers && filled > best.filled + 1e-7);
    if (better) best = { fingers: taken.length, filled };
  }
  return best;
}

const stockOf = fc
  .array(fc.record({ tenths: fc.integer({ min: 100, max: 1500 }), count: fc.integer({ min: 1, max: 3 }) }), {
    minLength: 1,
    maxLength: 4,
  })
  .map((items) => items.map(({ tenths, count }) => ({ widthMm: tenths / 10, count })));

describe("chooseFingers", () => {
  test("is as good as the best of all subsets, and says none where there is none", () => {
    fc.assert(
      fc.property(
        stockOf,
        fc.integer({ min: 200, max: 6000 }),
        fc.integer({ min: 0, max: 50 }),
        fc.integer({ min: 0, max: 150 }),
        (stock, lengthTenths, leastTenths, spreadTenths) => {
          const length = lengthTenths / 10;
          const leastMm = leastTenths / 10;
          const mostMm = (leastTenths + spreadTenths) / 10;
          const chosen = chooseFingers(stock, length, { leastMm, mostMm });
          const best = byEverySubset(stock, length, leastMm, mostMm);
          expect(chosen?.widthsMm.length).toBe(best?.fingers);
          if (chosen === undefined || best === undefined) return;
          expect(chosen.filledMm).toBeCloseTo(best.filled, 6);
          expect(chosen.widthsMm.reduce((sum, width) => sum + width, 0)).toBeCloseTo(chosen.filledMm, 6);
          expect(chosen.gapMm).toBeCloseTo(length - chosen.filledMm, 6);
          for (const width of chosen.widthsMm) {
            const own = stock.filter((one) => one.widthMm === width).reduce((sum, one) => sum + one.count, 0);
            expect(chosen.widthsMm.filter((other) => other === width).length).toBeLessThanOrEqual(own);
          }
        },
      ),
      { numRuns: 400, seed: 4 },
    );
  });

  test("an inch set fills a lens-box tray of 8 1/4 in with 4 + 3 + 1", () => {
    // By hand: 8 1/4 less 8 leaves 1/4 in; no two of 4, 3, 2, 1, 1/2 in come within 1/8 to 3/8 in of it.
    const stock = [4, 3, 2, 1, 0.5].map((width) => ({ widthMm: width * INCH, count: 1 }));
    const chosen = chooseFingers(stock, 8.25 * INCH, { leastMm: INCH / 8, mostMm: (3 / 8) * INCH });
    expect(chosen?.widthsMm.map((width) => Math.round((width / INCH) * 1e6) / 1e6)).toEqual([4, 3, 1]);
    expect(chosen?.gapMm).toBeCloseTo(INCH / 4, 3);
  });

  test("a finger that fills all but leaves no room for the walls is not taken", () => {
    const stock = [{ widthMm: 100, count: 1 }];
    expect(chooseFingers(stock, 101, { leastMm: 1, mostMm: 5 })?.gapMm).toBe(1);
    expect(chooseFingers(stock, 100.9, { leastMm: 1, mostMm: 5 })).toBeUndefined();
  });

  test("no finger at all is no choice, however wide the gap may be", () => {
    expect(chooseFingers([{ widthMm: 30, count: 1 }], 10, { leastMm: 0, mostMm: 50 })).toBeUndefined();
  });

  test("a brake of 4 ft with forty fingers, all different, is filled to within the gap", () => {
    const stock = Array.from({ length: 40 }, (_, i) => ({ widthMm: 28 + i / 4, count: 1 }));
    const chosen = chooseFingers(stock, 1219.2, { leastMm: 2, mostMm: 3 });
    expect(chosen?.gapMm).toBeGreaterThanOrEqual(2);
    expect(chosen?.gapMm).toBeLessThanOrEqual(3);
  });

  test.each([
    [[{ widthMm: 0, count: 1 }], 100, 1, 2],
    [[{ widthMm: 10, count: 0.5 }], 100, 1, 2],
    [[{ widthMm: 10, count: 1 }], 0, 1, 2],
    [[{ widthMm: 10, count: 1 }], 100, 3, 2],
    [[{ widthMm: 10, count: 1 }], 100, -1, 2],
  ])("refuses %j for %d with a gap from %d to %d", (stock, length, leastMm, mostMm) => {
    expect(() => chooseFingers(stock, length, { leastMm, mostMm })).toThrow(RangeError);
  });
});

test("gapBesideWalls keeps the fingers clear of both walls' inside radii", () => {
  expect(gapBesideWalls(3).leastMm).toBeGreaterThan(6);
  expect(gapBesideWalls(3).mostMm).toBeGreaterThan(gapBesideWalls(3).leastMm);
});
