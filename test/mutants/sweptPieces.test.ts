/**
 * Where a piece of sheet can be when flats before it are longer or shorter: its outline is the sum of the piece and of a way
 * along each flat, never too small and no larger than said. Source: support functions of such sums; circles, chords and tangents.
 */
import { describe, expect, it } from "vitest";
import type { Features } from "../../src/contact/features.ts";
import type { Spot } from "../../src/contact/overlap.ts";
import { SolidBody } from "../../src/contact/solidBody.ts";
import { bendCorners, Drift, hullOverlaps, pieceOf, straightCorners } from "../../src/contact/sweptPiece.ts";
import { convexHull } from "../../src/plane/convexHull.ts";
import { outlineOf } from "../contact/shapes.ts";
import { bendPiece, inBend, LAYINGS, LONG, type Point, R, straightPiece, T } from "./sheetPieces.ts";

interface At {
  readonly x: number;
  readonly y: number;
}

/** How far a set of points reaches in a direction. */
const reach = (points: readonly At[], way: number) =>
  Math.max(...points.map(({ x, y }) => x * Math.cos(way) + y * Math.sin(way)));

const inside = (hull: readonly At[], [x, y]: Point, hair: number) =>
  hull.every((a, i) => {
    const b = hull[(i + 1) % hull.length]!;
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > -hair * Math.hypot(b.x - a.x, b.y - a.y);
  });

describe("a drift", () => {
  const KITE: readonly At[] = [
    { x: 0, y: 0 },
    { x: 2, y: -1 },
    { x: 3, y: 1 },
    { x: 0.5, y: 2 },
  ];

  it.each([
    ["of one flat", [[1, 0, 2]]],
    [
      "of two square to each other",
      [
        [1, 0, 2],
        [0, 1, 3],
      ],
    ],
    [
      "of two alike",
      [
        [0.6, 0.8, 1],
        [0.6, 0.8, 2.5],
      ],
    ],
    [
      "of two that lead opposite ways",
      [
        [0.6, -0.8, 1],
        [-0.6, 0.8, 2.5],
      ],
    ],
    [
      "of three, one of them back",
      [
        [0, 1, 0.5],
        [0.8, 0.6, 1],
        [0, -1, 4],
      ],
    ],
    [
      "of two nearly alike",
      [
        [1, 0, 2],
        [Math.cos(1e-3), Math.sin(1e-3), 3],
      ],
    ],
    [
      "of flats that are known",
      [
        [1, 0, 0],
        [0, 1, 0],
      ],
    ],
    [
      "of a known flat and one that is not",
      [
        [0.6, 0.8, 0],
        [1, 0, 1],
        [0.6, 0.8, 2],
      ],
    ],
  ] as const)("%s carries a piece as far each way as they add up to", (_, flats) => {
    const drift = new Drift();
    for (const [ux, uy, half] of flats) drift.add(ux, uy, half);
    const hull = drift.over(KITE);
    for (let i = 0; i < 48; i++) {
      const way = (i * Math.PI) / 24;
      const more = flats.reduce(
        (sum, [ux, uy, half]) => sum + half * Math.abs(ux * Math.cos(way) + uy * Math.sin(way)),
        0,
      );
      expect(reach(hull, way)).toBeCloseTo(reach(KITE, way) + more, 9);
    }
  });

  it("of no flat leaves a piece where it is", () => {
    expect(new Drift().over(KITE)).toEqual(convexHull(KITE));
    expect(convexHull(KITE)).toHaveLength(4);
  });
});

