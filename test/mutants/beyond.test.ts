/**
 * What may lie beyond a flat: a disc about its end, as wide as the rest of the sheet is long. Source: lengths, distances and
 * directions of discs and blocks on paper, both ways: never more than is true, and not less by more than the hair allowed.
 */
import { describe, expect, it } from "vitest";
import { Beyond } from "../../src/contact/beyond.ts";
import type { Side } from "../../src/contact/seatPieces.ts";
import type { Seat } from "../../src/motion/seat.ts";
import { type Block, checksIn, type PlainBlocks, plainChain, plainSeat } from "./plainSeat.ts";

const SIDES = ["moving", "clamped"] as const;
const QUARTER = Math.PI / 2;
/** A hair is added for rounding, at most this. */
const HAIR = 3e-6;

/** True, or safe by a hair: never more than `most`, nor less by more than a hair. */
function expectJustUnder(value: number, most: number): void {
  expect(value).toBeLessThan(most);
  expect(value).toBeGreaterThan(most - HAIR);
}

/**
 * A flat whose end lies at (x, y) from the pivot, and beyond it a strip that may reach `rest` far in all: 3 of flat, 1 of
 * thickness, and what remains along the joint.
 */
function discAt(side: Side, x: number, y: number, rest: number, told: Partial<Seat> = {}): Seat {
  const joint = { allowanceMm: rest - 4, insideRadiusMm: 0, angleRad: 0.1, turn: 1 } as const;
  const chain = plainChain([2, 3], [joint]);
  return plainSeat({
    pivot: { x: 0, y: -y },
    ...(side === "moving"
      ? { movingChain: chain, movingTangentX: x - 2 }
      : { clampedChain: chain, clampedTangentX: x + 2 }),
    ...told,
  });
}

function beyondAt(
  side: Side,
  [x, y, rest]: readonly [number, number, number],
  blocks: PlainBlocks = {},
  told: Partial<Seat> = {},
): Beyond {
  const beyond = new Beyond(checksIn(discAt(side, x, y, rest, told), blocks), side);
  beyond.after(0, 0);
  return beyond;
}

describe.each(SIDES)("how far the rest of the sheet may reach, %s", (side) => {
  // Flats of 20, 5, 7 and 9. A bend counts with its longer face, (2 + 1)·π/2 = 4.71, where that is more than its allowance.
  const joints = [
    { allowanceMm: 4, insideRadiusMm: 2, angleRad: QUARTER, turn: 1 },
    { allowanceMm: 6, insideRadiusMm: 2, angleRad: QUARTER, turn: -1 },
    { allowanceMm: 1, insideRadiusMm: 4, angleRad: 0.5, turn: 1 },
  ] as const;
  const chain = plainChain([20, 5, 7, 9], joints);
  const seat = plainSeat({
    ...(side === "moving"
      ? { movingChain: chain, movingTangentX: 0 }
      : { clampedChain: chain, clampedTangentX: 0 }),
    pivot: { x: 0, y: 0 },
  });
  const face = 3 * QUARTER;
  const last = 1 + 9;
  const third = last + 2.5 + 7;
  const second = third + 6 + 5;

  it.each([
    // From the flat's end at 20, the rest of it at 20 − rest from the pivot.
    [0, 0, 20 - (third + 6 + face + 5)],
    [1, 0, 29 - (third + 6)],
    [2, 0, 42 - (last + 2.5)],
    [3, 0, 52 - 1],
    // The first joint formed: its under face turns about (20, 3) with 3 of radius and leads straight up from (23, 3).
    [1, 1, Math.hypot(23, 8) - (third + 6)],
    [2, 1, Math.hypot(23, 21) - (last + 2.5)],
    // The second as well turns back down about (25, 8), its own inside radius of 2, and leads out at 10.
    [2, 3, Math.hypot(32, 10) - (last + 2.5)],
    [3, 3, Math.hypot(42, 10) - 1],
  ])("from flat %i, %i formed", (k, formed, near) => {
    const beyond = new Beyond(checksIn(seat, {}), side);
    beyond.after(k, formed);
    if (k === 0) expect(beyond.near + second).toBeLessThan(20);
    expectJustUnder(beyond.near, near);
  });
});

it("takes the slide along the leaf from what moves, not from what stands", () => {
  // Slides out by 4·tan(φ/2), at 90° by 4.
  const slides = { slideTan: 4 };
  expectJustUnder(beyondAt("moving", [30, 0, 10], {}, slides).near, 16);
  expectJustUnder(beyondAt("clamped", [30, 0, 10], {}, slides).near, 20);
});

