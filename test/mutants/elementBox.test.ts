/**
 * Where an element lies at most, and whether that tells it free of the brake. Source: corners, distances and directions of
 * a square bend and of blocks on paper; what is safe may be too wide by what is told beside it, and no more.
 */
import { describe, expect, it } from "vitest";
import { ElementBox } from "../../src/contact/elementBox.ts";
import type { Side } from "../../src/contact/seatPieces.ts";
import type { Seat } from "../../src/motion/seat.ts";
import {
  type Block,
  checksIn,
  type PlainBlocks,
  type PlainJoint,
  plainChain,
  plainSeat,
} from "./plainSeat.ts";

const QUARTER = Math.PI / 2;
/** A hair is added for rounding, at most this. */
const HAIR = 3e-6;
/** By how much a quarter bend of 3 outside bulges past its chord's tangents: 3·(1 − cos 45°). */
const BULGE = 3 * (1 - Math.SQRT1_2);

const UP: PlainJoint = { allowanceMm: 4, insideRadiusMm: 2, angleRad: QUARTER, turn: 1 };
const DOWN: PlainJoint = { ...UP, turn: -1 };

/** Flats of 20, 10 and 5, the first from x = 1 to 21 (or −3 to −23 in the throat), sheet 1 thick on the pivot's level. */
function boxOf(
  side: Side,
  joint: PlainJoint,
  blocks: PlainBlocks = {},
  told: Partial<Seat> = {},
): ElementBox {
  const chain = plainChain([20, 10, 5], [joint, joint]);
  const seat = plainSeat({
    ...(side === "moving" ? { movingChain: chain } : { clampedChain: chain }),
    ...told,
  });
  return new ElementBox(checksIn(seat, blocks), side);
}

function taken(box: ElementBox, k: number, formed: number): ElementBox {
  box.take(k, formed);
  return box;
}

const boundsOf = ({ minX, minY, maxX, maxY }: ElementBox) => [minX, minY, maxX, maxY];

function expectBounds(box: ElementBox, bounds: Block): void {
  boundsOf(box).forEach((bound, i) => {
    expect(bound).toBeCloseTo(bounds[i]!, 9);
  });
}

describe("the box of a moving element", () => {
  it("holds a bend up and its flat, from 21 to 24 and up to 13", () => {
    const box = taken(boxOf("moving", UP), 1, 1);
    expectBounds(box, [21, 0, 24, 13]);
    expect(box.far).toBeCloseTo(Math.hypot(24, 13), 5);
    expect(box.far).toBeGreaterThan(Math.hypot(24, 13));
    // Nearest are the tangents' line's start, 21 away, less the thickness and the bulge.
    expect(box.near).toBeLessThan(21 - 1 - BULGE);
    expect(box.near).toBeGreaterThan(21 - 1 - BULGE - HAIR);
    expect(box.direction).toBeCloseTo(Math.atan2(13, 21), 12);
  });

  it("holds a bend down, whose outer face is the upper one", () => {
    const box = taken(boxOf("moving", DOWN), 1, 1);
    expectBounds(box, [21, -12, 24, 1]);
    expect(box.far).toBeCloseTo(Math.hypot(24, 12), 5);
    const least = Math.hypot(21, 1) - 1 - BULGE;
    expect(box.near).toBeLessThan(least);
    expect(box.near).toBeGreaterThan(least - HAIR);
    expect(box.direction).toBeCloseTo(Math.atan2(1, 21), 12);
  });

  it("holds a joint left flat with its flat: straight on from the bend before", () => {
    const box = taken(boxOf("moving", UP), 2, 1);
    // From the end of the upright at (24, 13), 4 of joint and 5 of flat upward.
    expectBounds(box, [23, 13, 24, 22]);
    expect(box.far).toBeCloseTo(Math.hypot(24, 22), 5);
    expect(box.near).toBeLessThan(Math.hypot(24, 13) - 1);
    expect(box.near).toBeGreaterThan(Math.hypot(24, 13) - 1 - HAIR);
  });

  it("holds a second bend on the first: back over the flat", () => {
    const box = taken(boxOf("moving", UP), 2, 3);
    // Up to the corner of the tangents at 13 + 3, then back to 24 − 3 − 5.
    expectBounds(box, [16, 13, 24, 16]);
    // The line from (24, 16) back to (16, 16) comes nearest at its end.
    const least = Math.min(Math.hypot(24, 13), Math.hypot(16, 16)) - 1 - BULGE;
    expect(box.near).toBeLessThan(least);
    expect(box.near).toBeGreaterThan(least - HAIR);
  });

  it("has its direction counted from where it slides in to", () => {
    const slides = { slideTan: -2 };
    const box = taken(boxOf("moving", UP, {}, slides), 1, 1);
    // At a quarter turn −2·tan 45°.
    expect(box.direction).toBeCloseTo(Math.atan2(13, 19), 6);
    expectBounds(box, [21, 0, 24, 13]);
  });

  it("comes as near as the middle of a line where that is nearest", () => {
    // Upright over the pivot's own upright: the flat of 10 from 3 under to 7 over its level.
    const seat = { pivot: { x: 0, y: 6 }, movingTangentX: 1 };
    const box = taken(boxOf("moving", UP, {}, seat), 1, 1);
    expectBounds(box, [21, -6, 24, 7]);
    // Of the two tangents' lines the upright one passes the level at 24, the lower one ends at (21, −6).
    const least = Math.hypot(21, 6) - 1 - BULGE;
    expect(box.near).toBeLessThan(least);
    expect(box.near).toBeGreaterThan(least - HAIR);
    const straight = taken(boxOf("moving", UP, {}, { ...seat, pivot: { x: 0, y: 17 } }), 2, 1);
    // Its outer face runs up along x = 24 from −4 to 5.
    expectBounds(straight, [23, -4, 24, 5]);
    expect(straight.near).toBeLessThan(24 - 1);
    expect(straight.near).toBeGreaterThan(24 - 1 - HAIR);
  });
});

