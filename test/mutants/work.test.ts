/**
 * How little the kernel does: bodies out of each other's reach are not looked into, pairs of features that can't agree in
 * distance from the pivot are not solved, a root costs a handful of looks at its curve. Source: the distances themselves, worked
 * out beside each body; Newton's method doubles its digits at each step.
 */
import { describe, expect, it } from "vitest";
import { firstCrossing } from "../../src/contact/crossing.ts";
import { Features } from "../../src/contact/features.ts";
import { firstContact } from "../../src/contact/firstContact.ts";
import { leastDistance } from "../../src/contact/leastDistance.ts";
import { Meeting, type PairKind } from "../../src/contact/meeting.ts";
import { bordersOverlap } from "../../src/contact/overlap.ts";
import { makePairCurve } from "../../src/contact/pairCurve.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { blockAt } from "../contact/shapes.ts";
import { edge, hollow, round, together, watched } from "./alone.ts";
import { counted } from "./countedCurve.ts";

const still = { mm: Infinity, phiRad: 0, movingX: 0, movingY: 0, fixedX: 0, fixedY: 0 };

function contactPairs(A: Features, B: Features, swing = tableSwing(1, 0, 0, 1)): PairKind[] {
  const { meeting, pairs } = watched();
  const found = { phiRad: Infinity, kind: "roundOnEdge" as const, a: 0, b: 0 };
  firstContact(A, B, swing, swing.sweepRad, makePairCurve(), meeting, found);
  return pairs;
}

function distancePairs(A: Features, B: Features, mm: number, swing = tableSwing(1, 0, 0, 1)): PairKind[] {
  const { meeting, pairs } = watched();
  leastDistance(A, B, swing, makePairCurve(), meeting, { ...still, mm });
  return pairs;
}

const far = Math.hypot(10, 1);
const slides = tableSwing(1, 1, 0, 1);
const most = Math.tan(0.5);

describe("a pair is solved for contact only where its distances from the pivot can agree:", () => {
  it.each([
    ["a round as far out as an edge", round(10, 0.5), edge(10), 1],
    ["a round that just reaches an edge", round(9.6, 0.5), edge(10), 1],
    ["a round just short of an edge", round(9.4, 0.5), edge(10), 0],
    ["a round just past an edge's ends", round(far + 0.6, 0.5), edge(10), 0],
    ["a round just within an edge's ends", round(far + 0.4, 0.5), edge(10), 1],
    ["an edge just short of a round", edge(10), round(far + 0.6, 0.5), 0],
    ["an edge's ends at a round", edge(10), round(far + 0.4, 0.5), 1],
    ["an edge past a round", edge(10), round(9.4, 0.5), 0],
    ["an edge at a round", edge(10), round(9.6, 0.5), 1],
    ["rounds as far out", round(10, 0.5), round(10.9, 0.5), 1],
    ["rounds that miss each other", round(10, 0.5), round(11.1, 0.5), 0],
    ["rounds that miss each other, the other way", round(11.1, 0.5), round(10, 0.5), 0],
    ["sharp corners", round(10, 0), round(10, 0), 0],
    ["a sharp corner and a round", round(10, 0), round(10, 0.1), 1],
    ["a round in a hollow that it reaches", round(3, 0.5), hollow(3, 4), 1],
    ["a round too small to reach a hollow's wall", round(1, 0.5), hollow(1, 4), 0],
    ["a round in a hollow too small for it", round(3, 5), hollow(3, 4), 0],
    ["a hollow about a round", hollow(3, 4), round(3, 0.5), 1],
    ["a hollow whose wall keeps off a round", hollow(1, 4), round(1, 0.5), 0],
    ["a hollow too small for a round", hollow(3, 4), round(3, 5), 0],
  ])("%s", (_, A, B, count) => {
    // Alone, and among others that make the whole bodies reach.
    expect(contactPairs(A, B)).toHaveLength(count);
    const [nearA, nearB] = [together(A, hollow(40, 0)), together(B, hollow(40, 0))];
    expect(contactPairs(nearA, nearB)).toHaveLength(count);
  });

  it.each([
    ["a round that slides up to an edge", round(9.4 - most + 0.2, 0.5), edge(10), 1],
    ["a round that does not slide so far", round(9.4 - most - 0.2, 0.5), edge(10), 0],
    ["an edge that slides back to a round", edge(10), round(9.4 - most + 0.2, 0.5), 1],
    ["an edge that does not slide so far", edge(10), round(9.4 - most - 0.2, 0.5), 0],
    ["rounds that slide to each other", round(10, 0.5), round(11.1 + most - 0.2, 0.5), 1],
    ["rounds that do not slide so far", round(10, 0.5), round(11.1 + most + 0.2, 0.5), 0],
    ["a round that slides to a hollow's wall", round(1, 0.5), hollow(2.1, 4), 1],
    ["a hollow that slides to a round", hollow(2.1, 4), round(1, 0.5), 1],
  ])("%s", (_, A, B, count) => {
    expect(contactPairs(A, B, slides)).toHaveLength(count);
    const [nearA, nearB] = [together(A, hollow(40, 0)), together(B, hollow(40, 0))];
    expect(contactPairs(nearA, nearB, slides)).toHaveLength(count);
  });
});

