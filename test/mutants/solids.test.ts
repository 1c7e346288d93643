/**
 * Fixed bodies of slanted sides: what lies inside, in how many pieces, in which directions they are seen; and the directions of
 * pieces that stand right over the pivot or on its level. Source: half planes and directions of corners, worked out here.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { directionsOf, leadingDirection, trailingDirection } from "../../src/contact/sector.ts";
import { arcPieces, SolidBody } from "../../src/contact/solidBody.ts";
import { type CornerOf, outlineOf } from "../contact/shapes.ts";

type Point = readonly [number, number];

const ORIGIN = { x: 0, y: 0 };
const turnedTo = (corners: readonly Point[], first: number): Point[] => [
  ...corners.slice(first),
  ...corners.slice(0, first),
];

/** A triangle and a tooth on it: every side slants, corners lie at several whole heights. */
const TOOTHED: readonly Point[] = [
  [0, 0],
  [9, -3],
  [14, 5],
  [8, 3],
  [5, 9],
  [3, 2],
];

/** To the left of a line. */
const left = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point) => (bx - ax) * (y - ay) - (by - ay) * (x - ax);

/** In one of three triangles that make up the body. */
function inToothed(point: Point): boolean {
  const [a, b, c, d, e, f] = TOOTHED as readonly [Point, Point, Point, Point, Point, Point];
  const triangles = [
    [a, b, d],
    [b, c, d],
    [d, e, f],
    [a, d, f],
  ] as const;
  return triangles.some((t) => t.every((p, i) => left(p, t[(i + 1) % 3]!, point) >= 0));
}

const onBorder = (point: Point) =>
  TOOTHED.some((a, i) => {
    const b = TOOTHED[(i + 1) % TOOTHED.length]!;
    const across = left(a, b, point) / Math.hypot(b[0] - a[0], b[1] - a[1]);
    return Math.abs(across) < 1e-3;
  });

describe("a body of slanted sides", () => {
  it("holds the points of its triangles and no other, at the heights of its corners too, wherever its border starts", () => {
    let [held, free] = [0, 0];
    for (let first = 0; first < TOOTHED.length; first++) {
      const body = new SolidBody(outlineOf(...turnedTo(TOOTHED, first)), ORIGIN);
      for (let x = -1; x <= 15; x += 0.5)
        for (let y = -4; y <= 10; y += 0.5) {
          const point: Point = [x + 0.25, y];
          if (onBorder(point)) continue;
          const inside = inToothed(point);
          expect(body.contains(...point), `${first} ${point}`).toBe(inside);
          if (inside) held++;
          else free++;
        }
    }
    expect(Math.min(held, free)).toBeGreaterThan(500);
  });

  it("asks none of its sides about a point outside its box", () => {
    const body = new SolidBody(outlineOf(...TOOTHED), ORIGIN);
    const { pieces } = body;
    let asked = 0;
    const watched = new Proxy(pieces, {
      get: (list, key) => {
        asked++;
        return Reflect.get(list, key, list);
      },
    });
    Object.defineProperty(body, "pieces", { value: watched });
    for (const [x, y, looked] of [
      [-0.01, 1, false],
      [14.01, 1, false],
      [5, -3.01, false],
      [5, 9.01, false],
      [0.01, 1, true],
      [13.99, 1, true],
      [5, -2.99, true],
      [5, 8.99, true],
    ] as const) {
      asked = 0;
      body.contains(x, y);
      expect(asked > 0, `${x} ${y}`).toBe(looked);
    }
  });

  it("is a piece a side, and no more than its arcs want", () => {
    const corners: CornerOf[] = [
      [0, 0, 2],
      [20, 0],
      [20, 10, 1],
      [0, 10],
    ];
    const { pieces } = new SolidBody(outlineOf(...corners), ORIGIN);
    expect(pieces.length / 4).toBe(4 + arcPieces(2, Math.PI / 2) + arcPieces(1, Math.PI / 2));
    for (let i = 0; i < pieces.length; i += 4)
      expect(Math.hypot(pieces[i + 2]! - pieces[i]!, pieces[i + 3]! - pieces[i + 1]!)).toBeGreaterThan(0.1);
  });
});