describe("the box of a clamped element", () => {
  it("is the mirror image, with its smallest direction", () => {
    const up = taken(boxOf("clamped", UP), 1, 1);
    expectBounds(up, [-26, 0, -23, 13]);
    expect(up.direction).toBeCloseTo(Math.atan2(13, -23), 12);
    expect(up.far).toBeCloseTo(Math.hypot(26, 13), 5);
    const least = 23 - 1 - BULGE;
    expect(up.near).toBeLessThan(least);
    expect(up.near).toBeGreaterThan(least - HAIR);
    expectBounds(taken(boxOf("clamped", DOWN), 1, 1), [-26, -12, -23, 1]);
  });
});

describe("a moving element keeps off", () => {
  const keepsOff = (blocks: PlainBlocks, told: Partial<Seat> = {}, joint = UP) =>
    taken(boxOf("moving", joint, blocks, told), 1, 1).keepsOff();
  const near = 20 - BULGE;

  it("a leaf that ends nearer to the pivot, slid in or not", () => {
    const leafTo = (x: number): PlainBlocks => ({ leaf: [0.1, -0.1, x, -0.05] });
    expect(keepsOff(leafTo(near - 0.01))).toBe(true);
    expect(keepsOff(leafTo(near + 0.01))).toBe(false);
    expect(keepsOff(leafTo(near - 1.99), { slideTan: -2 })).toBe(false);
    expect(keepsOff(leafTo(near - 2.01), { slideTan: -2 })).toBe(true);
  });

  it("what lies nearer to the pivot all round, be it clamp, bed or frame", () => {
    const square = (half: number): Block => [-half, -half, half, half];
    for (const half of [14 / 1.01, 13]) {
      expect(keepsOff({ clamp: [square(half / Math.SQRT2)] })).toBe(true);
    }
    const over = square(near);
    expect(keepsOff({ clamp: [over] })).toBe(false);
    expect(keepsOff({ bed: over })).toBe(false);
    expect(keepsOff({ frame: [over] })).toBe(false);
    expect(keepsOff({ frame: [square(1), over] })).toBe(false);
  });

  it("what stands beyond all that it turns through, and it alone", () => {
    // It leads at 31.8°, and at 121.8° after a quarter turn.
    const at = (deg: number): Block => {
      const [x, y] = [30 * Math.cos((deg * Math.PI) / 180), 30 * Math.sin((deg * Math.PI) / 180)];
      return [x, y, x + 0.01, y + 0.01];
    };
    expect(keepsOff({ frame: [at(121)] })).toBe(false);
    expect(keepsOff({ frame: [at(124)] })).toBe(true);
    expect(keepsOff({ frame: [at(300)] })).toBe(true);
    // A flange down reaches 29.7° under the leaf at rest.
    expect(keepsOff({ frame: [at(325)] }, {}, DOWN)).toBe(true);
    expect(keepsOff({ frame: [at(332)] }, {}, DOWN)).toBe(false);
  });
});

