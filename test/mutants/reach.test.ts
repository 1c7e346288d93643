/**
 * What is out of reach is passed over as a whole: a body for a body, a body for a round, and an edge for a round between others
 * that are in reach. Source: distances from the pivot, worked out beside each; work.test.ts looks at pairs alone.
 */
import { describe, expect, it } from "vitest";
import { Features } from "../../src/contact/features.ts";
import { firstContact } from "../../src/contact/firstContact.ts";
import { type DistanceFound, leastDistance } from "../../src/contact/leastDistance.ts";
import { Meeting, type PairKind } from "../../src/contact/meeting.ts";
import { makePairCurve } from "../../src/contact/pairCurve.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { edge, hollow, round, together, watched } from "./alone.ts";

const swing = tableSwing(1, 1, 0, 1);
/** The most that it slides. */
const slide = Math.tan(0.5);

function contact(A: Features, B: Features, meeting = new Meeting()): void {
  const found = { phiRad: Infinity, kind: "roundOnEdge" as const, a: 0, b: 0 };
  firstContact(A, B, swing, swing.sweepRad, makePairCurve(), meeting, found);
}

function distance(A: Features, B: Features, mm: number, meeting = new Meeting()): void {
  const found: DistanceFound = { mm, phiRad: 0, movingX: 0, movingY: 0, fixedX: 0, fixedY: 0 };
  leastDistance(A, B, swing, makePairCurve(), meeting, found);
}

/** A body that tells when a list of its features is gone through. */
function telling(F: Features, lists: readonly ("segments" | "rounds" | "hollows")[]): () => boolean {
  let told = false;
  for (const list of lists) {
    const count = F[list];
    Object.defineProperty(F, list, {
      get: () => {
        told = true;
        return count;
      },
    });
  }
  return () => told;
}

const ALL = ["segments", "rounds", "hollows"] as const;
const HAIR = 1e-6;

describe("two bodies", () => {
  it.each([
    // An edge with its middle 10 out ends √101 out.
    ["farther out by more than the slide", 10, Math.hypot(10, 1) + slide, false],
    ["farther in by more than the slide", 10, 10 - slide, true],
  ] as const)("of which one lies %s are not looked into", (_, out, limit, under) => {
    for (const [beyond, looked] of [
      [HAIR, false],
      [-HAIR, true],
    ] as const) {
      // The round is a point, as far out as the limit and a hair more or less.
      const point = () => round(limit + (under ? -beyond : beyond), 0);
      for (const [A, B] of [
        [point(), edge(out)],
        [edge(out), point()],
      ] as const) {
        const told = telling(A, ALL);
        contact(A, B);
        expect(told()).toBe(looked);
      }
    }
  });

  it.each([0.5, 2])("farther apart than the %d mm known are not measured", (mm) => {
    for (const [beyond, looked] of [
      [HAIR, false],
      [-HAIR, true],
    ] as const)
      for (const at of [Math.hypot(10, 1) + slide + mm + beyond, 10 - slide - mm - beyond])
        for (const [A, B] of [
          [round(at, 0), edge(10)],
          [edge(10), round(at, 0)],
        ] as const) {
          const told = telling(A, ALL);
          distance(A, B, mm);
          expect(told()).toBe(looked);
        }
  });
});

describe("a round that is out of a body's reach", () => {
  // Each body keeps the other in reach by a second piece: a small hollow, which no round fits into.
  const far = Math.hypot(10, 1);

  it("is not held against its edges, nor the body's round against the other's edges", () => {
    for (const [out, looked] of [
      [far + slide + 0.5 - HAIR, true],
      [far + slide + 0.5 + HAIR, false],
      [10 - slide - 0.5 + HAIR, true],
      [10 - slide - 0.5 - HAIR, false],
    ] as const) {
      const one = () => together(round(out, 0.5), hollow(10, 0));
      const [A, B] = [one(), together(edge(10))];
      const told = telling(B, ["segments"]);
      contact(A, B);
      expect(told()).toBe(looked);
      const [C, D] = [together(edge(10)), one()];
      const toldToo = telling(C, ["segments"]);
      contact(C, D);
      expect(toldToo()).toBe(looked);
    }
  });
});

describe("an edge out of a round's reach, among others that keep both bodies in reach,", () => {
  const far = Math.hypot(10, 1);
  const pairs = (A: Features, B: Features, mm?: number): PairKind[] => {
    const { meeting, pairs } = watched();
    if (mm === undefined) contact(A, B, meeting);
    else distance(A, B, mm, meeting);
    return pairs.filter((kind) => kind === "roundOnEdge" || kind === "edgeOnRound");
  };
  // Hollows of no size 1 and 40 out, which no round fits into.
  const among = (F: Features) => together(F, hollow(1, 0), hollow(40, 0));

  it.each([
    [far + slide + 0.5, 1],
    [10 - slide - 0.5, -1],
  ])("is passed over: past %d", (limit, way) => {
    for (const [beyond, count] of [
      [-HAIR, 1],
      [HAIR, 0],
    ] as const) {
      const out = limit + way * beyond;
      expect(pairs(among(round(out, 0.5)), among(edge(10)))).toHaveLength(count);
      expect(pairs(among(edge(10)), among(round(out, 0.5)))).toHaveLength(count);
      const measured = out + way * 2;
      expect(pairs(among(round(measured, 0.5)), among(edge(10)), 2)).toHaveLength(count);
      expect(pairs(among(edge(10)), among(round(measured, 0.5)), 2)).toHaveLength(count);
    }
  });
});

describe("what just reaches is looked into", () => {
  // Of an edge 8 off the pivot and 6 to either side the ends are 10 out: 3-4-5. Nothing slides, so that all figures are exact.
  const still = tableSwing(1, 0, 0, 1);
  const side = () => {
    const F = new Features(1, 0, 0);
    F.addSegment(8, -6, 8, 6, 0);
    return F;
  };
  const among = (F: Features) => together(F, hollow(1, 0), hollow(40, 0));
  const looked = (A: Features, B: Features, mm?: number) => {
    const { meeting, pairs } = watched();
    const curve = makePairCurve();
    const found = { phiRad: 0, movingX: 0, movingY: 0, fixedX: 0, fixedY: 0 };
    if (mm === undefined)
      firstContact(A, B, still, 1, curve, meeting, { phiRad: Infinity, kind: "roundOnEdge", a: 0, b: 0 });
    else leastDistance(A, B, still, curve, meeting, { ...found, mm });
    return pairs.length > 0;
  };

  it.each([
    ["an edge's ends", () => round(10.5, 0.5), side, () => round(12.5, 0.5)],
    ["an edge's middle", () => round(7.5, 0.5), side, () => round(5.5, 0.5)],
    ["a round", () => round(10, 0.5), () => round(11, 0.5), () => round(8, 0.5)],
    ["a round farther in", () => round(10, 0.5), () => round(9, 0.5), () => round(12, 0.5)],
  ] as const)("%s", (_, one, other, apart) => {
    for (const wrap of [(F: Features) => F, among]) {
      expect(looked(wrap(one()), wrap(other()))).toBe(true);
      expect(looked(wrap(other()), wrap(one()))).toBe(true);
      expect(looked(wrap(apart()), wrap(other()), 2)).toBe(true);
      expect(looked(wrap(other()), wrap(apart()), 2)).toBe(true);
    }
  });

  it("a hollow's wall", () => {
    expect(looked(round(1.75, 0.5), hollow(1.75, 4))).toBe(true);
    expect(looked(hollow(1.75, 4), round(1.75, 0.5))).toBe(true);
  });
});
