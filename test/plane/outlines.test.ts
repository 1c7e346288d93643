/**
 * Boxes, moves and the library's measures of outlines against @flatten-js/core and distances known by hand.
 */
import Flatten from "@flatten-js/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxOf } from "../../src/plane/bounding.ts";
import { commonArea } from "../../src/plane/commonArea.ts";
import { distanceToEdge, edgesMeet } from "../../src/plane/edge.ts";
import { filletedOutline } from "../../src/plane/fillet.ts";
import { mirroredOutline, movedOutline, turnedOutline } from "../../src/plane/move.ts";
import type { ArcEdge, Edge, Outline } from "../../src/plane/outline.ts";
import { libraryPolygon } from "./library.ts";
import { areaOf, areaShared, nearestPoints, outlineHolds } from "./throughLibrary.ts";

function rounded(...list: readonly (readonly [number, number, number?])[]): Outline {
  const result = filletedOutline(list.map(([x, y, radius = 0]) => ({ x, y, radius })));
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.outline;
}

const shape = rounded([0, 0, 1], [12, 0, 2.5], [14, 7, 1], [6, 5, 2], [1, 9, 0.5]);

/** Points along the outline, as the edges' own figures give them. */
function points(outline: Outline) {
  return outline.edges.flatMap((edge) =>
    [0, 0.25, 0.5, 0.75].map((share) => {
      if (edge.kind === "line") {
        return {
          x: edge.from.x + share * (edge.to.x - edge.from.x),
          y: edge.from.y + share * (edge.to.y - edge.from.y),
        };
      }
      const angle = edge.startRad + share * edge.sweepRad;
      return {
        x: edge.center.x + edge.radius * Math.cos(angle),
        y: edge.center.y + edge.radius * Math.sin(angle),
      };
    }),
  );
}

function arc(center: { x: number; y: number }, radius: number, startRad: number, sweepRad: number): ArcEdge {
  const at = (angle: number) => ({
    x: center.x + radius * Math.cos(angle),
    y: center.y + radius * Math.sin(angle),
  });
  return { kind: "arc", from: at(startRad), to: at(startRad + sweepRad), center, radius, startRad, sweepRad };
}

describe("boxOf", () => {
  it("is the library's box, turned any way", () => {
    for (let degrees = 0; degrees < 360; degrees += 7) {
      const turned = turnedOutline(shape, { x: 3, y: -2 }, (degrees * Math.PI) / 180);
      const box = boxOf(turned);
      const library = libraryPolygon(turned).box;
      expect(box.minX).toBeCloseTo(library.xmin, 6);
      expect(box.minY).toBeCloseTo(library.ymin, 6);
      expect(box.maxX).toBeCloseTo(library.xmax, 6);
      expect(box.maxY).toBeCloseTo(library.ymax, 6);
    }
  });
});

describe("moved, turned and mirrored outlines", () => {
  it.each([
    ["moved", movedOutline(shape, 3, -4), (x: number, y: number) => [x + 3, y - 4]],
    [
      "turned a quarter about the origin",
      turnedOutline(shape, { x: 0, y: 0 }, Math.PI / 2),
      (x: number, y: number) => [-y, x],
    ],
    ["mirrored", mirroredOutline(shape), (x: number, y: number) => [-x, y]],
  ] as const)("%s: every point lands where it should, the area stays", (_, image, place) => {
    expect(areaOf(image)).toBeCloseTo(areaOf(shape), 9);
    for (const { x, y } of points(shape)) {
      const [px, py] = place(x, y);
      const off = Math.min(...image.edges.map((edge) => distanceToEdge({ x: px!, y: py! }, edge)));
      expect(off).toBeLessThan(1e-9);
    }
    // The edges still follow each other, so the material still lies to the left.
    image.edges.forEach((edge, i) => {
      const next = image.edges[(i + 1) % image.edges.length]!;
      expect(Math.hypot(edge.to.x - next.from.x, edge.to.y - next.from.y)).toBeLessThan(1e-9);
    });
    for (const edge of image.edges)
      if (edge.kind === "arc") expect(distanceToEdge(edge.to, edge)).toBeLessThan(1e-9);
  });
});

