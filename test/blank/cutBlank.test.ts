/**
 * Cut-outs of a blank: where relief holes come (FAA-H-8083-31, chapter 4, relief holes at the crossing of the inside bend
 * tangent lines), what is cut, and how much sheet is left: closed forms of the circle, and a count of points on a grid.
 */
import { describe, expect, test } from "vitest";
import { cutBlank } from "../../src/blank/cutBlank.ts";
import { areaMm2, cutEdges } from "../../src/blank/cutEdges.ts";
import type { CutOut } from "../../src/blank/cutOut.ts";
import { cutReliefs } from "../../src/blank/cutReliefs.ts";
import { SheetCells } from "../../src/blank/sheetCells.ts";
import type { Edge } from "../../src/plane/outline.ts";

const SIZE = { widthMm: 100, lengthMm: 80 };
/** Two bends at r = 1.2 in 0.8 sheet: holes of 1/8 in, the handbook's least up to 0.064 in. */
const BENDS = [
  { tangentsMm: [18, 20.5], insideRadiusMm: 1.2 },
  { tangentsMm: [70, 72.5], insideRadiusMm: 1.2 },
] as const;
const HOLE_MM = 25.4 / 8;
const DISC_MM2 = (Math.PI * HOLE_MM * HOLE_MM) / 4;

const out = (x0: number, x1: number, y0: number, y1: number): CutOut => ({
  acrossMm: [x0, x1],
  alongMm: [y0, y1],
});
const holesOf = (...cutOuts: CutOut[]) => cutReliefs(BENDS, cutOuts, SIZE, 0.8);
const centers = (...cutOuts: CutOut[]) => holesOf(...cutOuts).map(({ center }) => [center.x, center.y]);

describe("cutReliefs", () => {
  test("a corner cut away to the web has one hole, on the tangent line at the web's side", () => {
    expect(holesOf(out(0, 20.5, 0, 15))).toEqual([
      { center: { x: 20.5, y: 15 }, diameterMm: HOLE_MM, bend: 0, cutOut: 0 },
    ]);
    expect(centers(out(0, 20.5, 65, 80))).toEqual([[20.5, 65]]);
    expect(centers(out(70, 100, 0, 15))).toEqual([[70, 15]]);
  });

  test("a notch between the ends has a hole at either side of it", () => {
    expect(centers(out(0, 30, 30, 50))).toEqual([
      [20.5, 30],
      [20.5, 50],
    ]);
  });

  test("a notch through both bends, open at one end, takes the side away from that end for both", () => {
    expect(centers(out(0, 75, 30, 50)).map(([x]) => x)).toEqual([20.5, 20.5, 72.5, 72.5]);
  });

  test("a window takes the side toward the middle of the blank", () => {
    expect(centers(out(10, 30, 30, 50)).map(([x]) => x)).toEqual([20.5, 20.5]);
    expect(centers(out(60, 80, 30, 50)).map(([x]) => x)).toEqual([70, 70]);
  });

  test("a cut-out clear of the bends, or only up to a tangent line, wants none", () => {
    expect(holesOf(out(0, 18, 30, 50), out(20.5, 70, 10, 20), out(80, 100, 0, 80))).toEqual([]);
    expect(holesOf(out(0, 18.04, 30, 50))).toEqual([]);
  });

  test("where a cut-out goes on in the next there is no edge to run into", () => {
    expect(centers(out(0, 30, 0, 20), out(0, 30, 20, 40))).toEqual([[20.5, 40]]);
  });

  test("a strip cut off over the whole width only makes the blank shorter", () => {
    expect(holesOf(out(0, 100, 0, 10))).toEqual([]);
  });

  test("a larger radius takes a larger hole: twice the radius", () => {
    const wide = [{ tangentsMm: [18, 24] as const, insideRadiusMm: 3 }];
    expect(cutReliefs(wide, [out(0, 24, 0, 9)], SIZE, 0.8)[0]?.diameterMm).toBe(6);
  });
});