describe("a pair is measured only where it can be nearer than what is known, 2 mm:", () => {
  it.each([
    ["a round near an edge", round(10 - 2.4, 0.5), edge(10), 1],
    ["a round farther in", round(10 - 2.6, 0.5), edge(10), 0],
    ["a round farther out", round(far + 2.6, 0.5), edge(10), 0],
    ["a round near an edge's ends", round(far + 2.4, 0.5), edge(10), 1],
    ["an edge near a round", edge(10), round(10 - 2.4, 0.5), 1],
    ["an edge farther out than a round", edge(10), round(10 - 2.6, 0.5), 0],
    ["an edge farther in than a round", edge(10), round(far + 2.6, 0.5), 0],
    ["rounds near each other", round(10, 0.5), round(12.9, 0.5), 1],
    ["rounds apart", round(10, 0.5), round(13.1, 0.5), 0],
    ["a round in a hollow", round(3, 0.5), hollow(3, 4), 1],
    ["a round in a hollow too small for it", round(3, 5), hollow(3, 4), 0],
    ["a hollow about a round", hollow(3, 4), round(3, 0.5), 1],
    ["a hollow too small for a round", hollow(3, 4), round(3, 5), 0],
  ])("%s", (_, A, B, count) => {
    expect(distancePairs(A, B, 2)).toHaveLength(count);
    const [nearA, nearB] = [together(A, edge(40)), together(B, edge(40))];
    expect(distancePairs(nearA, nearB, 2)).toHaveLength(count);
  });

  it("counts how far the body slides", () => {
    const short = 10 - 2.6 - most;
    expect(distancePairs(round(short + 0.2, 0.5), edge(10), 2, slides)).toHaveLength(1);
    expect(distancePairs(round(short, 0.5), edge(10), 2, slides)).toHaveLength(0);
    expect(distancePairs(edge(10), round(short + 0.2, 0.5), 2, slides)).toHaveLength(1);
    expect(distancePairs(edge(10), round(short, 0.5), 2, slides)).toHaveLength(0);
    expect(distancePairs(round(far + 2.6 + most, 0.5), edge(10), 2, slides)).toHaveLength(0);
    expect(distancePairs(round(far + 2.4 + most, 0.5), edge(10), 2, slides)).toHaveLength(1);
  });
});