describe("distanceToEdge and edgesMeet", () => {
  it("measures a point against line and arc as the library does", () => {
    const coordinate = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const point = { x, y };
        const ours = Math.min(...shape.edges.map((edge) => distanceToEdge(point, edge)));
        const [library] = new Flatten.Point(x, y).distanceTo(libraryPolygon(shape));
        // Inside the outline the library calls the distance 0.
        if (!outlineHolds(shape, point)) expect(ours).toBeCloseTo(library, 6);
        else expect(library).toBeLessThanOrEqual(ours + 1e-6);
      }),
      { seed: 22, numRuns: 200 },
    );
  });

  const line = (x1: number, y1: number, x2: number, y2: number): Edge => ({
    kind: "line",
    from: { x: x1, y: y1 },
    to: { x: x2, y: y2 },
  });
  const half = arc({ x: 0, y: 0 }, 5, 0, Math.PI);

  it.each([
    ["crossing lines", line(0, 0, 4, 4), line(0, 4, 4, 0), true],
    ["parallel lines", line(0, 0, 4, 0), line(0, 1, 4, 1), false],
    ["lines on one line, apart", line(0, 0, 4, 0), line(5, 0, 9, 0), false],
    ["lines on one line, overlapping", line(0, 0, 4, 0), line(3, 0, 9, 0), true],
    ["a line through an arc", line(-9, 2, 9, 2), half, true],
    ["a line into an arc", line(-9, 2, 0, 2), half, true],
    ["a line out of an arc", line(0, 2, 9, 2), half, true],
    ["a line within an arc", line(-3, 2, 3, 2), half, false],
    ["a line tangent to an arc", line(-9, 5, 9, 5), half, true],
    ["a line past an arc by a hair", line(-9, 5.001, 9, 5.001), half, false],
    ["a line through the missing half", line(-4, -1, 4, -1), half, false],
    ["two arcs that cross", half, arc({ x: 6, y: 0 }, 5, Math.PI / 2, Math.PI / 2), true],
    ["two arcs that would cross below", half, arc({ x: 6, y: 0 }, 5, Math.PI, Math.PI), false],
    ["two arcs about one centre", half, arc({ x: 0, y: 0 }, 4, 0, Math.PI), false],
    ["two arcs of one circle, apart", arc({ x: 0, y: 0 }, 5, 0, 1), arc({ x: 0, y: 0 }, 5, 2, 1), false],
    [
      "two arcs of one circle, overlapping",
      arc({ x: 0, y: 0 }, 5, 0, 1),
      arc({ x: 0, y: 0 }, 5, 0.5, 1),
      true,
    ],
  ])("%s", (_, a, b, meets) => {
    expect(edgesMeet(a, b)).toBe(meets);
    expect(edgesMeet(b, a)).toBe(meets);
  });
});

describe("the library's measures", () => {
  const disc = rounded([20, 0, 2], [24, 0, 2], [24, 4, 2], [20, 4, 2]);
  const block = rounded([0, 0], [10, 0], [10, 10], [0, 10]);

  it("gives the distance and both points", () => {
    const nearest = nearestPoints(block, disc);
    expect(nearest.distanceMm).toBeCloseTo(10, 9);
    expect(nearest.on).toEqual({ x: 10, y: expect.closeTo(2, 6) as number });
    expect(nearest.near.x).toBeCloseTo(20, 9);
  });

  it("holds points, shares areas and calls touching no overlap", () => {
    expect(outlineHolds(disc, { x: 22, y: 2 })).toBe(true);
    expect(outlineHolds(disc, { x: 20.1, y: 0.1 })).toBe(false);
    expect(commonArea(block, movedOutline(block, 10, 0))).toBeCloseTo(0, 9);
    expect(commonArea(block, movedOutline(block, 9, 9))).toBeCloseTo(1, 9);
  });

  it("share the area that the library finds, rounded shapes laid over each other any way", () => {
    for (let turn = 0; turn < 36; turn++) {
      const other = movedOutline(turnedOutline(shape, { x: 6, y: 4 }, turn / 5), (turn % 5) - 2.3, turn / 9);
      // Chords within 0.001 mm along less than 60 mm of rim.
      expect(Math.abs(commonArea(shape, other) - areaShared(shape, other))).toBeLessThan(0.06);
    }
  });
});
