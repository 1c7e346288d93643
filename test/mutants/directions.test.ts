/**
 * Sectors as seen from the pivot, and a body's straight pieces: each direction by atan2 of the box's telling corner, each
 * border by points along it. Source: plane geometry; that a sector is never too small is tried with points all over the piece.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import {
  directionsOf,
  leadingDirection,
  lowestDirection,
  trailingDirection,
} from "../../src/contact/sector.ts";
import { arcPieces, SolidBody } from "../../src/contact/solidBody.ts";
import { between } from "../contact/roughJob.ts";
import { outlineOf } from "../contact/shapes.ts";
import { type Point, pointToSegment } from "./roundedBlocks.ts";

function boxed([minX, minY, maxX, maxY]: readonly [number, number, number, number]): Features {
  const F = new Features(4, 0, 0);
  F.addSegment(minX, minY, maxX, maxY, 0);
  return F;
}

const ALL_ROUND = 4 * Math.PI;

describe("leadingDirection", () => {
  it.each([
    // Right of the pivot: its upper left corner leads; none over the ray, so it leads with the ray itself.
    [[3, 1, 5, 4], 0, 0, Math.atan2(4, 3)],
    [[3, 1, 5, 4], 2, 0, Math.atan2(4, 1)],
    [[3, 1, 5, 4], 1, 0.5, Math.atan2(4.5, 1.5)],
    [[3, -6, 5, -4], 0, 0, 0],
    [[3, -6, 5, -0.25], 0, 0.5, Math.atan2(0.25, 2.5)],
    [[0, 1, 5, 4], 0, 0, Math.PI / 2],
    // Reaching left of it: the lower left corner leads.
    [[-3, 1, 5, 4], 0, 0, Math.atan2(1, -3)],
    [[-3, 1, 5, 4], 2, 0.25, Math.atan2(0.75, -5.25)],
    [[3, 1, 5, 4], 4, 0, Math.atan2(1, -1)],
    [[-3, 0, 5, 4], 0, 0, Math.PI],
    // Under the ray on the left it may be anywhere.
    [[-3, -1, 5, 4], 0, 0, ALL_ROUND],
    [[-3, 0.25, 5, 4], 0, 0.5, ALL_ROUND],
  ] as const)("of a box %j that slides in by %d, grown by %d, is %d", (box, slide, grow, wanted) => {
    expect(leadingDirection(boxed(box), slide, grow)).toBeCloseTo(wanted, 12);
  });
});

describe("lowestDirection", () => {
  it.each([
    [[3, 1, 5, 4], 0, 0],
    [[-3, 0, 5, 4], 9, 0],
    [[3, -2, 5, 4], 0, Math.atan2(-2, 3)],
    [[3, -2, 5, 4], 1, Math.atan2(-2, 2)],
    [[3, -2, 5, 4], 3, -ALL_ROUND],
    [[0, -2, 5, 4], 0, -ALL_ROUND],
    [[-1, -2, 5, 4], 0, -ALL_ROUND],
  ] as const)("of a box %j that slides in by %d is %d", (box, slide, wanted) => {
    expect(lowestDirection(boxed(box), slide)).toBeCloseTo(wanted, 12);
  });
});

describe("trailingDirection", () => {
  it.each([
    [[-5, 1, -3, 4], 0, Math.atan2(4, -3)],
    [[-5, 1, -3, 4], 0.5, Math.atan2(4.5, -2.5)],
    [[-5, 1, 3, 4], 0, Math.atan2(1, 3)],
    [[-5, 1, 3, 4], 0.25, Math.atan2(0.75, 3.25)],
    [[-5, 1, 0, 4], 0, Math.PI / 2],
    [[-5, 0, 3, 4], 0, 0],
    [[-5, -1, 3, 4], 0, 0],
    [[-5, 0.25, 3, 4], 0.5, 0],
    [[-5, -4, -3, -1], 0, Math.PI],
    [[-5, -4, -3, 0], 0, Math.PI],
    [[-5, -4, -3, -0.25], 0.5, Math.atan2(0.25, -2.5)],
  ] as const)("of a box %j grown by %d is %d", (box, grow, wanted) => {
    expect(trailingDirection(boxed(box), grow)).toBeCloseTo(wanted, 12);
  });
});

/** The closed border through these corners as straight pieces. */
function border(...corners: readonly Point[]): Float64Array {
  return Float64Array.from(corners.flatMap((a, i) => [...a, ...corners[(i + 1) % corners.length]!]));
}

describe("directionsOf", () => {
  const full = [0, 2 * Math.PI];
  it.each([
    ["over the ray", border([2, 1], [4, 1], [4, 3], [2, 3]), [Math.atan2(1, 4), Math.atan2(3, 2)]],
    [
      "under it",
      border([2, -1], [2, -3], [4, -3], [4, -1]),
      [Math.atan2(-3, 2), Math.atan2(-1, 4)].map((at) => at + 2 * Math.PI),
    ],
    ["across the ray", border([2, -1], [4, -1], [4, 3], [2, 3]), full],
    [
      "across the far side",
      border([-2, -1], [-2, 3], [-4, 3], [-4, -1]),
      [Math.atan2(3, -2), Math.atan2(-1, -2) + 2 * Math.PI],
    ],
    ["all round", border([-2, -2], [3, -2], [3, 2], [-2, 2]), full],
    ["with a corner on the pivot", border([0, 0], [0, 3], [-4, 3], [-4, 0]), [Math.PI / 2, Math.PI]],
    ["askew across the ray", border([1, -3], [9, 5], [8, 6]), full],
    [
      "askew across it left of the pivot",
      border([-9, -3], [7, 5], [-8, 6]),
      [Math.atan2(5, 7), Math.atan2(-3, -9) + 2 * Math.PI],
    ],
  ] as const)("of a border %s", (_, pieces, wanted) => {
    const [least, most] = directionsOf(pieces);
    expect(least).toBeCloseTo(wanted[0]!, 12);
    expect(most).toBeCloseTo(wanted[1]!, 12);
  });
});

