/**
 * What straight sheet, a formed bend and the start of the moving flat are made of: each edge with the material to its left,
 * each corner, arc and tag. Source: the rectangle and the ring sector that they are, worked out in sheetPieces.ts.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import {
  END_OF_FLAT,
  FACE_OF_FLAT,
  INSIDE_OF_BEND,
  OUTSIDE_OF_BEND,
  Strip,
} from "../../src/contact/strip.ts";
import {
  BEND_NUMBER,
  bendPiece,
  chainOf,
  FLAT_NUMBER,
  inBend,
  LAYINGS,
  type Laying,
  LONG,
  type Point,
  R,
  straightPiece,
  T,
} from "./sheetPieces.ts";

interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly tag: number;
}

const figure = (value: number) => (Math.abs(value) < 1e-9 ? 0 : value).toFixed(6);
const said = (...values: readonly number[]) => values.map(figure).join(" ");

/** The edges as text, in order of the text; mirrored, an edge runs the other way, so that its material stays left. */
function wantedEdges(edges: readonly Edge[], { place, mirrored }: Laying): string[] {
  return edges
    .map(({ from, to, tag }) => {
      const [a, b] = mirrored ? [place(to), place(from)] : [place(from), place(to)];
      return said(...a, ...b, tag);
    })
    .toSorted();
}

function edgesOf(F: Features): string[] {
  return Array.from({ length: F.segments }, (_, i) => {
    const [x, y, length] = [F.segX[i]!, F.segY[i]!, F.segLength[i]!];
    return said(x, y, x + length * F.segUx[i]!, y + length * F.segUy[i]!, F.segTag[i]!);
  }).toSorted();
}

function cornersOf(F: Features): string[] {
  return Array.from({ length: F.rounds }, (_, i) => i)
    .filter((i) => F.roundR[i] === 0)
    .map((i) => said(F.roundX[i]!, F.roundY[i]!, F.roundTag[i]!))
    .toSorted();
}

const wantedCorners = (corners: readonly (readonly [Point, number])[], { place }: Laying) =>
  corners.map(([point, tag]) => said(...place(point), tag)).toSorted();

const face = (FLAT_NUMBER << 2) | FACE_OF_FLAT;
const end = (FLAT_NUMBER << 2) | END_OF_FLAT;
const outside = (BEND_NUMBER << 2) | OUTSIDE_OF_BEND;
const inside = (BEND_NUMBER << 2) | INSIDE_OF_BEND;

