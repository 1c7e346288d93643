/**
 * Roots of one pair's curve, double roots among them: found where the dip is a billionth of a millimetre deep, and not
 * found where it stays that far off. Source: cosines worked by hand; f(φ) = c − R·cos(φ − φ0) has its low point c − R at φ0.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { firstCrossing, type Judge } from "../../src/contact/crossing.ts";
import { PairCurve } from "../../src/contact/pairCurve.ts";
import { tableSwing } from "../../src/motion/swing.ts";

const always: Judge = { meets: () => true };
const never: Judge = { meets: () => false };
/** What is never deeper than this only touches (crossing.ts). */
const TOUCH = 1e-9;

function curveOf(k0: number, ...[k1 = 0, k2 = 0, k3 = 0, k4 = 0, k5 = 0, k6 = 0]: number[]): PairCurve {
  return Object.assign(new PairCurve(), { k0, k1, k2, k3, k4, k5, k6 });
}

/** A curve that dips to c − R at φ0. */
function dip(c: number, R: number, phi0: number): PairCurve {
  return curveOf(c, -R * Math.cos(phi0), -R * Math.sin(phi0));
}

describe("firstCrossing", () => {
  const turning = tableSwing(1, 0, 0, 3);

  it("finds a plain crossing to 1e-12", () => {
    // cos φ − 0.6 falls through −TOUCH; 0.6 is the cosine of 53.13°, the angle of a 3-4-5 triangle.
    const k = curveOf(-0.6, 1, 0);
    expect(Math.abs(firstCrossing(k, turning, Infinity, always) - Math.acos(0.6 - TOUCH))).toBeLessThan(
      1e-12,
    );
  });

  it("finds a graze 5 billionths deep and passes one that only touches", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        fc.double({ min: 0.05, max: 2.95, noNaN: true }),
        fc.double({ min: 5, max: 5e5, noNaN: true }),
        (R, phi0, billionths) => {
          const depth = billionths * 1e-9;
          const found = firstCrossing(dip(R - depth, R, phi0), turning, Infinity, always);
          const half = Math.acos((R - depth + TOUCH) / R);
          if (phi0 - half > 0) expect(Math.abs(found - (phi0 - half))).toBeLessThan(1e-6);
          expect(firstCrossing(dip(R + depth, R, phi0), turning, Infinity, always)).toBe(Infinity);
          expect(firstCrossing(dip(R - TOUCH / 3, R, phi0), turning, Infinity, always)).toBe(Infinity);
        },
      ),
      { seed: 81, numRuns: 500 },
    );
  });

  it("takes what starts less than a ten millionth deep for touching, and in contact as soon as it closes in", () => {
    // c·cos φ − c falls from the start, −5e-8 or −2e-7 lower; sin φ rises.
    const falling = (deep: number) => curveOf(-9 - deep, 9, 0);
    expect(firstCrossing(falling(5e-8), turning, Infinity, always)).toBeLessThan(1e-6);
    expect(firstCrossing(falling(2e-7), turning, Infinity, always)).toBe(Infinity);
    expect(firstCrossing(curveOf(-5e-8, 0, 9), turning, 1, always)).toBe(Infinity);
  });

  it("asks the judge of every root and goes on to the next where it says no", () => {
    // s = 4·tan(φ/2) − 3.5·φ goes down to −1.53 and up to 5.3: 1 − s² falls through 0 at s = −1 and again at s = +1.
    const swing = tableSwing(0, 4, 3.5, 2.6);
    const slide = (phi: number) => 4 * Math.tan(phi / 2) - 3.5 * phi;
    const k = () => curveOf(1, 0, 0, 0, 0, 0, -1);
    const first = firstCrossing(k(), swing, Infinity, always);
    expect(slide(first)).toBeCloseTo(-1, 8);
    const asked: number[] = [];
    const late: Judge = {
      meets: (phi, c, s, u) => {
        asked.push(phi);
        expect([c, s]).toEqual([1, 0]);
        expect(u).toBeCloseTo(slide(phi), 12);
        return asked.length > 1;
      },
    };
    const second = firstCrossing(k(), swing, Infinity, late);
    expect(slide(second)).toBeCloseTo(1, 8);
    expect(asked).toEqual([first, second]);
    expect(firstCrossing(k(), swing, Infinity, never)).toBe(Infinity);
  });

  it("takes no root at or past the limit", () => {
    const k = () => curveOf(-0.6, 1, 0);
    const root = firstCrossing(k(), turning, Infinity, always);
    expect(firstCrossing(k(), turning, root - 1e-9, always)).toBe(Infinity);
    expect(firstCrossing(k(), turning, root + 1e-9, always)).toBe(root);
  });

  it("counts a rise through zero as no contact", () => {
    expect(firstCrossing(curveOf(0.6, -1, 0), turning, Infinity, always)).toBe(Infinity);
  });
});

describe("pair curves", () => {
  const coordinate = fc.double({ min: -80, max: 80, noNaN: true });
  const angle = fc.double({ min: 0, max: 2.5, noNaN: true });
  const swing = tableSwing(1, 3.2, 1.9, 2.5);
  const slide = (phi: number) => 3.2 * Math.tan(phi / 2) - 1.9 * phi;

  it("give the distances of points moved by hand, their rates, and a bound on their bend", () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, angle, angle, (U, V, x, y, phi, way) => {
        const [c, s, u] = [Math.cos(phi), Math.sin(phi), slide(phi)];
        const slideRate = 1.6 / Math.cos(phi / 2) ** 2 - 1.9;
        const moved = { x: (U + u) * c - V * s, y: (U + u) * s + V * c };
        const [nx, ny] = [Math.cos(way), Math.sin(way)];
        const k = new PairCurve();
        k.pointOverLine(U, V, nx, ny, 4);
        k.lower(0.5);
        expect(k.value(c, s, u)).toBeCloseTo(nx * moved.x + ny * moved.y - 4 - 0.5, 8);
        k.pointFromPoint(U, V, x, y, 1);
        k.lower(9);
        expect(k.value(c, s, u)).toBeCloseTo((moved.x - x) ** 2 + (moved.y - y) ** 2 - 9, 6);
        k.pointFromPoint(U, V, x, y, -1);
        k.lower(-9);
        expect(k.value(c, s, u)).toBeCloseTo(9 - (moved.x - x) ** 2 - (moved.y - y) ** 2, 6);
        const h = 1e-4;
        const value = (at: number) => k.value(Math.cos(at), Math.sin(at), slide(at));
        const rate = (value(phi + h) - value(phi - h)) / (2 * h);
        expect(Math.abs(k.rate(1, c, s, u, slideRate) - rate)).toBeLessThan(1e-3 * (1 + Math.abs(rate)));
        const bend = Math.abs(value(phi + h) - 2 * value(phi) + value(phi - h)) / (h * h);
        if (phi > h && phi < 2.5 - h) expect(bend).toBeLessThan(k.mostBend(swing) * 1.001 + 0.1);
        // The fixed point seen from the moving body: turned back by φ, less the slide.
        k.lineOverPoint(x, y, nx, ny, 4);
        k.lower(0.5);
        const back = { x: x * c + y * s - u, y: y * c - x * s };
        expect(k.value(c, s, u)).toBeCloseTo(nx * back.x + ny * back.y - 4 - 0.5, 8);
      }),
      { seed: 82, numRuns: 500 },
    );
  });
});