describe("a border is seen from the pivot", () => {
  const border = (corners: readonly Point[]) =>
    Float64Array.from(corners.flatMap(([x, y], i) => [x, y, ...corners[(i + 1) % corners.length]!]));
  const direction = ([x, y]: Point) => (Math.atan2(y, x) + 2 * Math.PI) % (2 * Math.PI);

  it.each([
    [
      "over the level",
      [
        [3, 1],
        [9, 2],
        [4, 8],
      ],
    ],
    [
      "under the level",
      [
        [3, -1],
        [-2, -7],
        [9, -2],
      ],
    ],
    // Sides that pass the level behind the pivot: at −4, −8 and nearer.
    [
      "behind, through the level",
      [
        [-10, -1],
        [2, 1],
        [-3, 6],
      ],
    ],
    [
      "behind, through the level, steep",
      [
        [-1, -9],
        [1, 20],
        [-6, 3],
      ],
    ],
    [
      "behind, through the level, the other way",
      [
        [1, 2],
        [-9, 4],
        [-12, -3],
        [-4, -1],
      ],
    ],
    [
      "on the level, ahead",
      [
        [2, 0],
        [7, 0],
        [7, 3],
      ],
    ],
    [
      "on the level, ahead, by one corner",
      [
        [2, 0],
        [7, 1],
        [7, 3],
      ],
    ],
    [
      "on the level, behind",
      [
        [-2, 0],
        [-2, 3],
        [-7, 0],
      ],
    ],
    [
      "under the level and on it, behind",
      [
        [-2, 0],
        [-7, 0],
        [-4, -3],
      ],
    ],
    [
      "from the pivot itself up",
      [
        [0, 0],
        [7, 1],
        [2, 3],
      ],
    ],
  ] as const)("%s, from the least direction of its corners to the most", (_, corners) => {
    const seen = corners.filter(([x, y]) => Math.abs(x) + Math.abs(y) > 0).map(direction);
    for (let first = 0; first < corners.length; first++) {
      const [least, most] = directionsOf(border(turnedTo(corners, first)));
      expect(least).toBeCloseTo(Math.min(...seen), 12);
      expect(most).toBeCloseTo(Math.max(...seen), 12);
    }
  });

  it.each([
    [
      "ahead",
      [
        [3, -1],
        [9, -2],
        [9, 2],
        [3, 1],
      ],
    ],
    [
      "ahead by a slant",
      [
        [-5, -4],
        [10, 3],
        [-2, 8],
      ],
    ],
    [
      "ahead by a steep slant",
      [
        [-1, -20],
        [1, 3],
        [-3, 6],
      ],
    ],
    [
      "ahead, near",
      [
        [0.5, -9],
        [0.25, 3],
        [-3, -2],
      ],
    ],
    [
      "all about the pivot",
      [
        [-5, -5],
        [5, -5],
        [5, 5],
        [-5, 5],
      ],
    ],
  ] as const)("all round where it passes the level %s", (_, corners) => {
    for (let first = 0; first < corners.length; first++)
      expect(directionsOf(border(turnedTo(corners, first)))).toEqual([0, 2 * Math.PI]);
  });
});

it("a piece that starts right over the pivot leads by a quarter turn, and one that stands behind trails by no less", () => {
  const F = new Features(1, 0, 0);
  F.addSegment(0, -1, 4, 2, 0);
  expect(leadingDirection(F, 0, 0)).toBeCloseTo(Math.PI / 2, 12);
  const behind = new Features(1, 0, 0);
  behind.addSegment(0, 1, -4, 3, 0);
  expect(trailingDirection(behind, 0)).toBeCloseTo(Math.PI / 2, 12);
});