describe.each(LAYINGS)("a bend $name in pieces", (laying) => {
  it.each([1, -1] as const)("turned %i is held whole, and little more", (turn) => {
    for (const angle of [0.3, Math.PI / 8 - 1e-6, Math.PI / 8 + 1e-6, 1.2, 2.5])
      for (const ends of [0, 3]) {
        const pieces = bendCorners(bendPiece(laying, turn, angle, 0, ends));
        // Of an eighth of a half turn each, at most.
        expect(pieces).toHaveLength(Math.ceil(angle / (Math.PI / 8)));
        const half = angle / pieces.length / 2;
        const hulls = pieces.map((corners) => convexHull(corners));
        for (let i = 0; i <= 60; i++)
          for (const depth of [0, T / 2, T]) {
            const point = laying.place(inBend(turn, depth, (i / 60) * angle));
            expect(hulls.some((hull) => inside(hull, point, 1e-9))).toBe(true);
          }
        // From the inside's chords to where the outside's tangents meet.
        const [cx, cy] = laying.place([LONG, turn > 0 ? R + T : -R]);
        const out = pieces.flat().map(({ x, y }) => Math.hypot(x - cx, y - cy));
        expect(Math.max(...out)).toBeCloseTo((R + T) / Math.cos(half), 9);
        expect(Math.min(...out)).toBeCloseTo(R, 9);
      }
  });

  it("has none where it is straight", () => {
    for (const ends of [0, 3]) expect(bendCorners(straightPiece(laying, 0, ends, false))).toEqual([]);
  });

  it("has of a straight piece the corners, from its middle line as thick and as long as asked", () => {
    for (const [half, more] of [
      [T / 2, 0],
      [0.3, 7],
    ] as const) {
      const corners = straightCorners(straightPiece(laying, 0, 0, false), half, more);
      const wanted = [0, LONG + more].flatMap((x) =>
        [T / 2 - half, T / 2 + half].map((y) => laying.place([x, y])),
      );
      expect(corners).toHaveLength(4);
      for (const [x, y] of wanted)
        expect(Math.min(...corners.map((one) => Math.hypot(one.x - x, one.y - y)))).toBeLessThan(1e-9);
    }
  });
});

/** A block askew, so that no side is level. */
const blockAt = (x: number, y: number, half: number): At[] =>
  [0, 1, 2, 3].map((i) => {
    const way = 0.4 + (i * Math.PI) / 2;
    return { x: x + half * Math.cos(way), y: y + half * Math.sin(way) };
  });

it("a convex outline is a piece with a side from each corner to the next, its material inside", () => {
  const hull = blockAt(3, -2, 4);
  const F: Features = pieceOf(hull);
  expect([F.segments, F.rounds, F.hollows, F.hasCore]).toEqual([4, 0, 0, false]);
  hull.forEach((from, i) => {
    const to = hull[(i + 1) % 4]!;
    expect([F.segX[i], F.segY[i]]).toEqual([from.x, from.y]);
    expect(F.segX[i]! + F.segLength[i]! * F.segUx[i]!).toBeCloseTo(to.x, 12);
    expect(F.segY[i]! + F.segLength[i]! * F.segUy[i]!).toBeCloseTo(to.y, 12);
  });
});

describe("a convex outline and a body", () => {
  const at: Spot = { x: 0, y: 0 };
  const bodyAt = (x: number, y: number, half: number, first: number) => {
    const corners = blockAt(x, y, half);
    const turned = [...corners.slice(first), ...corners.slice(0, first)];
    return new SolidBody(outlineOf(...turned.map((one) => [one.x, one.y] as const)), { x: 0, y: 0 });
  };

  it.each([
    ["cross", 6, 4],
    ["have one middle, the body within", 0, 1],
    ["have one middle, the body about it", 0, 20],
    ["nearly have one middle, the body within", 1, 2],
    ["lie apart", 12, 4],
    ["lie side by side or corner in corner", 5.8, 1],
    ["nearly touch side by side", 4.3, 1],
  ] as const)("that %s", (_, apart, half) => {
    let some = 0;
    // The body beside the outline, about (3, −2), in each direction, either border starting at each corner.
    for (let i = 0; i < 16; i++)
      for (let first = 0; first < 4; first++) {
        const way = i * (Math.PI / 8);
        const hull = blockAt(3, -2, 5);
        const turned = [...hull.slice(i % 4), ...hull.slice(0, i % 4)];
        const middle = 0.4 + way;
        const body = bodyAt(3 + apart * Math.cos(middle), -2 + apart * Math.sin(middle), half, first);
        // Sides stand (5 + half)/√2 apart where they touch, and face 45° off the corners.
        const off = [1, -1].map((side) => Math.abs(apart * Math.cos(way + (side * Math.PI) / 4)));
        const overlap = Math.max(...off) < (5 + half) / Math.SQRT2;
        expect(hullOverlaps(turned, pieceOf(turned), body, at), `${i} ${first}`).toBe(overlap);
        some += Number(overlap);
      }
    expect(some > 0).toBe(apart !== 12);
  });
});