it("does not look into bodies whose boxes lie apart or side by side", () => {
  const shut = (F: Features): Features => {
    Object.defineProperty(F, "segments", {
      get: () => {
        throw new Error("looked into");
      },
    });
    return F;
  };
  const middle = () => shut(blockAt(0, 0, 4, 4));
  for (const [dx, dy] of [
    [5, 1],
    [-5, 1],
    [1, 5],
    [1, -5],
    [4, 1],
    [-4, 1],
    [1, 4],
    [1, -4],
  ] as const) {
    const other = shut(blockAt(dx, dy, dx + 4, dy + 4));
    expect(bordersOverlap(middle(), other, { x: 0, y: 0 })).toBe(false);
  }
  expect(() => bordersOverlap(middle(), shut(blockAt(1, 1, 5, 5)), { x: 0, y: 0 })).toThrow("looked into");
});

describe("firstCrossing", () => {
  const turning = tableSwing(1, 0, 0, 1.8);
  const always = { meets: () => true };

  it("looks at a curve far from zero once a step, above and below", () => {
    for (const sign of [1, -1]) {
      // Far is more than the bend leaves over a step: 900 against 1·0.18²/8.
      const { curve, looks } = counted(sign * 900, 1, 0, 0, 0, 0, 0);
      expect(firstCrossing(curve, turning, 1.8, always)).toBe(Infinity);
      // Twice for its bend.
      expect(looks()).toBe(turning.steps + 1 + 2);
    }
  });

  it("looks at no step past its limit", () => {
    const { curve, looks } = counted(900, 1, 0, 0, 0, 0, 0);
    firstCrossing(curve, turning, 0.5 * turning.stepRad, always);
    expect(looks()).toBe(1 + 1 + 2);
  });

  it("closes in on a root within a dozen looks, and on a grazing one within a few dozen", () => {
    for (const root of [0.05, 0.3, 0.77, 1.2, 1.7]) {
      const { curve, looks } = counted(-Math.cos(root), 1, 0, 0, 0, 0, 0);
      expect(firstCrossing(curve, turning, 1.8, always)).toBeCloseTo(root, 7);
      expect(looks()).toBeLessThan(turning.steps + 3 + 16);
    }
    const graze = counted(1 - 1e-6, -Math.cos(0.9), -Math.sin(0.9), 0, 0, 0, 0);
    expect(firstCrossing(graze.curve, turning, 1.8, always)).toBeCloseTo(0.9 - Math.acos(1 - 1e-6 + 1e-9), 7);
    expect(graze.looks()).toBeLessThan(turning.steps + 3 + 45);
  });

  it("does so for a body that slides as it turns", () => {
    const sliding = tableSwing(1, 6, 2, 1.8);
    // The distance of (5 + s, 0) turned from the line y = c.
    for (const root of [0.2, 0.6, 1.1]) {
      const slide = 6 * Math.tan(root / 2) - 2 * root;
      const high = (5 + slide) * Math.sin(root);
      const { curve, looks } = counted(high, 0, -5, 0, 0, -1, 0);
      expect(firstCrossing(curve, sliding, 1.8, always)).toBeCloseTo(root, 7);
      expect(looks()).toBeLessThan(sliding.steps + 3 + 20);
    }
  });
});

describe("leastDistance", () => {
  it("finds a pair's lowest point within a dozen looks at a step, and gives it exactly", () => {
    const swing = tableSwing(1, 0, 0, 1.5);
    // A point 10 out rises past a point 12 out at 0.8: nearest there, 2.
    const { curve, looks } = counted(0, 0, 0, 0, 0, 0, 0);
    const fixed = new Features(0, 1, 0);
    fixed.addCorner(12 * Math.cos(0.8), 12 * Math.sin(0.8), 0);
    const found = { ...still };
    leastDistance(round(10, 0), fixed, swing, curve, new Meeting(), found);
    expect(found.mm).toBeCloseTo(2, 9);
    expect(found.phiRad).toBeCloseTo(0.8, 7);
    expect(looks()).toBeLessThan(2 + 3 * (swing.steps + 1) + 14);
  });
});