describe.each(LAYINGS)("sheet $name", (laying) => {
  it.each([
    [0, 0, false],
    [0.25, 0, true],
    [0.25, 1, false],
    [0.25, 2, false],
    [0.25, 3, false],
    [0.25, 1, true],
  ] as const)(
    "straight, drawn in by %d, ends %i, free %s, is its rectangle's faces and those ends",
    (inset, ends, free) => {
      const [low, high] = [inset, T - inset];
      const F = straightPiece(laying, inset, ends, free);
      const farTag = free ? end : face;
      const edges: Edge[] = [
        { from: [0, low], to: [LONG, low], tag: face },
        { from: [LONG, high], to: [0, high], tag: face },
      ];
      const corners: [Point, number][] = [];
      if (ends & 1) {
        edges.push({ from: [0, high], to: [0, low], tag: face });
        corners.push([[0, low], face], [[0, high], face]);
      }
      if (free || ends & 2) {
        edges.push({ from: [LONG, low], to: [LONG, high], tag: farTag });
        corners.push([[LONG, low], farTag], [[LONG, high], farTag]);
      }
      expect(edgesOf(F)).toEqual(wantedEdges(edges, laying));
      expect(cornersOf(F)).toEqual(wantedCorners(corners, laying));
      expect(F.hasCore).toBe(true);
      const middle = [laying.place([0, T / 2]), laying.place([LONG, T / 2])].flat();
      expect(said(F.coreX1, F.coreY1, F.coreX2, F.coreY2)).toBe(said(...middle));
    },
  );

  it.each([
    [1, 0],
    [1, 1],
    [1, 3],
    [-1, 2],
    [-1, 3],
  ] as const)("bent, turned %i, ends %i, is two arcs and those cross-sections", (turn, ends) => {
    const [angle, inset] = [1.1, 0.25];
    const F = bendPiece(laying, turn, angle, inset, ends);
    const [under, over] = turn > 0 ? [outside, inside] : [inside, outside];
    const cut = (turned: number): readonly [Point, Point] => [
      inBend(turn, inset, turned),
      inBend(turn, T - inset, turned),
    ];
    const edges: Edge[] = [];
    const corners: [Point, number][] = [];
    for (const [bit, turned] of [
      [1, 0],
      [2, angle],
    ] as const) {
      if (!(ends & bit)) continue;
      const [low, high] = cut(turned);
      edges.push(bit === 1 ? { from: high, to: low, tag: under } : { from: low, to: high, tag: under });
      corners.push([low, under], [high, over]);
    }
    expect(edgesOf(F)).toEqual(wantedEdges(edges, laying));
    expect(cornersOf(F)).toEqual(wantedCorners(corners, laying));
    const [cx, cy] = laying.place([LONG, turn > 0 ? R + T : -R]);
    const [mx, my] = laying.place(inBend(turn, T / 2, angle / 2));
    const far = Math.hypot(mx - cx, my - cy);
    const way = [(mx - cx) / far, (my - cy) / far] as const;
    const half = Math.cos(angle / 2);
    const rounds = [F.roundX, F.roundY, F.roundR, F.roundMx, F.roundMy, F.roundCos].map((list) => list[0]!);
    expect(said(...rounds, F.roundTag[0]!)).toBe(said(cx, cy, R + T - inset, ...way, half, outside));
    const hollows = [F.hollowX, F.hollowY, F.hollowR, F.hollowMx, F.hollowMy, F.hollowCos];
    expect(said(...hollows.map((list) => list[0]!), F.hollowTag[0]!)).toBe(
      said(cx, cy, R + inset, ...way, half, inside),
    );
  });

  it("starts with its cross-section alone", () => {
    const strip = new Strip(chainOf(1, 1), T);
    laying.lay(strip);
    const F = new Features(2, 2, 1);
    strip.addStart(F, 0.25, FLAT_NUMBER);
    expect(edgesOf(F)).toEqual(wantedEdges([{ from: [0, T - 0.25], to: [0, 0.25], tag: face }], laying));
    expect(cornersOf(F)).toEqual(
      wantedCorners(
        [
          [[0, 0.25], face],
          [[0, T - 0.25], face],
        ],
        laying,
      ),
    );
  });
});

describe("a walk along the chain", () => {
  it.each([1, -1] as const)("turned %i ends where arc and flats lead, whatever was walked before", (turn) => {
    const angle = 1.1;
    const chain = chainOf(turn, angle);
    const strip = new Strip(chain, T);
    // The far end of the bend's under face, then on by flat 1 in the direction turned to.
    const [bx, by] = inBend(turn, 0, angle);
    const formedEnd = [bx + 10 * Math.cos(angle), by + turn * 10 * Math.sin(angle)];
    const flatEnd = [LONG + 4 + 10, 0];
    for (const formed of [0, 1, 1, 0, 1, 0, 0]) {
      strip.walkTo(1, formed);
      expect(said(strip.x, strip.y)).toBe(said(...(formed ? formedEnd : flatEnd)));
      expect(said(strip.c, strip.s)).toBe(
        formed ? said(Math.cos(angle), turn * Math.sin(angle)) : said(1, 0),
      );
      expect(strip.inFirstPlane()).toBe(formed === 0);
      strip.walkTo(0, formed);
      expect(said(strip.x, strip.y, strip.c, strip.s)).toBe(said(LONG, 0, 1, 0));
    }
  });
});
