/**
 * A tabled swing's nodes and bounds: safe over the sweep, and no wider than the motion is. Source: the slide's closed form and
 * its derivatives, A·tan(φ/2) − B·φ, sampled densely.
 */
import { describe, expect, it } from "vitest";
import { AT_REST, tableSwing } from "../../src/motion/swing.ts";

const SLIDES = [
  // Out all the way, in all the way, in and out again, each slow and fast.
  [6, 1, 1.4],
  [1, 2, 1],
  [-1.5, 2, 1.2],
  [3, 2, 0.9],
  [3, 2, 1.8],
  [2, 1.5, 1.6],
  [4, 3.5, 2.6],
  [0, 2, 1.5],
] as const;

describe.each(SLIDES)("a slide of %d·tan(φ/2) − %d·φ as far as %d", (A, B, sweep) => {
  const slide = (phi: number) => A * Math.tan(phi / 2) - B * phi;
  const rate = (phi: number) => A / 2 / Math.cos(phi / 2) ** 2 - B;
  const bend = (phi: number) => ((A / 2) * Math.tan(phi / 2)) / Math.cos(phi / 2) ** 2;
  const samples = (f: (phi: number) => number, from = 0) =>
    Array.from({ length: 3001 }, (_, i) => f(from + ((sweep - from) * i) / 3000));

  it("is bounded, either way and inward, and so are its rate and its bend", () => {
    const swing = tableSwing(1, A, B, sweep);
    const most = {
      maxSlide: Math.max(...samples((phi) => Math.abs(slide(phi)))),
      maxInward: Math.max(0, ...samples((phi) => -slide(phi))),
      maxSlideRate: Math.max(...samples((phi) => Math.abs(rate(phi)))),
      maxSlideBend: Math.max(...samples((phi) => Math.abs(bend(phi)))),
    } as const;
    for (const name of ["maxSlide", "maxInward", "maxSlideRate", "maxSlideBend"] as const) {
      expect(swing[name], name).toBeGreaterThan(most[name] - 1e-9);
      expect(swing[name], name).toBeLessThan(most[name] + 1e-5);
    }
  });

  it("keeps its bounds from where it starts", () => {
    const from = 0.6 * sweep;
    const swing = tableSwing(0, A, B, sweep, from);
    expect(swing.maxSlide).toBeGreaterThan(Math.max(...samples((phi) => Math.abs(slide(phi)), from)) - 1e-9);
    expect(swing.maxInward).toBeGreaterThan(Math.max(0, ...samples((phi) => -slide(phi), from)) - 1e-9);
    expect(swing.maxSlideRate).toBeCloseTo(Math.max(...samples((phi) => Math.abs(rate(phi)), from)), 9);
  });

  it("is tabled at equal steps, the last one where the sweep ends to the last digit", () => {
    for (const from of [0, 0.1, 0.37 * sweep]) {
      const swing = tableSwing(1, A, B, sweep, from);
      const { steps, stepRad } = swing;
      expect(stepRad).toBeLessThan(0.18 + 1e-12);
      expect((steps - 1) * 0.18).toBeLessThan(sweep - from);
      for (let j = 0; j <= steps; j++) {
        const phi = from + ((sweep - from) * j) / steps;
        expect(swing.cos[j]).toBeCloseTo(Math.cos(phi), 12);
        expect(swing.sin[j]).toBeCloseTo(Math.sin(phi), 12);
        expect(swing.slide[j]).toBeCloseTo(slide(phi), 9);
        expect(swing.slideRate[j]).toBeCloseTo(rate(phi), 9);
      }
    }
  });
});

it("ends at its sweep to the last digit, whatever the steps add up to", () => {
  for (let i = 1; i <= 200; i++) {
    const sweep = 0.7 + i / 97;
    for (const from of [0, 0.3]) {
      const { cos, sin } = tableSwing(1, 2, 1, sweep, from);
      expect([cos.at(-1), sin.at(-1)]).toEqual([Math.cos(sweep), Math.sin(sweep)]);
    }
  }
});

it("of no sweep is one pose with no step to it, and nothing to bound", () => {
  for (const swing of [AT_REST, tableSwing(1, 3, 2, 0), tableSwing(0, 3, 2, 0.4, 0.4)]) {
    expect([swing.steps, swing.stepRad, swing.cos.length]).toEqual([0, 0, 1]);
  }
  expect([AT_REST.maxSlide, AT_REST.maxInward, AT_REST.maxSlideRate, AT_REST.maxSlideBend]).toEqual([
    0, 0, 0, 0,
  ]);
});
