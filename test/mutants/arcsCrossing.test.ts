/**
 * Arcs that cross each other and nothing else, as rounds and as hollows; and pieces that a body just holds.
 * Source: the two points of two circles, from the triangle of their radii and the way between their centres.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { bordersOverlap, type Spot, sheetOverlapsBody } from "../../src/contact/overlap.ts";
import { SolidBody } from "../../src/contact/solidBody.ts";
import { Strip } from "../../src/contact/strip.ts";
import { outlineOf } from "../contact/shapes.ts";
import { bendPiece, chainOf, inBend, LAYINGS, LONG, type Point, straightPiece, T } from "./sheetPieces.ts";

const KINDS = ["round", "hollow"] as const;
type Kind = (typeof KINDS)[number];

/** An arc about a point, from the middle direction `way` to `half` either side. */
interface Arc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly way: number;
  readonly half: number;
}

/** The arc alone, or behind a corner and small arcs of both kinds that are off the other body's borders. */
function arcAs(kind: Kind, { x, y, r, way, half }: Arc, behind: boolean): Features {
  const F = new Features(0, 3, 3);
  if (behind) {
    F.addCorner(x, y, 0);
    F.addRound(x, y, 0.01, 1, 0, -1, 0);
    F.addHollow(x, y, 0.01, 1, 0, -1, 0);
  }
  const [mx, my, cosHalf] = [Math.cos(way), Math.sin(way), Math.cos(half)];
  if (kind === "round") F.addRound(x, y, r, mx, my, cosHalf, 0);
  else F.addHollow(x, y, r, mx, my, cosHalf, 0);
  return F;
}

// Radii 5 and 6, centres 8 apart: cos of the angle at the first centre (25 + 64 − 36)/80, at the second (36 + 64 − 25)/96.
const [AT_FIRST, AT_SECOND] = [Math.acos(53 / 80), Math.acos(75 / 96)];
const FIRST = { x: 1.5, y: -2, r: 5 };
const second = (apart: number, way: number) => ({
  x: FIRST.x + apart * Math.cos(way),
  y: FIRST.y + apart * Math.sin(way),
  r: 6,
});

const at: Spot = { x: 0, y: 0 };

describe.each(KINDS.flatMap((one) => KINDS.map((other) => ({ one, other }))))(
  "a $one and a $other",
  ({ one, other }) => {
    const crossed = (a: Arc, b: Arc) => {
      const seen = [false, true].map((behind) => {
        [at.x, at.y] = [NaN, NaN];
        return bordersOverlap(arcAs(one, a, behind), arcAs(other, b, behind), at);
      });
      expect(seen[0]).toBe(seen[1]);
      return seen[0]!;
    };

    it("cross where both arcs hold one of the two points, which is told", () => {
      for (const way of [0.3, 1.9, 4]) {
        const to = second(8, way);
        for (const side of [1, -1])
          for (const half of [0.05, 1.2]) {
            const [a, b] = [way + side * AT_FIRST, way + Math.PI - side * AT_SECOND];
            expect(crossed({ ...FIRST, way: a, half }, { ...to, way: b, half })).toBe(true);
            expect(Math.abs(at.x - FIRST.x - 5 * Math.cos(a))).toBeLessThan(1e-9);
            expect(Math.abs(at.y - FIRST.y - 5 * Math.sin(a))).toBeLessThan(1e-9);
            // Not where either ends before the point, a little or by far, or holds only the other one.
            for (const off of [half + 0.01, -half - 0.01, 2.5]) {
              const wide = half > 1 && off === 2.5;
              if (wide) continue;
              expect(crossed({ ...FIRST, way: a + off, half }, { ...to, way: b, half })).toBe(false);
              expect(crossed({ ...FIRST, way: a, half }, { ...to, way: b + off, half })).toBe(false);
            }
          }
        const [a, b] = [way + AT_FIRST, way + Math.PI + AT_SECOND];
        expect(crossed({ ...FIRST, way: a, half: 0.05 }, { ...to, way: b, half: 0.05 })).toBe(false);
      }
    });

    it("do not where an arc only ends on the other", () => {
      const way = 0.7;
      const [a, b] = [way + AT_FIRST, way + Math.PI - AT_SECOND];
      const to = second(8, way);
      for (const off of [0.3, -0.3]) {
        expect(crossed({ ...FIRST, way: a + off, half: 0.3 }, { ...to, way: b, half: 0.3 })).toBe(false);
        expect(crossed({ ...FIRST, way: a, half: 0.3 }, { ...to, way: b + off, half: 0.3 })).toBe(false);
      }
    });

    it("do not where their circles lie apart, in each other, or touch from either side", () => {
      const inner = { way: 0.4 + Math.PI, half: 3 };
      const round = (apart: number) => crossed({ ...FIRST, ...inner }, { ...second(apart, 0.4), ...inner });
      // 11 is both radii, 1 their difference; a touch is within a ten millionth.
      for (const apart of [11.5, 11.00000005, 11, 10.99999995, 1.00000005, 1, 0.99999995, 0.5])
        expect(round(apart), `${apart}`).toBe(false);
      const whole = (apart: number) =>
        crossed({ ...FIRST, way: 0.4, half: 3.1 }, { ...second(apart, 0.4), way: 0.4 + Math.PI, half: 3.1 });
      for (const apart of [11.00000005, 11, 10.99999995]) expect(whole(apart), `${apart}`).toBe(false);
      for (const apart of [10.999, 6, 1.001]) expect(whole(apart), `${apart}`).toBe(true);
    });
  },
);

