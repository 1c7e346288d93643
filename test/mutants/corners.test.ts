/**
 * Which corners of an outline stick out, where straight sides and arcs meet, anywhere in the plane; how far rounds reach; what a
 * brake made ready is made of once. Source: quarter and half discs, blocks with bites, and steps drawn on paper.
 */
import { describe, expect, it } from "vitest";
import type { Brake } from "../../src/brake/brake.ts";
import { Features, featuresOf } from "../../src/contact/features.ts";
import { Machine } from "../../src/contact/machine.ts";
import type { Edge, Outline } from "../../src/plane/outline.ts";
import { outlineOf } from "../contact/shapes.ts";

type Point = readonly [number, number];

const line = (from: Point, to: Point): Edge => ({
  kind: "line",
  from: { x: from[0], y: from[1] },
  to: { x: to[0], y: to[1] },
});

/** An arc about a point from one angle over another, in quarter turns. */
function arc(center: Point, radius: number, start: number, sweep: number): Edge {
  const [startRad, sweepRad] = [(start * Math.PI) / 2, (sweep * Math.PI) / 2];
  const at = (angle: number) => ({
    x: center[0] + radius * Math.cos(angle),
    y: center[1] + radius * Math.sin(angle),
  });
  return {
    kind: "arc",
    from: at(startRad),
    to: at(startRad + sweepRad),
    center: { x: center[0], y: center[1] },
    radius,
    startRad,
    sweepRad,
  };
}

const SHAPES: readonly (readonly [string, readonly Edge[], readonly Point[]])[] = [
  [
    "a quarter disc",
    [line([0, 0], [5, 0]), arc([0, 0], 5, 0, 1), line([0, 5], [0, 0])],
    [
      [0, 0],
      [5, 0],
      [0, 5],
    ],
  ],
  [
    "a half disc",
    [line([-5, 0], [5, 0]), arc([0, 0], 5, 0, 2)],
    [
      [-5, 0],
      [5, 0],
    ],
  ],
  // A block of 10 with a half round bite of radius 2 out of its top: the bite's ends stick out, its middle does not.
  [
    "a block with a bite",
    [
      line([0, 0], [10, 0]),
      line([10, 0], [10, 10]),
      line([10, 10], [7, 10]),
      arc([5, 10], 2, 0, -2),
      line([3, 10], [0, 10]),
      line([0, 10], [0, 0]),
    ],
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [7, 10],
      [3, 10],
      [0, 10],
    ],
  ],
  // A disc of three quarters set with its corner cut in: where it meets the two sides it sticks out, at the middle it turns in.
  [
    "three quarters of a disc",
    [arc([0, 0], 4, 0, 3), line([0, -4], [0, 0]), line([0, 0], [4, 0])],
    [
      [4, 0],
      [0, -4],
    ],
  ],
  // A knob on a block: its ends turn in.
  [
    "a block with a knob",
    [
      line([0, 0], [10, 0]),
      line([10, 0], [10, 4]),
      line([10, 4], [7, 4]),
      arc([5, 4], 2, 0, 2),
      line([3, 4], [0, 4]),
      line([0, 4], [0, 0]),
    ],
    [
      [0, 0],
      [10, 0],
      [10, 4],
      [0, 4],
    ],
  ],
  [
    "a step",
    [
      line([0, 0], [9, 0]),
      line([9, 0], [9, 3]),
      line([9, 3], [4, 3]),
      line([4, 3], [4, 8]),
      line([4, 8], [0, 8]),
      line([0, 8], [0, 0]),
    ],
    [
      [0, 0],
      [9, 0],
      [9, 3],
      [4, 8],
      [0, 8],
    ],
  ],
];

const text = (points: readonly Point[]) =>
  points.map(([x, y]) => `${(x + 1e-9).toFixed(6)},${(y + 1e-9).toFixed(6)}`).toSorted();

describe.each(SHAPES)("%s", (_, edges, corners) => {
  it("has the corners that stick out and no other, wherever it lies", () => {
    for (const [dx, dy] of [
      [0, 0],
      [100, 40],
      [-100, 40],
      [-60, -300],
      [30, -300],
    ] as const) {
      const by = ({ x, y }: { x: number; y: number }) => ({ x: x + dx, y: y + dy });
      const outline = {
        edges: edges.map((edge) => {
          const moved = { ...edge, from: by(edge.from), to: by(edge.to) };
          return edge.kind === "arc" ? { ...moved, center: by(edge.center) } : moved;
        }),
      } as Outline;
      for (const [shape, x, y] of [
        [outline, 0, 0],
        [{ edges }, dx, dy],
      ] as const) {
        const F = featuresOf(shape, { x, y });
        const found = Array.from({ length: F.rounds }, (_, i) => i)
          .filter((i) => F.roundR[i] === 0)
          .map((i): Point => [F.roundX[i]! - dx, F.roundY[i]! - dy]);
        expect(text(found)).toEqual(text(corners));
      }
    }
  });
});

it("a box grows by a round as far as it reaches, each way", () => {
  const box = (lay: (F: Features) => void) => {
    const F = new Features(1, 3, 3);
    F.addCorner(3, 4, 0);
    lay(F);
    return [F.minX, F.maxX, F.minY, F.maxY];
  };
  expect(box(() => {})).toEqual([3, 3, 4, 4]);
  expect(box((F) => F.addRound(3, 4, 2, 1, 0, 0, 0))).toEqual([1, 5, 2, 6]);
  expect(box((F) => F.addHollow(3.5, 4.5, 2, 1, 0, 0, 0))).toEqual([1.5, 5.5, 2.5, 6.5]);
  expect(
    box((F) => {
      F.addRound(3, 4, 2, 1, 0, 0, 0);
      F.addRound(3, 4, 1, 1, 0, 0, 0);
    }),
  ).toEqual([1, 5, 2, 6]);
});

it("a machine makes its clamp once for each setback, and each place for a piece once", () => {
  const block = outlineOf([0, 0], [1, 0], [1, 1], [0, 1]);
  const machine = new Machine(
    {
      clamp: { kind: "profile", noseRadiusMm: 0, outlines: [block] },
      bed: block,
      leaf: { outline: block, swingDeg: 90, pivot: { x: 0, y: 0 } },
      frame: [],
    } as unknown as Brake,
    1,
  );
  const [one, other] = [machine.clampAt(2), machine.clampAt(3)];
  expect(machine.clampAt(2)).toBe(one);
  expect(machine.clampAt(3)).toBe(other);
  // The nose stands back by the setback, and on the sheet.
  expect([one[0]!.features.minX, one[0]!.features.minY]).toEqual([-2, 1]);
  expect(other[0]!.features.minX).toBe(-3);
  const piece = machine.laidOutPiece(4);
  expect(machine.laidOutPiece(5)).not.toBe(piece);
  expect(machine.laidOutPiece(4)).toBe(piece);
});