describe("the direction of the disc", () => {
  /** Half of what a disc of 5, 13 from the pivot, takes up. */
  const half = Math.asin(5 / 13);
  const of = (y: number, x: number) => Math.atan2(y, x);

  it.each([
    [12, 5, of(5, 12) + half],
    [-5, 12, of(12, -5) + half],
    [-12, 5.1, of(5.1, -12) + Math.asin(5 / Math.hypot(12, 5.1))],
    [12, -5, of(-5, 12) + half],
    [5.1, -12, of(-12, 5.1) + Math.asin(5 / Math.hypot(12, 5.1))],
    // Reaches under the pivot's level behind it: there a largest direction says nothing.
    [-12, 4.9, Number.NaN],
    [4.9, -12, Number.NaN],
    [-12, -5, Number.NaN],
    [-4.9, -12, Number.NaN],
    // Holds the pivot.
    [3, 3, Number.NaN],
  ])("moving, about (%d, %d), is its largest", (x, y, direction) => {
    const found = beyondAt("moving", [x, y, 5]).direction;
    expect(found).toEqual(Number.isNaN(direction) ? Number.NaN : expect.closeTo(direction, 5));
  });

  it.each([
    [12, 5.1, of(5.1, 12) - Math.asin(5 / Math.hypot(12, 5.1))],
    [-5, 12, of(12, -5) - half],
    [-12, 5, of(5, -12) - half],
    // Behind the pivot directions run on past π, where none is told smaller than π.
    [-12, -1, 2 * Math.PI + of(-1, -12) - Math.asin(5 / Math.hypot(12, 1))],
    [-12, -12, Math.PI],
    [-5.1, -12, Math.PI],
    // Reaches under the pivot's level in front of it: there a smallest direction says nothing.
    [12, 4.9, Number.NaN],
    [12, -12, Number.NaN],
    [-4.9, -12, Number.NaN],
    [-4, -3.1, Number.NaN],
    [-3, 3, Number.NaN],
  ])("clamped, about (%d, %d), is its smallest", (x, y, direction) => {
    const found = beyondAt("clamped", [x, y, 5]).direction;
    expect(found).toEqual(Number.isNaN(direction) ? Number.NaN : expect.closeTo(direction, 5));
  });
});

/** Blocks and the distance that a disc keeps from them; 0 where none is known. */
const STANDING: readonly (readonly [side: Side, disc: readonly [number, number, number], Block, number])[] = [
  // A clamped disc stands still: from the block's nearest edge or corner.
  ["clamped", [-40, 20, 5], [-60, 30, -30, 40], 5],
  ["clamped", [-40, 20, 5], [-60, -50, -30, 10], 5],
  ["clamped", [-40, 20, 5], [-70, 10, -52, 30], 7],
  ["clamped", [-40, 20, 5], [-32, 10, -1, 80], 3],
  ["clamped", [-40, 20, 5], [-70, 32, -49, 60], 10],
  ["clamped", [-40, 20, 5], [-31, -60, -1, 8], 10],
  ["clamped", [-40, 20, 5], [-44, 15, -1, 80], 0],
  ["clamped", [-40, 20, 5], [-44, 24, -1, 80], 0],
  ["clamped", [-40, 20, 5], [-37, -80, -1, 16.1], 0],
  ["clamped", [40, 20, 5], [30, 28, 60, 40], 3],
  // A block nearer to the pivot than the disc by 6: at least that, in whatever direction.
  ["clamped", [-40, 30, 5], [-39, 0, -38, 1], 45 - Math.hypot(39, 1)],
  ["moving", [40, 30, 5], [38, 0, 39, 1], 45 - Math.hypot(39, 1)],
];

describe.each(STANDING)("%s disc %j beside the block %j", (side, disc, block, mm) => {
  it("keeps its distance", () => {
    const beyond = beyondAt(side, disc, { frame: [block] });
    if (mm > 0) expectJustUnder(beyond.leastClearance(), mm);
    else expect(beyond.leastClearance()).toBe(0);
    expect(beyond.keepsOff()).toBe(mm > 0);
  });
});

