/**
 * Roots that a step over the sweep could pass: a curve that is under zero at both ends of a step and over it between, one
 * that dips for a moment, one that only touches. Source: cos(φ − a) − cos b is zero at a − b and a + b, and nowhere else near.
 */
import { expect, it } from "vitest";
import { firstCrossing } from "../../src/contact/crossing.ts";
import { tableSwing } from "../../src/motion/swing.ts";

const SWEEP = 1.8;
const swing = tableSwing(1, 0, 0, SWEEP);
const always = { meets: () => true };

/** The curve sign·(cos(φ − peak) − cos(half)). */
function hill(peak: number, half: number, sign: 1 | -1): Float64Array {
  return Float64Array.of(
    -sign * Math.cos(half),
    sign * Math.cos(peak),
    sign * Math.sin(peak),
    ...[0, 0, 0, 0],
  );
}

it("finds the fall of a hill that stands within one step, both its ends under zero", () => {
  for (const at of [0.6, 0.63, 0.66]) {
    for (let j = 0; j < swing.steps; j++) {
      const [peak, half] = [(j + at) * swing.stepRad, 0.3 * swing.stepRad];
      expect(firstCrossing(hill(peak, half, 1), swing, SWEEP, always)).toBeCloseTo(peak + half, 7);
    }
  }
});

it("finds a dip of any width within one step, and none where it only touches", () => {
  for (let j = 0; j < swing.steps; j++) {
    for (const width of [0.3, 1e-2, 1e-3]) {
      const [peak, half] = [(j + 0.5) * swing.stepRad, width * swing.stepRad];
      expect(firstCrossing(hill(peak, half, -1), swing, SWEEP, always)).toBeCloseTo(peak - half, 4);
    }
    expect(firstCrossing(hill((j + 0.5) * swing.stepRad, 0, -1), swing, SWEEP, always)).toBe(Infinity);
  }
});

it("passes over a root that is no meeting, and stops at the limit", () => {
  const dip = hill(0.4, 0.05, -1);
  const never = { meets: () => false };
  expect(firstCrossing(Float64Array.from(dip), swing, SWEEP, never)).toBe(Infinity);
  expect(firstCrossing(Float64Array.from(dip), swing, 0.34, always)).toBe(Infinity);
  expect(firstCrossing(Float64Array.from(dip), swing, 0.36, always)).toBeCloseTo(0.35, 6);
});
