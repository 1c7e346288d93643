/**
 * The convex hull, against the rule that no point lies outside it and none of it can be left out; edges put into loops.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { chained } from "../../src/plane/chained.ts";
import { convexHull } from "../../src/plane/convexHull.ts";
import type { Edge } from "../../src/plane/outline.ts";

const points = fc.array(
  fc.record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) }),
  {
    minLength: 4,
    maxLength: 30,
  },
);

test("convexHull turns left at every corner, is made of the points, and holds all of them", () => {
  let whole = 0;
  fc.assert(
    fc.property(points, (all) => {
      const hull = convexHull(all);
      if (hull.length < 3) return;
      whole += 1;
      hull.forEach((a, i) => {
        const b = hull[(i + 1) % hull.length]!;
        const c = hull[(i + 2) % hull.length]!;
        const left = (p: { x: number; y: number }) => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
        expect(left(c)).toBeGreaterThan(0);
        for (const point of all) expect(left(point)).toBeGreaterThanOrEqual(0);
        expect(all).toContainEqual(a);
      });
    }),
    { seed: 3, numRuns: 300 },
  );
  expect(whole).toBeGreaterThan(250);
});

test("chained puts shuffled edges of two squares into two loops", () => {
  const square = (x: number, size: number): Edge[] => {
    const corners = [
      { x, y: 0 },
      { x: x + size, y: 0 },
      { x: x + size, y: size },
      { x, y: size },
    ];
    return corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % 4]! }));
  };
  const [a, b] = [square(0, 1), square(5, 2)];
  const run = chained([a[2]!, b[1]!, a[0]!, b[3]!, a[3]!, b[0]!, b[2]!, a[1]!]);
  expect(run).toHaveLength(8);
  const breaks = run.filter((edge, i) => i > 0 && run[i - 1]!.to !== edge.from);
  expect(breaks).toHaveLength(1);
  expect(run.slice(0, 4).every(({ from }) => from.x <= 1)).toBe(true);
});