describe("a disc that swings up by 90°", () => {
  /** A disc of 5, 13 from the pivot, so that it is 8 from it at least and takes up 22.62° either way. */
  const DISC = [12, 5, 5] as const;
  const half = Math.asin(5 / 13);
  const leading = Math.atan2(5, 12) + half + QUARTER;
  const lowest = Math.atan2(5, 12) - half;
  /** Arcs bulge past the pieces that stand for them: that much of a direction is given away, and no more. */
  const BULGE_RAD = 0.0101;

  /** A spike from 20 to 30 out, its one side in the direction `at`, the other `wide` on. */
  function spike(at: number, wide: number): (readonly [number, number])[] {
    const point = (out: number, way: number) => [out * Math.cos(way), out * Math.sin(way)] as const;
    const round = [point(20, at), point(30, at), point(30, at + wide), point(20, at + wide)];
    return wide > 0 ? round : round.toReversed();
  }

  it.each([
    [0.02, "ahead"],
    [0.3, "ahead"],
    [1, "ahead"],
    [0.02, "behind"],
    [0.3, "behind"],
    [1, "behind"],
  ] as const)("keeps off a spike %d rad past its sector, %s", (apart, where) => {
    const body = where === "ahead" ? spike(leading + apart, 0.1) : spike(lowest - apart, -0.1);
    const beyond = beyondAt("moving", DISC, { frame: [body] });
    // Of a sector and one point beyond its side: the foot on the side, 8 out at least, is at the sine of the angle.
    const most = 8 * Math.sin(apart);
    expect(beyond.leastClearance()).toBeLessThan(most);
    expect(beyond.leastClearance()).toBeGreaterThan(most - 8 * BULGE_RAD - HAIR);
    expect(beyond.keepsOff()).toBe(true);
  });

  it.each([
    [-0.1, "ahead"],
    [0.005, "ahead"],
    [-0.1, "behind"],
    [0.005, "behind"],
  ] as const)("does not keep off a spike %d rad past its sector, %s", (apart, where) => {
    const body = where === "ahead" ? spike(leading + apart, 0.1) : spike(lowest - apart, -0.1);
    const beyond = beyondAt("moving", DISC, { frame: [body] });
    expect(beyond.leastClearance()).toBe(0);
    expect(beyond.keepsOff()).toBe(false);
  });

  it("is as far off as its own nearest point where all else is more than a right angle away", () => {
    // Straight behind: the sectors are some 110° ahead and 180° behind apart after a sweep of 20°.
    const sweep = { sweepRad: 0.35, overbendRad: 0.35 };
    const beyond = beyondAt("moving", DISC, { frame: [spike(Math.PI + 0.2, 0.1)] }, sweep);
    // Then only the small leaf at the pivot is nearer than the spike may be.
    expectJustUnder(beyond.leastClearance(), 8 - Math.hypot(0.2, 0.2));
  });

  it("knows no distance for what reaches under the pivot's level behind it", () => {
    const beyond = beyondAt("moving", [-12, 4, 5], { frame: [spike(1, 0.1)] });
    expect([beyond.leastClearance(), beyond.keepsOff()]).toEqual([0, false]);
  });
});

describe.each(SIDES)("the leaf, %s", (side) => {
  const x = side === "moving" ? 30 : -30;

  it.each([
    // The disc keeps 20 from the pivot; the leaf swings all round it.
    [18, 2],
    [19.9, 0.1],
    [20.1, 0],
    [40, 0],
  ])("reaching %d from the pivot keeps %d", (reach, mm) => {
    const leaf: Block = [0, -1, Math.sqrt(reach * reach - 1), 0];
    const beyond = beyondAt(side, [x, 0, 10], { leaf });
    expect(beyond.keepsOff()).toBe(mm > 0);
    if (mm > 0) expectJustUnder(beyond.leastClearance(), mm);
    else expect(beyond.leastClearance()).toBe(0);
  });
});

describe("heights", () => {
  const LIFT = 10;

  /** Where bodies stand beside a disc of 5 about (x, y), and whether it gets past them: sheet rising, or clamp rising. */
  const places = (
    x: number,
    y: number,
  ): readonly (readonly [string, Block, sheet: boolean, clamp: boolean])[] => [
    ["left of it", [x - 9, y - 3, x - 5.1, y + 3], true, true],
    ["reaching into it from the left", [x - 9, y - 3, x - 4.9, y + 3], false, false],
    ["right of it", [x + 20, y - 3, x + 24, y + 3], false, false],
    ["under it", [x + 20, y - 9, x + 24, y - 5.1], true, false],
    ["over it within the lift", [x + 20, y + 14.9, x + 24, y + 18], false, true],
    ["over it past the lift", [x + 20, y + 15.1, x + 24, y + 18], true, true],
    ["under it within the lift", [x + 20, y - 20, x + 24, y - 14.9], true, false],
    ["under it past the lift", [x + 20, y - 20, x + 24, y - 15.1], true, true],
    ["a little over its lowest", [x + 20, y - 9, x + 24, y - 4.9], false, false],
    ["a little under its highest", [x + 20, y + 4.9, x + 24, y + 9], false, false],
  ];
  const small: Block = [-900, -900, -899, -899];
  const away = { clamp: [small], bed: small, leaf: small, liftMm: LIFT };

  describe.each([
    ["moving", -40, 12, false, -40, 12],
    ["clamped", -40, 12, false, -40, 12],
    ["clamped", -40, 12, true, -40, 12],
    // Finished, the moving side has turned by 90° about the pivot, and slid out by 4 before.
    ["moving", 30, 6, true, -6, 34],
  ] as const)("%s disc about (%d, %d), finished: %s", (side, x, y, finished, atX, atY) => {
    it.each(places(atX, atY))("are free of what is %s or not", (_, block, sheet, clamp) => {
      const told = { slideTan: 4 };
      for (const blocks of [{ bed: block }, { leaf: block }, { frame: [block] }, { frame: [small, block] }]) {
        const beyond = beyondAt(side, [x, y, 5], { ...away, ...blocks }, told);
        expect(beyond.letsPass(finished), JSON.stringify(blocks)).toBe(sheet);
      }
      const beyond = beyondAt(side, [x, y, 5], { ...away, clamp: [small, block] }, told);
      expect(beyond.letsPass(finished)).toBe(clamp);
    });
  });
});
