/**
 * Rounded blocks that turn about the pivot, slide, or both, over blocks that stand: overlap at rest, first contact, least
 * distance, and the points of each. Source: distances of the inner blocks less the radii (roundedBlocks.ts), marched over the
 * swing by no more than the distance left.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bordersOverlap } from "../../src/contact/overlap.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { between } from "./roughJob.ts";
import {
  blockPairs,
  offBorder,
  type Point,
  polygonDistance,
  type RoundedBlock,
  turned,
} from "./roundedBlocks.ts";
import { contactOf, distanceOf, nearerThan } from "./shapes.ts";

/** Nearer than this two blocks neither clearly meet nor clearly pass. */
const GRAZE = 0.01;
/** Longest step of the march. */
const COARSEST = 0.01;

interface Case {
  readonly moving: RoundedBlock;
  readonly fixed: RoundedBlock;
  readonly turns: 0 | 1;
  readonly slideTan: number;
  readonly slideTurn: number;
  readonly from: number;
  readonly to: number;
}

const cases = fc
  .record({
    pair: blockPairs([2, 10], [0.4, 2.4], 6),
    turns: fc.constantFrom<(0 | 1)[]>(1, 1, 1, 0),
    slideTan: fc.oneof(fc.constant(0), between(0, 9)),
    slideTurn: fc.oneof(fc.constant(0), between(0, 4)),
    from: fc.oneof(fc.constant(0), between(0, 0.8)),
    long: between(0.3, 1.6),
  })
  .map(({ long, pair: [moving, fixed], ...rest }): Case => {
    return { ...rest, moving, fixed, to: rest.from + long };
  });

function movedInner({ moving, turns, slideTan, slideTurn }: Case, phi: number): Point[] {
  const slide = slideTan * Math.tan(phi / 2) - slideTurn * phi;
  return moving.inner.map(([x, y]) => turned([x + slide, y], turns * phi));
}

const gapAt = (one: Case, phi: number) =>
  polygonDistance(movedInner(one, phi), one.fixed.inner) - one.moving.radius - one.fixed.radius;

interface Truth extends Case {
  /** First angle at which the two touch; Infinity where they never do. */
  readonly first: number;
  readonly least: number;
}

/** The lowest gap within a step of `where`, by thirds. */
function lowestAbout(one: Case, where: number): number {
  let [low, high] = [Math.max(one.from, where - COARSEST), Math.min(one.to, where + COARSEST)];
  for (let i = 0; i < 60; i++) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (gapAt(one, left) < gapAt(one, right)) high = right;
    else low = left;
  }
  return gapAt(one, (low + high) / 2);
}

/** Marches by the distance left over the most that any point moves; undefined where a graze is too fine to tell. */
function truthOf(one: Case): Truth | undefined {
  const reach = Math.max(...one.moving.inner.map(([x, y]) => Math.hypot(x, y))) + one.moving.radius;
  const slides = one.slideTan * Math.tan(one.to / 2) + one.slideTurn * one.to;
  const rate = (one.slideTan / 2) * (1 + Math.tan(one.to / 2) ** 2) + one.slideTurn;
  const speed = one.turns * (reach + slides) + rate;
  let phi = one.from;
  let [least, where] = [Infinity, phi];
  while (true) {
    const gap = gapAt(one, phi);
    if (gap < least) [least, where] = [gap, phi];
    if (gap < 1e-9 || phi >= one.to) break;
    phi = Math.min(one.to, phi + Math.min(COARSEST, Math.max(gap, 1e-4) / Math.max(speed, 0.1)));
  }
  if (least >= 1e-9) {
    const lowest = lowestAbout(one, where);
    return lowest > GRAZE ? { ...one, first: Infinity, least: lowest } : undefined;
  }
  if (phi === one.from) return undefined;
  // Deeper soon after, so that it is no graze.
  const deep = Math.min(one.to, phi + 0.02);
  if (gapAt(one, (phi + deep) / 2) > -1e-6 && gapAt(one, deep) > 0) return undefined;
  let [free, met] = [Math.max(one.from, phi - 1e-3), phi];
  while (met - free > 1e-11) {
    const middle = (free + met) / 2;
    if (gapAt(one, middle) > 0) free = middle;
    else met = middle;
  }
  return { ...one, first: met, least: 0 };
}

