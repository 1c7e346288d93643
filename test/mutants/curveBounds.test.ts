/**
 * The bound on how a pair's curve bends, where slide and turn add up the worst: the second derivatives worked out by hand.
 * Source: for s·cos(φ − a): s″·cos − 2s′·sin − s·cos; for s²: 2(s′² + s·s″).
 */
import { expect, it } from "vitest";
import { curveBend } from "../../src/contact/pairCurve.ts";
import { tableSwing } from "../../src/motion/swing.ts";

const SLIDES = [
  [0, 2, 2.6],
  [6, 0, 2],
  [3, 2, 1.8],
  [-2, 1, 1.5],
] as const;

function slideAt(A: number, B: number, phi: number) {
  const half = Math.tan(phi / 2);
  return {
    s: A * half - B * phi,
    s1: (A / 2) * (1 + half * half) - B,
    s2: (A / 2) * half * (1 + half * half),
  };
}

it.each(SLIDES)("holds for a slide of %d·tan(φ/2) − %d·φ as far as %d", (A, B, sweep) => {
  const swing = tableSwing(1, A, B, sweep);
  for (let i = 0; i <= 60; i++) {
    const phi = (sweep * i) / 60;
    const { s, s1, s2 } = slideAt(A, B, phi);
    // The phase at which a slid point's curve bends the most: its two parts stand square to each other.
    const a = phi - Math.atan2(-2 * s1, s2 - s);
    const bend = Math.abs((s2 - s) * Math.cos(phi - a) - 2 * s1 * Math.sin(phi - a));
    expect(bend).toBeCloseTo(Math.hypot(s2 - s, 2 * s1), 9);
    expect(curveBend(Float64Array.of(0, 0, 0, 0, Math.cos(a), Math.sin(a), 0), swing)).toBeGreaterThan(
      bend - 1e-9,
    );
    const squared = Math.abs(2 * (s1 * s1 + s * s2));
    for (const sign of [1, -1])
      expect(curveBend(Float64Array.of(0, 0, 0, 0, 0, 0, sign), swing)).toBeGreaterThan(squared - 1e-9);
  }
});