describe("a solid body", () => {
  const at = between(-9, 9);
  /** A five-cornered body, two corners rounded, one of them hollow. */
  const outline = outlineOf([0, 0], [10, 0, 2], [10, 8], [6, 8], [6, 4, 1.5], [0, 4]);
  const pivot = { x: 3, y: -1 };
  const body = new SolidBody(outline, pivot);
  const pieces = Array.from({ length: body.pieces.length / 4 }, (_, i) => [
    ...body.pieces.subarray(4 * i, 4 * i + 4),
  ]);
  const round = { x: 8, y: 2, radius: 2 };
  const hollow = { x: 4.5, y: 5.5, radius: 1.5 };

  it("has a closed border of straight pieces, no farther from its arcs than 0.004 mm", () => {
    pieces.forEach(([, , x, y], i) => {
      const next = pieces[(i + 1) % pieces.length]!;
      expect([x, y]).toEqual([next[0], next[1]]);
    });
    for (let i = 0; i <= 200; i++) {
      const turn = (i / 200) * (Math.PI / 2);
      for (const [arc, way] of [
        [round, -Math.PI / 2 + turn],
        [hollow, -Math.PI / 2 + turn],
      ] as const) {
        const point: Point = [
          arc.x + arc.radius * Math.cos(way) - pivot.x,
          arc.y + arc.radius * Math.sin(way) - pivot.y,
        ];
        const off = Math.min(...pieces.map(([a, b, c, d]) => pointToSegment(point, [a!, b!], [c!, d!])));
        expect(off).toBeLessThan(0.00401);
      }
    }
    // Area by the surveyor's formula: the block, less the corner cut and the step filled, π/4 off a square each.
    const area = pieces.reduce((sum, [a, b, c, d]) => sum + (a! * d! - c! * b!) / 2, 0);
    const corner = 1 - Math.PI / 4;
    expect(Math.abs(area - (10 * 4 + 4 * 4 - 4 * corner + 1.5 * 1.5 * corner))).toBeLessThan(0.03);
    // No more pieces than that wants: chords of an arc of radius R sag by s over 2·acos(1 − s/R).
    expect(pieces.length).toBeLessThan(4 + 2 * 16);
  });

  it("sorts its pieces by the way they face", () => {
    const facing = (wanted: (dx: number, dy: number) => boolean) =>
      pieces.filter(([a, b, c, d]) => wanted(c! - a!, d! - b!)).flat();
    expect([...body.facingRight]).toEqual(facing((_, dy) => dy > 0));
    expect([...body.facingUp]).toEqual(facing((dx) => dx < 0));
    expect([...body.facingDown]).toEqual(facing((dx) => dx > 0));
    expect(Math.min(body.facingRight.length, body.facingUp.length, body.facingDown.length)).toBeGreaterThan(
      8,
    );
  });

  it("holds the points between its sides and no other", () => {
    let [held, free] = [0, 0];
    for (const [x, y] of fc.sample(fc.tuple(at, at), { seed: 92, numRuns: 400 })) {
      const point = { x: x + pivot.x + 2, y: y + pivot.y + 5 };
      const inBlock =
        point.x > 0 && point.x < 10 && point.y > 0 && (point.y < 4 || (point.x > 6 && point.y < 8));
      const inSquare = (cx: number, cy: number, wide: number) =>
        point.x > cx && point.x < cx + wide && point.y > cy && point.y < cy + wide;
      const far = (arc: { x: number; y: number }) => Math.hypot(point.x - arc.x, point.y - arc.y);
      const cut = inSquare(8, 0, 2) && point.y < 2 && far(round) > round.radius;
      const filled = inSquare(4.5, 4, 1.5) && far(hollow) > hollow.radius;
      const wanted = (inBlock && !cut) || filled;
      if (Math.abs(far(round) - 2) < 0.01 || Math.abs(far(hollow) - 1.5) < 0.01) continue;
      expect(body.contains(point.x - pivot.x, point.y - pivot.y), JSON.stringify(point)).toBe(wanted);
      if (wanted) held++;
      else free++;
    }
    expect(Math.min(held, free)).toBeGreaterThan(25);
  });

  it("lies within its directions, and hardly wider", () => {
    const corners = [
      [0, 4],
      [6, 8],
      [10, 8],
      [10, 2],
      [8, 0],
      [0, 0],
    ] as const;
    const ways = corners.map(([x, y]) => Math.atan2(y - pivot.y, x - pivot.x));
    expect(body.leastDirection).toBeLessThan(Math.min(...ways));
    expect(body.leastDirection).toBeGreaterThan(Math.min(...ways) - 0.05);
    expect(body.mostDirection).toBeGreaterThan(Math.max(...ways));
    expect(body.mostDirection).toBeLessThan(Math.max(...ways) + 0.05);
  });

  it.each([
    // A chord over 2·acos(1 − 0.004/R) sags by 0.004; never fewer than two, never longer than 120°.
    [1, Math.PI / 2, Math.ceil(Math.PI / 2 / (2 * Math.acos(0.996)))],
    [20, Math.PI, Math.ceil(Math.PI / (2 * Math.acos(1 - 0.0002)))],
    [0.004, Math.PI, 2],
    [0.001, 2 * Math.PI, 3],
    [0.001, 0.1, 2],
  ])("takes for an arc of radius %d over %d rad %i pieces", (radius, sweep, count) => {
    expect(arcPieces(radius, sweep)).toBe(count);
  });
});
