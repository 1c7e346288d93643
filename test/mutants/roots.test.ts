/**
 * The edges of the root finder: steps that cannot hold a root are not looked into, however near it comes; a slide that turns
 * within a step; what is at the limit, at the start, at the end. Source: cosines and slides with roots worked out by hand.
 */
import { describe, expect, it } from "vitest";
import { firstCrossing } from "../../src/contact/crossing.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { counted } from "./countedCurve.ts";

const always = { meets: () => true };
/** What is never deeper than this only touches (crossing.ts). */
const TOUCH = 1e-9;
const turning = tableSwing(1, 0, 0, 1.8);
const w = turning.stepRad;

/** c − R·cos(φ − at): its low point is c − R. */
const dip = (c: number, R: number, at: number) =>
  [c, -R * Math.cos(at), -R * Math.sin(at), 0, 0, 0, 0] as const;

describe("a step is looked into", () => {
  it("no more than at its ends where the curve keeps off zero by more than it can bend, R·w²/8, over or under", () => {
    for (const R of [1, 50])
      for (let j = 0; j < turning.steps; j++)
        for (const sign of [1, -1]) {
          const figures = dip(R + 1.2 * ((R * w * w) / 8), R, (j + 0.5) * w).map((one) => sign * one);
          const { curve, looks } = counted(...figures);
          expect(firstCrossing(curve, turning, 1.8, always)).toBe(Infinity);
          expect(looks()).toBe(turning.steps + 1 + 2);
        }
  });

  it("not at all where it starts at the limit", () => {
    const { curve, looks } = counted(900, 1, 0, 0, 0, 0, 0);
    firstCrossing(curve, turning, 2 * w, always);
    expect(looks()).toBe(1 + 2 + 2);
  });

  it("by halves that cannot hold a root themselves, no more than a few times", () => {
    // The bound is of the sweep's end and four times what the curve bends where it comes near zero.
    const swing = tableSwing(0, 4, 3.5, 2);
    const low = 4 * Math.tan(0.7137) - 3.5 * 1.4274;
    for (const off of [0.01, 0.001, 1e-4]) {
      const { curve, looks } = counted(off - low, 0, 0, 1, 0, 0, 0);
      expect(firstCrossing(curve, swing, 2, always)).toBe(Infinity);
      expect(looks()).toBeLessThan(swing.steps + 3 + 8 * Math.log2(1 / off));
    }
  });
});

it("finds both a fall and none in a slide that turns within a step", () => {
  // s = A·tan(φ/2) − B·φ turns where cos²(φ/2) = A/2B; a little over its low point it falls once and rises once.
  for (const B of [3.3, 3.4, 3.5, 3.6, 3.7])
    for (const [A, sign] of [
      [4, 1],
      [3.8, 1],
    ] as const) {
      const turn = 2 * Math.acos(Math.sqrt(A / (2 * B)));
      const swing = tableSwing(0, A, B, turn + 0.13);
      const slide = (phi: number) => A * Math.tan(phi / 2) - B * phi;
      for (const deep of [1e-3, 1e-4, 1e-6]) {
        const level = slide(turn) + deep;
        let [lo, hi] = [0, turn];
        for (let i = 0; i < 60; i++) {
          const middle = (lo + hi) / 2;
          if (slide(middle) + TOUCH > level) lo = middle;
          else hi = middle;
        }
        const found = firstCrossing(
          Float64Array.of(-level, 0, 0, sign, 0, 0, 0),
          swing,
          swing.sweepRad,
          always,
        );
        expect(Math.abs(found - lo), `${A} ${B} ${deep}`).toBeLessThan(1e-9);
        const over = Float64Array.of(2 * deep - level, 0, 0, 1, 0, 0, 0);
        expect(firstCrossing(over, swing, swing.sweepRad, always)).toBe(Infinity);
      }
    }
});

it("takes no root at the limit itself", () => {
  const k = () => Float64Array.of(-0.6, 1, 0, 0, 0, 0, 0);
  const root = firstCrossing(k(), turning, Infinity, always);
  expect(firstCrossing(k(), turning, root, always)).toBe(Infinity);
});

it("meets what only touches where the swing starts where it is as near again, to the last digits", () => {
  for (const deep of [2e-8, 5e-8, 9e-8]) {
    // cos(φ − 0.4) is at 0.8 what it was at 0, whatever less than a ten millionth it started under zero.
    const k = Float64Array.of(-Math.cos(0.4) - deep, Math.cos(0.4), Math.sin(0.4), 0, 0, 0, 0);
    expect(Math.abs(firstCrossing(k, turning, 1.8, always) - 0.8)).toBeLessThan(1e-12);
    // −sin φ closes in from the very start.
    expect(firstCrossing(Float64Array.of(-deep, 0, -9, 0, 0, 0, 0), turning, 1.8, always)).toBe(0);
  }
});

it("keeps to a graze however flat the curve is there", () => {
  // c − R·cos(φ − at) is under −TOUCH for √(2·deep/R) either side of its low point, and all but level: no step of a root
  // finder may lead away from there. Under 1e-14 rounding may hide the dip, not move it.
  let met = 0;
  for (const R of [1, 40])
    for (const deep of [1e-11, 1e-13, 1e-14, 2e-15, 1e-15, 5e-16])
      for (let i = 0; i < 12; i++) {
        const at = 0.1 + i / 7.3;
        const found = firstCrossing(
          Float64Array.from(dip(R - TOUCH - deep * R, R, at)),
          turning,
          1.8,
          always,
        );
        if (deep > 5e-14) expect(found).toBeLessThan(Infinity);
        if (found === Infinity) continue;
        met++;
        expect(Math.abs(found - at), `${R} ${deep} ${at}`).toBeLessThan(1.5 * Math.sqrt(2 * deep) + 1e-8);
      }
  expect(met).toBeGreaterThan(70);
});

it("takes what comes down to its touch just where the swing ends for no contact", () => {
  let tried = 0;
  for (let i = 0; i < 40; i++) {
    const swing = tableSwing(1, 0, 0, 1 + i / 50);
    const low = -swing.cos.at(-1)! - TOUCH;
    // Only where the figures add up to nothing at all.
    if (low + TOUCH + swing.cos.at(-1)! !== 0) continue;
    tried++;
    expect(firstCrossing(Float64Array.of(low, 1, 0, 0, 0, 0, 0), swing, Infinity, always)).toBe(Infinity);
  }
  expect(tried).toBeGreaterThan(5);
});