const truths = fc.sample(fc.noBias(cases), { seed: 71, numRuns: 300 }).flatMap((one) => truthOf(one) ?? []);
const meets = truths.filter(({ first }) => first < Infinity);
const passes = truths.filter(({ first }) => first === Infinity);

const swingOf = ({ turns, slideTan, slideTurn, from, to }: Case) =>
  tableSwing(turns, slideTan, slideTurn, to, from);

function groups<Item>(items: readonly Item[], size: number): Item[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}

it("has enough blocks that meet and that pass", () => {
  expect(Math.min(meets.length, passes.length)).toBeGreaterThan(60);
});

describe.each(groups(meets, 10).map((some) => ({ some })))("blocks that meet", ({ some }) => {
  it("meet first at the angle marched to, and not before", () => {
    for (const one of some) {
      const swing = swingOf(one);
      const meet = (limit?: number) => contactOf(one.moving.features, one.fixed.features, swing, limit);
      expect(Math.abs(meet() - one.first)).toBeLessThan(1e-6);
      // The limit cuts off what comes at it or later, and nothing before.
      expect(meet(one.first - 1e-3)).toBe(Infinity);
      expect(meet(one.first + 1e-3)).toBeLessThan(Infinity);
    }
  });
});

describe.each(groups(passes, 8).map((some) => ({ some })))("blocks that pass", ({ some }) => {
  it("have no contact, and the least distance marched over, whatever the cut-off", () => {
    for (const one of some) {
      const swing = swingOf(one);
      const [A, B] = [one.moving.features, one.fixed.features];
      expect(contactOf(A, B, swing)).toBe(Infinity);
      for (const cutOff of [Infinity, one.least + 3, one.least + 1e-5]) {
        const near = distanceOf(A, B, swing, cutOff);
        expect(Math.abs(near.mm - one.least)).toBeLessThan(1e-6);
        expect(near.phiRad).toBeGreaterThanOrEqual(one.from);
        expect(near.phiRad).toBeLessThanOrEqual(one.to + 1e-12);
        expect(gapAt(one, near.phiRad)).toBeCloseTo(near.mm, 6);
        // No nearer a hair to either side.
        for (const beside of [near.phiRad - 1e-3, near.phiRad + 1e-3])
          if (beside > one.from && beside < one.to)
            expect(gapAt(one, beside)).toBeGreaterThan(near.mm - 1e-9);
        const moved = { ...one.moving, inner: movedInner(one, near.phiRad) };
        expect(offBorder([near.movingX, near.movingY], moved)).toBeLessThan(1e-6);
        expect(offBorder([near.fixedX, near.fixedY], one.fixed)).toBeLessThan(1e-6);
        expect(Math.hypot(near.movingX - near.fixedX, near.movingY - near.fixedY)).toBeCloseTo(near.mm, 6);
      }
      expect(nearerThan(A, B, swing, one.least - 1e-5)).toBeUndefined();
    }
  });
});

const pairs = fc
  .sample(fc.noBias(blockPairs([0, 6], [0.2, 2], 5)), { seed: 72, numRuns: 300 })
  .map(([A, B]) => ({ A, B, gap: polygonDistance(A.inner, B.inner) - A.radius - B.radius }))
  // Of one inside the other the borders do not cross: those whose middles are so near are left out.
  .filter(
    ({ A, B, gap }) =>
      Math.abs(gap) > GRAZE && Math.hypot(middle(A)[0] - middle(B)[0], middle(A)[1] - middle(B)[1]) > 3,
  );

function middle({ inner }: RoundedBlock): Point {
  return [(inner[0]![0] + inner[2]![0]) / 2, (inner[0]![1] + inner[2]![1]) / 2];
}

describe.each(groups(pairs, 40).map((some) => ({ some })))("blocks at rest", ({ some }) => {
  it("overlap where their inner blocks are nearer than both radii, at a point in both", () => {
    expect(some.length).toBeGreaterThan(2);
    for (const { A, B, gap } of some) {
      const at = { x: Infinity, y: Infinity };
      expect(bordersOverlap(A.features, B.features, at)).toBe(gap < 0);
      expect(bordersOverlap(B.features, A.features, { x: 0, y: 0 })).toBe(gap < 0);
      if (gap < 0)
        expect(Math.min(offBorder([at.x, at.y], A), offBorder([at.x, at.y], B))).toBeLessThan(1e-6);
    }
  });
});
