/**
 * What a body's features say of themselves: nearest and farthest distance from the pivot, box, corners, arcs.
 * Source: plane geometry, distances of points and segments worked out again (roundedBlocks.ts).
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { Features, featuresOf } from "../../src/contact/features.ts";
import { between } from "../contact/roughJob.ts";
import { outlineOf } from "../contact/shapes.ts";
import { type Point, pointToSegment } from "./roundedBlocks.ts";

const ORIGIN: Point = [0, 0];
const at = between(-9, 9);
const segments = fc
  .sample(fc.noBias(fc.tuple(at, at, at, at)), { seed: 91, numRuns: 60 })
  .map(([a, b, c, d]): readonly [Point, Point] => [
    [a, b],
    [c, d],
  ]);

const box = (F: Features) => [F.minX, F.maxX, F.minY, F.maxY];

it("gives a straight edge's nearest and farthest distance, box and line, alone or after others", () => {
  const all = new Features(segments.length, 1, 1);
  segments.forEach(([a, b], i) => {
    const F = new Features(1, 1, 1);
    const near = pointToSegment(ORIGIN, a, b);
    const far = Math.max(Math.hypot(...a), Math.hypot(...b));
    for (const [one, j] of [
      [F, 0],
      [all, i],
    ] as const) {
      one.addSegment(...a, ...b, 7 + i);
      expect(one.segNear[j]).toBeCloseTo(near, 9);
      expect(one.segFar[j]).toBeCloseTo(far, 9);
      expect(one.segTag[j]).toBe(7 + i);
      expect(one.segLength[j]).toBeCloseTo(Math.hypot(b[0] - a[0], b[1] - a[1]), 9);
      const end = [
        one.segX[j]! + one.segUx[j]! * one.segLength[j]!,
        one.segY[j]! + one.segUy[j]! * one.segLength[j]!,
      ];
      expect([one.segX[j], one.segY[j]]).toEqual(a);
      expect(Math.hypot(end[0]! - b[0], end[1]! - b[1])).toBeLessThan(1e-9);
      // The line's offset along the outward normal (uy, −ux).
      expect(one.segUy[j]! * b[0] - one.segUx[j]! * b[1]).toBeCloseTo(one.segOff[j]!, 9);
    }
    expect(F.near).toBeCloseTo(near, 9);
    expect(F.far).toBeCloseTo(far, 9);
    const wanted = [Math.min(a[0], b[0]), Math.max(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[1], b[1])];
    box(F).forEach((side, k) => void expect(side).toBeCloseTo(wanted[k]!, 9));
  });
  expect(all.near).toBeCloseTo(Math.min(...segments.map(([a, b]) => pointToSegment(ORIGIN, a, b))), 9);
  expect(all.far).toBeCloseTo(Math.max(...segments.flat().map((point) => Math.hypot(...point))), 9);
  const [xs, ys] = [0, 1].map((i) => segments.flat().map((point) => point[i]!));
  expect(box(all)).toEqual([
    expect.closeTo(Math.min(...xs!), 9),
    expect.closeTo(Math.max(...xs!), 9),
    expect.closeTo(Math.min(...ys!), 9),
    expect.closeTo(Math.max(...ys!), 9),
  ] as unknown[]);
});

it("leaves out what is shorter than a nanometre", () => {
  const F = new Features(2, 0, 0);
  F.addSegment(1, 1, 1, 1 + 9e-7, 0);
  F.addSegment(1, 1, 1, 1, 0);
  expect([F.segments, F.near]).toEqual([0, Infinity]);
  F.addSegment(1, 1, 1, 1 + 2e-6, 0);
  expect(F.segments).toBe(1);
});

it.each([
  ["convex", 3, 4, 2, 3, 7],
  ["convex, about the pivot", 0.3, 0.4, 2, -1.5, 2.5],
  ["hollow", 3, 4, 2, 3, 7],
  ["hollow, about the pivot", 0.3, 0.4, 2, 0, 2.5],
] as const)("takes a whole circle for an arc (%s at %d, %d of %d)", (kind, x, y, r, near, far) => {
  for (const first of [true, false]) {
    const F = new Features(1, 2, 2);
    // Something nearer, farther and wider before it takes no notice of it.
    if (!first) F.addSegment(-40, -0.001, 40, -0.001, 0);
    if (kind.startsWith("convex")) F.addRound(x, y, r, 0.6, 0.8, 0.5, 3);
    else F.addHollow(x, y, r, 0.6, 0.8, 0.5, 3);
    const [rounds, hollows] = kind.startsWith("convex") ? [1, 0] : [0, 1];
    expect([F.rounds, F.hollows]).toEqual([rounds, hollows]);
    const kept = rounds
      ? [F.roundR, F.roundReach, F.roundCos, F.roundTag]
      : [F.hollowR, F.hollowReach, F.hollowCos, F.hollowTag];
    expect(kept.map((list) => list[0])).toEqual([r, Math.hypot(x, y), 0.5, 3]);
    expect(F.near).toBeCloseTo(first ? near : Math.min(near, 0.001), 12);
    expect(F.far).toBeCloseTo(first ? far : Math.max(far, Math.hypot(40, 0.001)), 12);
    if (first) expect(box(F)).toEqual([x - r, x + r, y - r, y + r]);
    else expect(box(F)).toEqual([-40, 40, Math.min(-0.001, y - r), y + r]);
  }
});

it("lowers and raises near and far with each arc that reaches on", () => {
  const F = new Features(0, 3, 3);
  F.addRound(6, 8, 1, 1, 0, 0, 0);
  expect([F.near, F.far]).toEqual([9, 11]);
  F.addRound(6, 8, 2, 1, 0, 0, 0);
  expect([F.near, F.far]).toEqual([8, 12]);
  F.addHollow(6, 8, 3, 1, 0, 0, 0);
  expect([F.near, F.far]).toEqual([7, 13]);
  F.addHollow(6, 8, 0.5, 1, 0, 0, 0);
  F.addCorner(6, 8, 0);
  expect([F.near, F.far]).toEqual([7, 13]);
  expect([F.roundR[2], F.roundCos[2]! < -1]).toEqual([0, true]);
});

it("is empty again once cleared", () => {
  const fresh = JSON.stringify(new Features(2, 2, 2));
  const F = new Features(2, 2, 2);
  expect([F.cutRule, F.hasCore, F.minX, F.maxX, F.minY, F.maxY, F.near, F.far]).toEqual([
    "none",
    false,
    Infinity,
    -Infinity,
    Infinity,
    -Infinity,
    Infinity,
    0,
  ]);
  F.addSegment(1, 2, 3, 4, 5);
  F.addRound(1, 2, 3, 1, 0, 0, 0);
  F.addHollow(1, 2, 3, 1, 0, 0, 0);
  F.setCore(1, 2, 3, 4);
  F.cutRule = "onlyCut";
  expect([F.coreX1, F.coreY1, F.coreX2, F.coreY2, F.hasCore]).toEqual([1, 2, 3, 4, true]);
  F.clear();
  const { segments, rounds, hollows, hasCore, cutRule, near, far } = F;
  expect([segments, rounds, hollows, hasCore, cutRule, near, far, ...box(F)]).toEqual([
    ...[0, 0, 0, false, "none", Infinity, 0],
    ...[Infinity, -Infinity, Infinity, -Infinity],
  ]);
  expect(fresh.length).toBeGreaterThan(0);
});

it("has of an outline each edge, each convex corner that turns, each arc, moved", () => {
  // A block with one rounded corner, a notch (two hollow corners, one of them rounded) and a smooth run-over.
  const outline = outlineOf([0, 0], [10, 0, 2], [10, 6], [6, 6], [6, 3, 1], [4, 3], [4, 6], [0, 6], [0, 3]);
  const F = featuresOf(outline, { x: 100, y: -50 });
  const corners = Array.from({ length: F.rounds }, (_, i) => [
    F.roundX[i]! - 100,
    F.roundY[i]! + 50,
    F.roundR[i]!,
  ]);
  expect(corners.map((corner) => corner.join()).toSorted()).toEqual(
    ["0,0,0", "0,6,0", "10,6,0", "4,6,0", "6,6,0", "8,2,2"].toSorted(),
  );
  expect(F.hollows).toBe(1);
  expect([F.hollowX[0], F.hollowY[0], F.hollowR[0]]).toEqual([105, -46, 1]);
  // A quarter each: the middle at 45°, outward of the round, into the corner of the hollow.
  const h = Math.SQRT1_2;
  const round = corners.findIndex(([, , r]) => r === 2);
  const figures = [
    F.roundMx[round]!,
    F.roundMy[round]!,
    F.roundCos[round]!,
    F.hollowMx[0]!,
    F.hollowMy[0]!,
    F.hollowCos[0]!,
  ];
  figures.forEach((figure, i) => void expect(figure).toBeCloseTo([h, -h, h, h, -h, h][i]!, 9));
  expect(F.segments).toBe(9);
  expect(box(F)).toEqual([100, 110, -50, -44]);
});
