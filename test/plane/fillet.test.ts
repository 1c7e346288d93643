/**
 * Rounded outlines against @flatten-js/core: distances of arcs from the sides, areas and lengths measured by the library.
 * Hand values beside them: a circle of radius R in a right corner cuts off (1 − π/4)·R².
 */
import Flatten from "@flatten-js/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Corner, filletedOutline } from "../../src/plane/fillet.ts";
import type { ArcEdge, Outline } from "../../src/plane/outline.ts";
import { distanceBetween } from "../../src/plane/point.ts";
import { libraryPolygon } from "./library.ts";
import { areaOf } from "./throughLibrary.ts";

function corners(...list: readonly (readonly [number, number, number?])[]): Corner[] {
  return list.map(([x, y, radius]) => ({ x, y, ...(radius !== undefined && { radius }) }));
}

function outlineOf(list: readonly Corner[]): Outline {
  const result = filletedOutline(list);
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.outline;
}

function faultOf(list: readonly Corner[]) {
  const result = filletedOutline(list);
  return result.ok ? undefined : result.fault;
}

/** A star-shaped polygon with a corner every so often, which never crosses itself. */
const star = fc
  .array(fc.tuple(fc.double({ min: 5, max: 50, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
    minLength: 3,
    maxLength: 14,
  })
  .map((spokes) =>
    spokes.map(([reach, share], i) => {
      const angle = (2 * Math.PI * i) / spokes.length;
      return { x: reach * Math.cos(angle), y: reach * Math.sin(angle), share };
    }),
  );

describe("filletedOutline", () => {
  it("rounds a square's corner: tangent points, centre, sweep", () => {
    const { edges } = outlineOf(corners([0, 0], [10, 0, 2], [10, 10], [0, 10]));
    expect(edges.map((edge) => edge.kind)).toEqual(["line", "arc", "line", "line", "line"]);
    const arc = edges[1] as ArcEdge;
    expect(distanceBetween(arc.from, { x: 8, y: 0 })).toBeLessThan(1e-12);
    expect(distanceBetween(arc.to, { x: 10, y: 2 })).toBeLessThan(1e-12);
    expect(distanceBetween(arc.center, { x: 8, y: 2 })).toBeLessThan(1e-12);
    expect(arc.radius).toBe(2);
    expect(arc.sweepRad).toBeCloseTo(Math.PI / 2, 12);
    expect(arc.startRad).toBeCloseTo(-Math.PI / 2, 12);
  });

  it("rounds a hollow corner with a negative sweep and gives the metal that fills it", () => {
    const ell = outlineOf(corners([0, 0], [10, 0], [10, 4], [4, 4, 2], [4, 10], [0, 10]));
    const arc = ell.edges.find((edge) => edge.kind === "arc");
    expect(arc?.sweepRad).toBeCloseTo(-Math.PI / 2, 12);
    expect(arc?.center).toEqual({ x: 6, y: 6 });
    expect(areaOf(ell)).toBeCloseTo(64 + (1 - Math.PI / 4) * 4, 9);
  });

  it("makes a circle of a square rounded to half its side", () => {
    const circle = outlineOf(corners([0, 0, 5], [10, 0, 5], [10, 10, 5], [0, 10, 5]));
    expect(circle.edges.every((edge) => edge.kind === "arc")).toBe(true);
    expect(areaOf(circle)).toBeCloseTo(25 * Math.PI, 9);
  });

  it("gives the same outline for corners in clockwise order", () => {
    const list = corners([0, 0, 1], [12, 0, 2], [12, 7], [5, 9, 0.5]);
    const turned = outlineOf([...list].reverse());
    expect(areaOf(turned)).toBeCloseTo(areaOf(outlineOf(list)), 9);
    expect([...libraryPolygon(turned).faces][0]?.orientation()).toBe(Flatten.ORIENTATION.CCW);
  });

  it("closes, and each arc is tangent to both sides of its corner, on random stars", () => {
    fc.assert(
      fc.property(star, (list) => {
        // Each corner takes at most 45 % of its shorter side.
        const rounded = list.map((corner, i) => {
          const before = list[(i + list.length - 1) % list.length]!;
          const after = list[(i + 1) % list.length]!;
          const turn = Math.abs(
            Math.atan2(after.y - corner.y, after.x - corner.x) -
              Math.atan2(corner.y - before.y, corner.x - before.x),
          );
          const bend = turn > Math.PI ? 2 * Math.PI - turn : turn;
          const room = 0.45 * Math.min(distanceBetween(before, corner), distanceBetween(corner, after));
          return { x: corner.x, y: corner.y, radius: (corner.share * room) / Math.tan(bend / 2) };
        });
        const result = filletedOutline(rounded);
        // A rounding may be refused where it cuts across a spike from the other side; that is tried on its own below.
        if (!result.ok) return expect(result.fault.kind).toBe("crossing");
        const { edges } = result.outline;
        const sides = rounded.map(
          (corner, i) =>
            new Flatten.Segment(
              new Flatten.Point(corner.x, corner.y),
              new Flatten.Point(rounded[(i + 1) % list.length]!.x, rounded[(i + 1) % list.length]!.y),
            ),
        );
        edges.forEach((edge, i) => {
          expect(distanceBetween(edge.to, edges[(i + 1) % edges.length]!.from)).toBeLessThan(1e-9);
          if (edge.kind === "line") return;
          const center = new Flatten.Point(edge.center.x, edge.center.y);
          for (const end of [edge.from, edge.to]) {
            const point = new Flatten.Point(end.x, end.y);
            expect(Math.min(...sides.map((side) => point.distanceTo(side)[0]))).toBeLessThan(1e-7);
            expect(point.distanceTo(center)[0]).toBeCloseTo(edge.radius, 6);
          }
          // Tangent: the centre stands off the two sides by exactly the radius.
          const near = sides.filter((side) => Math.abs(center.distanceTo(side)[0] - edge.radius) < 1e-6);
          expect(near.length).toBeGreaterThanOrEqual(2);
        });
      }),
      { seed: 20, numRuns: 200 },
    );
  });
});

describe("filletedOutline, what makes no outline", () => {
  it("names the corner whose radius doesn't fit and the largest that does", () => {
    const list = (radius: number) => corners([0, 0], [10, 0, radius], [10, 6], [0, 6]);
    expect(faultOf(list(6.1))).toEqual({
      kind: "radius",
      corner: 1,
      largestMm: expect.closeTo(6, 9) as number,
    });
    expect(faultOf(list(6))).toBeUndefined();
  });

  it("counts two roundings of one side together", () => {
    expect(faultOf(corners([0, 0, 4], [10, 0, 6.5], [10, 20], [0, 20]))).toMatchObject({
      kind: "radius",
      corner: 1,
    });
    expect(faultOf(corners([0, 0, 4], [10, 0, 6], [10, 20], [0, 20]))).toBeUndefined();
  });

  it("names the corner as given when the corners run clockwise", () => {
    const clockwise = corners([0, 6], [10, 6], [10, 0, 7], [0, 0]);
    expect(faultOf(clockwise)).toMatchObject({ kind: "radius", corner: 2 });
  });

  it.each([
    ["two corners", corners([0, 0], [1, 1]), "few"],
    ["a repeated corner", corners([0, 0], [5, 0], [5, 0], [5, 5]), "repeated"],
    ["the first corner again at the end", corners([0, 0], [5, 0], [5, 5], [0, 0]), "repeated"],
    ["corners on one line", corners([0, 0], [5, 0], [9, 0]), "flat"],
    ["a figure of eight", corners([0, 0], [5, 5], [5, 0], [0, 7]), "crossing"],
    ["a side that runs back over itself", corners([0, 0], [10, 0], [5, 0], [5, 5]), "crossing"],
    ["a corner on another side", corners([0, 0], [10, 0], [10, 5], [5, 0], [0, 5]), "crossing"],
  ])("%s", (_, list, kind) => {
    expect(faultOf(list)?.kind).toBe(kind);
  });

  it("refuses a spike that only the cut-off corner keeps clear of", () => {
    // A slot from the far side ends in the corner that a rounding of 8 takes away.
    const slot = (radius: number) =>
      corners([0, 0], [10, 0, radius], [10, 10], [9, 10], [9.2, 0.8], [8.8, 0.8], [8.6, 10], [0, 10]);
    expect(faultOf(slot(0))).toBeUndefined();
    expect(faultOf(slot(8))?.kind).toBe("crossing");
  });
});
