/**
 * A piece of sheet over posts thinner than it, in slabs and blocks that hold it whole, and in line with another piece:
 * overlap or not. Source: plane geometry; whether a point lies between two faces, or two arcs, is worked out in sheetPieces.ts.
 */
import { describe, expect, it } from "vitest";
import { bordersOverlap, type Spot, sheetOverlapsBody } from "../../src/contact/overlap.ts";
import { SolidBody } from "../../src/contact/solidBody.ts";
import { outlineOf } from "../contact/shapes.ts";
import { bendPiece, INSET, inBend, LAYINGS, LONG, type Point, R, straightPiece, T } from "./sheetPieces.ts";

const POST = 0.02;
const at: Spot = { x: 0, y: 0 };

/** A square post about a point, a little askew. */
function postAt([x, y]: Point): SolidBody {
  const corners = [0, 1, 2, 3].map((i) => {
    const way = 0.4 + (i * Math.PI) / 2;
    return [x + POST * Math.cos(way), y + POST * Math.sin(way)] as const;
  });
  return new SolidBody(outlineOf(...corners), { x: 0, y: 0 });
}

function blockFrom(x0: number, y0: number, x1: number, y1: number): SolidBody {
  return new SolidBody(outlineOf([x0, y0], [x1, y0], [x1, y1], [x0, y1]), { x: 0, y: 0 });
}

/** Depths over the under face, with the faces drawn in: in the sheet, in its face, off it. */
const DEPTHS = [
  { depth: T / 2, held: true },
  { depth: INSET + 0.05, held: true },
  { depth: T - INSET - 0.05, held: true },
  { depth: INSET, held: true },
  { depth: T - INSET, held: true },
  { depth: INSET - 0.05, held: false },
  { depth: T - INSET + 0.05, held: false },
  { depth: -1, held: false },
  { depth: T + 1, held: false },
];
const DRAWN_IN = DEPTHS.filter(({ depth }) => depth > INSET && depth < T - INSET);

describe.each(LAYINGS)("a straight piece of sheet $name", (laying) => {
  const piece = straightPiece(laying, INSET, 3, true);

  it("overlaps the posts that stand in it and no other", () => {
    for (const along of [0.1, 0.3 * LONG, 0.9 * LONG, LONG - 0.1]) {
      for (const { depth, held } of DEPTHS) {
        const post = postAt(laying.place([along, depth]));
        expect(sheetOverlapsBody(piece, post, at), `${along} ${depth}`).toBe(held);
        if (!held) continue;
        const [x, y] = laying.place([along, depth]);
        expect(Math.hypot(at.x - x, at.y - y)).toBeLessThan(2 * POST);
      }
    }
    for (const along of [-0.1, -5, LONG + 0.1, 2 * LONG])
      expect(sheetOverlapsBody(piece, postAt(laying.place([along, T / 2])), at), `${along}`).toBe(false);
  });

  it("lies whole in a block, and in no block beside it or under it", () => {
    const [[ax, ay], [bx, by]] = [laying.place([0, 0]), laying.place([LONG, T])];
    const [left, right, low, high] = [Math.min(ax, bx), Math.max(ax, bx), Math.min(ay, by), Math.max(ay, by)];
    expect(sheetOverlapsBody(piece, blockFrom(left - 9, low - 9, right + 9, high + 9), at)).toBe(true);
    expect(sheetOverlapsBody(piece, blockFrom(right + 3, low - 9, right + 9, high + 9), at)).toBe(false);
    expect(sheetOverlapsBody(piece, blockFrom(left - 9, low - 9, left - 3, high + 9), at)).toBe(false);
    expect(sheetOverlapsBody(piece, blockFrom(left - 9, low - 9, right + 9, low - 3), at)).toBe(false);
    expect(sheetOverlapsBody(piece, blockFrom(left - 9, high + 3, right + 9, high + 9), at)).toBe(false);
  });
});

describe.each(LAYINGS)("a bend $name", (laying) => {
  it.each([1, -1] as const)("turned %i overlaps the posts that stand in it and no other", (turn) => {
    for (const angle of [0.7, Math.PI / 2, 2.2]) {
      const piece = bendPiece(laying, turn, angle, INSET, 0);
      for (const turned of [0.02, 0.35 * angle, 0.8 * angle, angle - 0.02]) {
        for (const { depth, held } of DEPTHS) {
          const post = postAt(laying.place(inBend(turn, depth, turned)));
          expect(sheetOverlapsBody(piece, post, at), `${angle} ${turned} ${depth}`).toBe(held);
        }
      }
      for (const turned of [-0.1, angle + 0.1, angle + Math.PI]) {
        for (const { depth } of DRAWN_IN) {
          const post = postAt(laying.place(inBend(turn, depth, turned)));
          expect(sheetOverlapsBody(piece, post, at), `${angle} ${turned} ${depth}`).toBe(false);
        }
      }
      const centre = laying.place([LONG, turn > 0 ? R + T : -R]);
      expect(sheetOverlapsBody(piece, postAt(centre), at)).toBe(false);
    }
  });

  it("lies whole in a block", () => {
    const piece = bendPiece(laying, 1, 1, INSET, 0);
    const [x, y] = laying.place(inBend(1, T / 2, 0.5));
    expect(sheetOverlapsBody(piece, blockFrom(x - 20, y - 20, x + 20, y + 20), at)).toBe(true);
    expect(sheetOverlapsBody(piece, blockFrom(x + 8, y - 20, x + 20, y + 20), at)).toBe(false);
    // A frame all round it holds no part of it.
    const ring = outlineOf(
      [x - 20, y - 20],
      [x + 20, y - 20],
      [x + 20, y + 20],
      [x + 0.01, y + 20],
      [x + 0.01, y + 15],
      [x + 15, y + 15],
      [x + 15, y - 15],
      [x - 15, y - 15],
      [x - 15, y + 15],
      [x, y + 15],
      [x, y + 20],
      [x - 20, y + 20],
    );
    expect(sheetOverlapsBody(piece, new SolidBody(ring, { x: 0, y: 0 }), at)).toBe(false);
  });
});

describe.each(LAYINGS)("two pieces in one line, $name", (laying) => {
  const open = straightPiece(laying, 0, 0, false);
  /** As thick as the sheet, its faces in line with the sheet's. */
  const inLine = (from: number, to: number) => {
    const corners = [
      [from, 0],
      [to, 0],
      [to, T],
      [from, T],
    ] as const;
    const placed = corners.map(laying.place);
    return new SolidBody(outlineOf(...(laying.mirrored ? placed.reverse() : placed)), { x: 0, y: 0 });
  };

  it.each([
    [LONG - 1, LONG + 9, true],
    [-9, 1, true],
    [4, 5, true],
    [-1, LONG + 1, false],
    [LONG, LONG + 9, false],
    [-9, 0, false],
    [LONG + 1, LONG + 9, false],
  ])("from %d to %d overlaps one from 0 to 20 by its ends' border: %s", (from, to, crossed) => {
    const other = inLine(from, to);
    expect(bordersOverlap(open, other.features, at)).toBe(crossed);
    expect(bordersOverlap(other.features, open, at)).toBe(crossed);
    if (crossed) expect(sheetOverlapsBody(open, other, at)).toBe(true);
  });
});