describe.each(LAYINGS)("a piece $name that a block just holds", (laying) => {
  const spread = (points: readonly Point[], more: number) => {
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    const [x0, x1] = [Math.min(...xs) - more, Math.max(...xs) + more];
    const [y0, y1] = [Math.min(...ys) - more, Math.max(...ys) + more];
    return new SolidBody(outlineOf([x0, y0], [x1, y0], [x1, y1], [x0, y1]), { x: 0, y: 0 });
  };

  it("overlaps it, straight or bent, with or without ends of its own", () => {
    for (const ends of [0, 3]) {
      const corners = [0, LONG].flatMap((x) => [0, T].map((y) => laying.place([x, y])));
      expect(sheetOverlapsBody(straightPiece(laying, 0, ends, false), spread(corners, 0.1), at)).toBe(true);
      for (const turn of [1, -1] as const)
        for (const angle of [0.5, 1.2, 2.2]) {
          const points = [0, 0.25, 0.5, 0.75, 1].flatMap((share) =>
            [0, T].map((depth) => laying.place(inBend(turn, depth, share * angle))),
          );
          expect(sheetOverlapsBody(bendPiece(laying, turn, angle, 0, ends), spread(points, 0.3), at)).toBe(
            true,
          );
        }
    }
  });
});

it("has nothing of what was laid there before", () => {
  // A long strip and a bend first; then, in the same arrays, what leaves their places free.
  const [asItIs] = LAYINGS;
  const post = (x: number, y: number) =>
    new SolidBody(outlineOf([x - 0.01, y], [x, y - 0.01], [x + 0.01, y], [x, y + 0.01]), { x: 0, y: 0 });
  const [inStrip, [bx, by]] = [post(3, 1), inBend(1, T / 2, 0.6)];
  const laid = (bendFirst: boolean) => {
    const F = new Features(8, 8, 2);
    const strip = new Strip(chainOf(1, 1.2), T);
    asItIs!.lay(strip);
    const lay = {
      straight: () => {
        strip.walkTo(-1, 0);
        strip.addStraight(F, LONG, 0, 1, 0, false);
      },
      bend: () => {
        strip.walkTo(0, 0);
        strip.addBend(F, 0, 0, 0);
      },
    };
    lay[bendFirst ? "bend" : "straight"]();
    F.clear();
    lay[bendFirst ? "straight" : "bend"]();
    // Room round it, so that no box hides what might be left.
    [F.minX, F.minY, F.maxX, F.maxY] = [-99, -99, 99, 99];
    return F;
  };
  expect(sheetOverlapsBody(laid(false), post(bx, by), at)).toBe(true);
  expect(sheetOverlapsBody(laid(false), inStrip, at)).toBe(false);
  expect(sheetOverlapsBody(laid(true), inStrip, at)).toBe(true);
  expect(sheetOverlapsBody(laid(true), post(bx, by), at)).toBe(false);
  // Nor does a border cross what lay there: a bar through the bend's two arcs.
  const bar = new Features(1, 0, 0);
  bar.addSegment(bx - 3, by + 3, bx + 3, by - 3, 0);
  expect(bordersOverlap(bar, laid(false), at)).toBe(true);
  expect(bordersOverlap(bar, laid(true), at)).toBe(false);
});

describe("an edge that only ends on", () => {
  const edge = (x1: number, y1: number, x2: number, y2: number) => {
    const F = new Features(1, 0, 0);
    F.addSegment(x1, y1, x2, y2, 0);
    // Room round it, so that the boxes meet.
    [F.minX, F.minY, F.maxX, F.maxY] = [-99, -99, 99, 99];
    return F;
  };

  it("another does not cross it, from either side, whichever way they run", () => {
    for (const past of [0, 5e-8, -5e-8])
      for (const side of [3, -3])
        for (const [x1, x2] of [
          [0, 10],
          [10, 0],
        ] as const) {
          const long = edge(x1, 0, x2, 0);
          for (const short of [edge(5, side, 5, past), edge(5, past, 5, side)]) {
            expect(bordersOverlap(long, short, at)).toBe(false);
            expect(bordersOverlap(short, long, at)).toBe(false);
          }
          expect(bordersOverlap(long, edge(5, side, 5, -side / 1e6), at)).toBe(true);
          expect(bordersOverlap(edge(5, -side / 1e6, 5, side), long, at)).toBe(true);
        }
  });

  it("an arc does not cross it, from inside or outside", () => {
    for (const kind of KINDS) {
      const arc = arcAs(kind, { x: 0, y: 0, r: 5, way: 0, half: 1 }, false);
      for (const from of [1, 9])
        for (const past of [0, 5e-8, -5e-8]) {
          expect(bordersOverlap(edge(from, 0, 5 + past, 0), arc, at)).toBe(false);
          expect(bordersOverlap(edge(5 + past, 0, from, 0), arc, at)).toBe(false);
        }
      expect(bordersOverlap(edge(1, 0, 5.001, 0), arc, at)).toBe(true);
      expect(bordersOverlap(edge(9, 0, 4.999, 0), arc, at)).toBe(true);
    }
  });
});

it("looks into no piece and body whose boxes lie apart", () => {
  const piece = straightPiece(LAYINGS[0]!, 0, 3, true);
  Object.defineProperty(piece, "segments", {
    get: () => {
      throw new Error("looked into");
    },
  });
  const body = (x: number, y: number) =>
    new SolidBody(outlineOf([x, y], [x + 4, y], [x + 4, y + 4], [x, y + 4]), { x: 0, y: 0 });
  for (const [x, y] of [
    [LONG, 0],
    [-4, 0],
    [3, T],
    [3, -4],
  ] as const)
    expect(sheetOverlapsBody(piece, body(x, y), at)).toBe(false);
  expect(() => sheetOverlapsBody(piece, body(3, 1), at)).toThrow("looked into");
});