describe("cutEdges", () => {
  const edgesOf = (...cutOuts: CutOut[]) => cutEdges(SIZE, cutOuts, holesOf(...cutOuts));
  const left = (...cutOuts: CutOut[]) => areaMm2(edgesOf(...cutOuts));

  test("without cut-outs: the rectangle", () => {
    expect(cutEdges(SIZE, [], [])).toHaveLength(4);
    expect(left()).toBeCloseTo(8000, 9);
  });

  test("three quarters of a corner's hole lie in the sheet", () => {
    expect(left(out(0, 20.5, 0, 15))).toBeCloseTo(8000 - 20.5 * 15 - 0.75 * DISC_MM2, 9);
  });

  test("half of a hole lies in the sheet where the cut runs on past the tangent line", () => {
    expect(left(out(0, 40, 30, 50))).toBeCloseTo(8000 - 40 * 20 - DISC_MM2, 9);
  });

  test("cut-outs that touch are one: no cut between them", () => {
    const one = edgesOf(out(30, 60, 10, 30));
    const two = edgesOf(out(30, 45, 10, 30), out(45, 60, 10, 30));
    expect(two).toHaveLength(one.length);
    expect(areaMm2(two)).toBeCloseTo(areaMm2(one), 9);
  });

  test("each cut starts where another ends, and none stands twice", () => {
    const edges = edgesOf(out(0, 20.5, 0, 15), out(0, 30, 30, 32), out(70, 100, 20, 80), out(35, 50, 10, 20));
    const key = (x: number, y: number) => `${x.toFixed(6)} ${y.toFixed(6)}`;
    const starts = edges.map((edge) => key(edge.from.x, edge.from.y)).sort();
    const ends = edges.map((edge) => key(edge.to.x, edge.to.y)).sort();
    expect(starts).toEqual(ends);
    expect(new Set(starts).size).toBe(starts.length);
  });

  test("holes that run into each other, and past the end of the sheet, are cut where there is sheet", () => {
    // A slot 2 wide: its two holes of 3.175 overlap. One 1 from the end: its hole runs out of the sheet.
    const cutOuts = [out(0, 20.5, 30, 32), out(70, 100, 0, 79)];
    const holes = holesOf(...cutOuts);
    const counted = countedMm2((x, y) => isSheet(x, y, cutOuts, holes));
    expect(left(...cutOuts)).toBeGreaterThan(counted - 3);
    expect(left(...cutOuts)).toBeLessThan(counted + 3);
  });

  test("a hole alone in the sheet is a whole circle", () => {
    const hole = { center: { x: 50, y: 40 }, diameterMm: 10 };
    const edges: readonly Edge[] = cutEdges(SIZE, [], [hole]);
    expect(edges.filter((edge) => edge.kind === "arc")).toHaveLength(1);
    expect(areaMm2(edges)).toBeCloseTo(8000 - 25 * Math.PI, 9);
  });
});

interface Round {
  readonly center: { readonly x: number; readonly y: number };
  readonly diameterMm: number;
}

function isSheet(x: number, y: number, cutOuts: readonly CutOut[], holes: readonly Round[]): boolean {
  const cut = cutOuts.some(
    ({ acrossMm, alongMm }) => x > acrossMm[0] && x < acrossMm[1] && y > alongMm[0] && y < alongMm[1],
  );
  return (
    !cut &&
    !holes.some(({ center, diameterMm }) => (x - center.x) ** 2 + (y - center.y) ** 2 < diameterMm ** 2 / 4)
  );
}

/** Area by counting the middles of squares of a tenth. */
function countedMm2(inside: (x: number, y: number) => boolean): number {
  let squares = 0;
  for (let x = 0.05; x < SIZE.widthMm; x += 0.1) {
    for (let y = 0.05; y < SIZE.lengthMm; y += 0.1) if (inside(x, y)) squares += 1;
  }
  return squares / 100;
}

describe("SheetCells", () => {
  test("a blank that only hangs together by a corner is in two pieces", () => {
    expect(new SheetCells(SIZE, [out(0, 50, 0, 40), out(50, 100, 40, 80)]).inOnePiece()).toBe(false);
    expect(new SheetCells(SIZE, [out(0, 50, 0, 40), out(51, 100, 40, 80)]).inOnePiece()).toBe(true);
    expect(new SheetCells(SIZE, [out(0, 100, 0, 80)]).inOnePiece()).toBe(false);
    expect(new SheetCells(SIZE, []).inOnePiece()).toBe(true);
  });
});

describe("cutBlank", () => {
  const part = {
    thicknessMm: 0.8,
    flatsMm: [18, 49.5, 27.5],
    bends: BENDS.map(({ insideRadiusMm }) => ({
      angleDeg: 90,
      turn: "up" as const,
      insideRadiusMm,
      overbendDeg: 92,
      allowanceMm: 2.5,
      bendSetbackMm: 2,
      deductionMm: 1.5,
    })),
  };

  test("takes lines, radii and size from the part", () => {
    const blank = cutBlank({ ...part, lengthMm: 80 }, [out(0, 20.5, 0, 15)]);
    expect(blank.holes).toEqual(holesOf(out(0, 20.5, 0, 15)));
    expect(blank.takenMm2).toBeCloseTo(20.5 * 15 + 0.75 * DISC_MM2, 9);
    expect(blank.leftMm2 + blank.takenMm2).toBeCloseTo(8000, 9);
  });

  test("refuses a part without a length", () => {
    expect(() => cutBlank(part, [])).toThrow(RangeError);
  });
});