describe("a clamped element keeps off", () => {
  const keepsOff = (blocks: PlainBlocks, told: Partial<Seat> = {}) =>
    taken(boxOf("clamped", UP, blocks, told), 1, 1).keepsOff();

  it("what lies beside its box, be it clamp, bed or frame", () => {
    for (const [block, free] of [
      [[-22.9, 0, -20, 13], true],
      [[-23.1, 0, -20, 13], false],
      [[-30, 0, -26.1, 13], true],
      [[-30, 0, -25.9, 13], false],
      [[-25, 13.1, -24, 15], true],
      [[-25, 12.9, -24, 15], false],
      [[-25, -5, -24, -0.1], true],
      [[-25, -5, -24, 0.1], false],
    ] as const) {
      expect(keepsOff({ clamp: [block] })).toBe(free);
      expect(keepsOff({ bed: block })).toBe(free);
      expect(keepsOff({ frame: [block] })).toBe(free);
    }
  });

  it("what lies nearer to the pivot, though it be in its box", () => {
    expect(keepsOff({ frame: [[-15, 0, 15, 14]] })).toBe(true);
  });

  it("a leaf that ends nearer, or that lies low and stops before it", () => {
    const leafTo = (x: number, top = -0.05): PlainBlocks => ({ leaf: [0.1, -0.2, x, top] });
    const near = 22 - BULGE;
    expect(keepsOff(leafTo(near - 0.01))).toBe(true);
    expect(keepsOff(leafTo(near + 0.01))).toBe(false);
    // Clear of the pivot's level by 1, it is seen from 149° on; the leaf goes to 90° or to 160°.
    const above = { pivot: { x: 0, y: -1 } };
    const sweep = (deg: number) => ({ ...above, sweepRad: (deg * Math.PI) / 180 });
    expect(keepsOff(leafTo(40), sweep(90))).toBe(true);
    expect(keepsOff(leafTo(40), sweep(148))).toBe(true);
    expect(keepsOff(leafTo(40), sweep(149))).toBe(false);
    // One that rises over the pivot's level leads by more than its angle.
    expect(keepsOff(leafTo(40, 0.5), sweep(90))).toBe(false);
  });
});

describe("an element lets pass", () => {
  /** A lift of 5; a clamp that is not told is far back in the throat, on the level. */
  const lets = (side: Side, blocks: PlainBlocks, finished: boolean, joint = UP) =>
    taken(boxOf(side, joint, { liftMm: 5, clamp: [[-99, 0, -98, 1]], ...blocks }), 1, 1).letsPass(finished);

  it("what is left of it, or too high or low to be met", () => {
    for (const finished of [false, true]) {
      expect(lets("clamped", { clamp: [[-60, 0, -26.1, 10]] }, finished)).toBe(true);
      expect(lets("clamped", { clamp: [[-60, 0, -25.9, 10]] }, finished)).toBe(false);
      expect(lets("clamped", { bed: [-60, 0, -20, 10] }, finished)).toBe(false);
      expect(lets("clamped", { bed: [-60, -9, -20, -0.1] }, finished)).toBe(true);
      expect(lets("clamped", { frame: [[-60, 0, -20, 10]] }, finished)).toBe(false);
      expect(lets("clamped", { frame: [[-60, 18.1, -20, 20]] }, finished)).toBe(true);
      expect(lets("clamped", { leaf: [-60, 17.9, -20, 20] }, finished)).toBe(false);
      expect(lets("clamped", { clamp: [[-60, 13.1, -20, 20]] }, finished)).toBe(true);
      expect(lets("clamped", { clamp: [[-60, -9, -20, -5.1]] }, finished)).toBe(true);
      expect(lets("clamped", { clamp: [[-60, -9, -20, -4.9]] }, finished)).toBe(false);
    }
  });

  it("as it lies, and once its bend is made as it stands then", () => {
    // Turned a quarter, x from 21 to 24 becomes a height, y from 0 to 13 a way back to −13.
    expect(lets("moving", { frame: [[0, 0, 20.9, 30]] }, false)).toBe(true);
    expect(lets("moving", { frame: [[0, 0, 21.1, 30]] }, false)).toBe(false);
    expect(lets("moving", { frame: [[-60, 22, -13.1, 30]] }, true)).toBe(true);
    expect(lets("moving", { frame: [[-60, 22, -12.9, 30]] }, true)).toBe(false);
    expect(lets("moving", { frame: [[-60, 0, 0, 20.9]] }, true)).toBe(true);
    expect(lets("moving", { frame: [[-60, 0, 0, 21.1]] }, true)).toBe(false);
    expect(lets("moving", { clamp: [[-60, 24.1, 0, 30]] }, true)).toBe(true);
    expect(lets("moving", { clamp: [[-60, 23.9, 0, 30]] }, true)).toBe(false);
  });
});
