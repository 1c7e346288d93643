/**
 * Self-crossing against plain trial of all pairs with @flatten-js/core's intersections, and how much it looks at on many
 * corners: told by how often a side is looked at, which is the same on every machine.
 */
import Flatten from "@flatten-js/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filletedOutline } from "../../src/plane/fillet.ts";
import type { LineEdge } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { selfCrossing } from "../../src/plane/selfCrossing.ts";

function sidesOf(points: readonly Point[]): LineEdge[] {
  return points.map((from, i) => ({ kind: "line", from, to: points[(i + 1) % points.length]! }));
}

/** The same sides, and how often any of them has been looked at. */
function countedSides(points: readonly Point[]) {
  const count = { looks: 0 };
  const sides = sidesOf(points).map((side) =>
    Object.defineProperty({ ...side }, "kind", {
      get: () => {
        count.looks++;
        return "line";
      },
    }),
  );
  return { sides, count };
}

/** Time that this process itself has worked, so that a busy machine doesn't count. */
function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function crossesByLibrary(sides: readonly LineEdge[]): boolean {
  const segments = sides.map(
    ({ from, to }) => new Flatten.Segment(new Flatten.Point(from.x, from.y), new Flatten.Point(to.x, to.y)),
  );
  return segments.some((a, i) =>
    segments.some((b, j) => {
      const neighbours = j - i <= 1 || (i === 0 && j === segments.length - 1);
      return !neighbours && a.intersect(b).length > 0;
    }),
  );
}

describe("selfCrossing", () => {
  it("agrees with trying all pairs on random polygons", () => {
    const point = fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 40 }) });
    let crossed = 0;
    let simple = 0;
    fc.assert(
      fc.property(
        fc.uniqueArray(point, { minLength: 4, maxLength: 7, selector: (p) => `${p.x},${p.y}` }),
        (points) => {
          const sides = sidesOf(points);
          const found = selfCrossing(sides);
          // Neighbours that fold back are ours to find; the library's trial leaves neighbours out.
          const neighbours = found && (found[1] - found[0] === 1 || found[1] === 0);
          if (neighbours) return;
          const expected = crossesByLibrary(sides);
          if (expected) crossed++;
          else simple++;
          expect(found !== undefined).toBe(expected);
        },
      ),
      { seed: 21, numRuns: 3000 },
    );
    expect(Math.min(crossed, simple)).toBeGreaterThan(300);
  });

  it("finds one crossing in a wheel of a thousand teeth, and none without it, in few looks", () => {
    const wheel = (count: number): Point[] =>
      Array.from({ length: count }, (_, i) => {
        const angle = (2 * Math.PI * i) / count;
        const reach = i % 2 === 0 ? 100 : 60;
        return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
      });
    const points = wheel(1000);
    const { sides, count } = countedSides(points);
    expect(selfCrossing(sides)).toBeUndefined();
    // Two at least for each of half a million pairs, were all tried.
    expect(count.looks).toBeLessThan(40_000);
    const swapped = [...points];
    [swapped[500], swapped[502]] = [points[502]!, points[500]!];
    expect(selfCrossing(sidesOf(swapped))).toBeDefined();
  });

  it("looks at few pairs where five thousand long sides crowd around one place", () => {
    const spikes = Array.from({ length: 5000 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 5000;
      const reach = i % 2 === 0 ? 0.5 : 40;
      return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
    });
    const { sides, count } = countedSides(spikes);
    expect(selfCrossing(sides)).toBeUndefined();
    // Of twelve million pairs a fifth or so shares a cell.
    expect(count.looks).toBeLessThan(8_000_000);
  });

  it("rounds five thousand corners of a comb with long teeth in under a second", () => {
    const teeth = Array.from({ length: 1250 }, (_, i) => {
      const x = 100 - i * 0.08;
      return [
        { x, y: 100, radius: 0.005 },
        { x: x - 0.04, y: 100, radius: 0.005 },
        { x: x - 0.04, y: 1, radius: 0.005 },
        { x: x - 0.08, y: 1, radius: 0.005 },
      ];
    }).flat();
    const comb = [{ x: 0, y: 0 }, { x: 100, y: 0 }, ...teeth.slice(0, -1), { x: 0, y: 1 }];
    const begin = cpuMs();
    const result = filletedOutline(comb);
    expect(cpuMs() - begin).toBeLessThan(1000);
    expect(result.ok && result.outline.edges.length).toBeGreaterThan(9000);
  });
});
