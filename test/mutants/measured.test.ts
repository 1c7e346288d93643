/**
 * How a distance is measured: nothing that cannot beat what is known is asked whether it meets; the least is found at a step's
 * end as well as within. Source: bodies that keep one distance as they turn about the pivot, and points that pass each other.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { type DistanceFound, leastDistance } from "../../src/contact/leastDistance.ts";
import { Meeting } from "../../src/contact/meeting.ts";
import { makePairCurve } from "../../src/contact/pairCurve.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { hollow, round } from "./alone.ts";

const swing = tableSwing(1, 0, 0, 1.5);

class Asked extends Meeting {
  times = 0;
  override meets(phi: number, c: number, s: number, u: number): boolean {
    this.times++;
    return super.meets(phi, c, s, u);
  }
}

function measured(
  A: Features,
  B: Features,
  mm: number,
): { readonly found: DistanceFound; readonly times: number } {
  const meeting = new Asked();
  const found = { mm, phiRad: 0, movingX: 0, movingY: 0, fixedX: 0, fixedY: 0 };
  leastDistance(A, B, swing, makePairCurve(), meeting, found);
  return { found, times: meeting.times };
}

/** A round whose centre is the pivot. */
const wheel = (r: number): Features => {
  const F = new Features(0, 1, 0);
  F.addRound(0, 0, r, 1, 0, -2, 0);
  return F;
};
/** An edge across the ray along +x, its material toward the pivot or away from it. */
const wall = (out: number, toward: 1 | -1): Features => {
  const F = new Features(1, 0, 0);
  F.addSegment(out, -20 * toward, out, 20 * toward, 0);
  return F;
};

describe("bodies that keep their distance are asked whether they meet only where that is less than what is known:", () => {
  it.each([
    // A wheel of 3 about the pivot, and a wall 5 out whose material lies beyond.
    ["a round before an edge", wheel(3), wall(5, -1), 2],
    // The edge turns about the wheel.
    ["an edge before a round", wall(5, -1), wheel(3), 2],
    // Centres 10 apart however the one turns, radii 3 and 4.
    ["a round before a round", wheel(3), round(10, 4), 3],
    // A round of 0.5, 3 out, in a hollow of 4 about the pivot.
    ["a round in a hollow", round(3, 0.5), hollow(0, 4), 0.5],
    ["a hollow about a round", hollow(0, 4), round(3, 0.5), 0.5],
  ] as const)("%s", (_, A, B, apart) => {
    expect(measured(A, B, apart - 0.01).times).toBe(0);
    // Where the known distance is larger than the hollow's room, too.
    for (const known of [apart + 0.01, 9, 60]) {
      const { found, times } = measured(A, B, known);
      expect(found.mm).toBeCloseTo(apart, 9);
      expect(times).toBeGreaterThan(0);
    }
  });
});

it("gives the angle where two points pass each other at the end of a step as it does within one", () => {
  for (let j = 0; j <= 2 * swing.steps; j++) {
    const phi = (j / 2) * swing.stepRad;
    const fixed = new Features(0, 1, 0);
    fixed.addCorner(12 * Math.cos(phi), 12 * Math.sin(phi), 0);
    const { found } = measured(round(10, 0), fixed, Infinity);
    expect(found.mm).toBeCloseTo(2, 9);
    expect(Math.abs(found.phiRad - phi)).toBeLessThan(1e-6);
    expect(Math.hypot(found.movingX - 10 * Math.cos(phi), found.movingY - 10 * Math.sin(phi))).toBeLessThan(
      1e-5,
    );
  }
});
