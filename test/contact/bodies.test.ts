/**
 * First contact, least distance and overlap of plain bodies whose figures can be worked out by hand.
 * Source: right triangles (3-4-5 and the like) and circles; each figure's working stands beside it.
 */
import { describe, expect, it } from "vitest";
import { bordersOverlap, type Spot } from "../../src/contact/overlap.ts";
import { SolidBody } from "../../src/contact/solidBody.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { toRad } from "../../src/units/quantity.ts";
import { blockAt, bodyOf, contactOf, distanceOf, outlineOf } from "./shapes.ts";

const quarter = tableSwing(1, 0, 0, Math.PI / 2);

describe("firstContact", () => {
  it("meets a ceiling with its far corner", () => {
    // Corner (3, 1), √10 from the pivot, starts at atan(1/3); it stands at height 3 when sin = 3/√10: 71.565° − 18.435°.
    const found = contactOf(blockAt(1, 0, 3, 1), blockAt(-5, 3, 5, 6), quarter);
    expect(found).toBeCloseTo(Math.asin(3 / Math.sqrt(10)) - Math.atan(1 / 3), 8);
  });

  it("passes under a ceiling that is a hair higher than its corner reaches", () => {
    expect(contactOf(blockAt(1, 0, 3, 1), blockAt(-5, Math.sqrt(10) + 1e-7, 5, 6), quarter)).toBe(Infinity);
    expect(contactOf(blockAt(1, 0, 3, 1), blockAt(-5, Math.sqrt(10) - 1e-7, 5, 6), quarter)).toBeLessThan(2);
  });

  it("meets a fixed corner with its flat side", () => {
    // The side y = 1 turned by φ passes the point (0, 2)'s distance: 2·cos φ = 1 at 60°; foot at 2·sin 60° = 1.73, on [1, 3].
    const corner = bodyOf([0, 2], [1, 4], [-1, 4]);
    expect(contactOf(blockAt(1, 0, 3, 1), corner, quarter)).toBeCloseTo(Math.PI / 3, 8);
  });

  it("passes a fixed corner that lies off the end of its side", () => {
    const corner = bodyOf([0, 4.2], [1, 6], [-1, 6]);
    expect(contactOf(blockAt(1, 0, 3, 1), corner, quarter)).toBe(Infinity);
  });

  it("meets a round with a round", () => {
    // Discs of radius 1 at distance 5 from the pivot, at 0° and 90°: they touch where the chord 2·5·sin(δ/2) is 2.
    const disc = (x: number, y: number) => {
      const half = 1 + 1e-9;
      return blockAt(x - half, y - half, x + half, y + half, 1);
    };
    const found = contactOf(disc(5, 0), disc(0, 5), quarter);
    expect(found).toBeCloseTo(Math.PI / 2 - 2 * Math.asin(1 / 5), 6);
  });

  it("meets the inside of a hollow with its corner", () => {
    // A hollow quarter circle of radius 2 about (0, 3), above the pivot: its bottom corner rounds from (−2, 3) to (0, 1).
    const hollow = bodyOf([-6, 5], [-6, -1], [6, -1], [6, 1], [-2, 1, 2], [-2, 5]);
    // A spike whose tip is 3 from the pivot, at 90° and swinging on to the left: (−3·sin φ, 3·cos φ) from the top.
    // |tip − (0, 3)| = 6·sin(φ/2) reaches 2 at φ = 2·asin(1/3), where the tip is at (−1.886, 2.333), still in the arc.
    const spike = bodyOf([0, 3], [-0.05, 2.4], [0.05, 2.4]);
    const eighth = tableSwing(1, 0, 0, 0.9);
    expect(contactOf(spike, hollow, eighth)).toBeCloseTo(2 * Math.asin(1 / 3), 9);
  });

  it("counts the slide: a block that only slides meets a wall after its gap", () => {
    // s = 4·tan(φ/2), so the gap of 1 is closed at φ = 2·atan(1/4).
    const sliding = tableSwing(0, 4, 0, 1.5);
    expect(contactOf(blockAt(1, 0, 3, 1), blockAt(4, -1, 6, 2), sliding)).toBeCloseTo(2 * Math.atan(0.25), 9);
  });

  it("lets faces rub along each other", () => {
    const sliding = tableSwing(0, 4, 0, 1.5);
    expect(contactOf(blockAt(1, 0, 3, 1), blockAt(-9, 1, 30, 6), sliding)).toBe(Infinity);
  });
});

describe("leastDistance", () => {
  it("is what the far corner leaves under a ceiling, at the angle where it stands on top", () => {
    const found = distanceOf(blockAt(1, 0, 3, 1), blockAt(-5, 4, 5, 6), quarter);
    expect(found.mm).toBeCloseTo(4 - Math.sqrt(10), 9);
    expect(found.phiRad).toBeCloseTo(Math.PI / 2 - Math.atan(1 / 3), 5);
    expect([found.movingX, found.movingY]).toEqual([
      expect.closeTo(0, 4),
      expect.closeTo(Math.sqrt(10), 8),
    ] as unknown[]);
    expect([found.fixedX, found.fixedY]).toEqual([expect.closeTo(0, 4), 4] as unknown[]);
  });

  it("is the distance at rest where a body swings away", () => {
    // From (1, 0) down to the block's top at −2, straight below; the swing lifts it.
    const found = distanceOf(blockAt(1, 0, 3, 1), blockAt(0, -4, 5, -2), tableSwing(1, 0, 0, 0.5));
    expect(found.mm).toBeCloseTo(2, 9);
    expect(found.phiRad).toBe(0);
  });

  it("is the distance at the end where a body is still coming nearer", () => {
    // After 30° the corner (3, 1) is at 48.435°, height √10·sin 48.435° = 2.36603 = 3·sin 30° + cos 30°.
    const found = distanceOf(blockAt(1, 0, 3, 1), blockAt(-5, 4, 5, 6), tableSwing(1, 0, 0, toRad(30)));
    expect(found.mm).toBeCloseTo(4 - (3 * 0.5 + Math.sqrt(3) / 2), 9);
    expect(found.phiRad).toBeCloseTo(toRad(30), 9);
  });

  it("takes a round's radius off", () => {
    const half = 1 + 1e-9;
    const disc = blockAt(5 - half, -half, 5 + half, half, 1);
    // The disc's centre rises to 5, its top to 6.
    const found = distanceOf(disc, blockAt(-5, 7.25, 5, 9), quarter);
    expect(found.mm).toBeCloseTo(1.25, 6);
  });

  it("keeps a cut-off that nothing beats", () => {
    const found = distanceOf(blockAt(1, 0, 3, 1), blockAt(-50, 40, 50, 60), quarter);
    expect(found.mm).toBeCloseTo(40 - Math.sqrt(10), 9);
  });
});

describe("bordersOverlap", () => {
  const at: Spot = { x: 0, y: 0 };

  it.each([
    ["apart", blockAt(5, 0, 6, 1), false],
    ["side by side", blockAt(4, 0, 6, 2), false],
    ["corner to corner", blockAt(4, 2, 6, 4), false],
    ["a thousandth in", blockAt(3.999, 0.5, 6, 1.5), true],
    ["across", blockAt(1, -1, 2, 3), true],
    ["with a round that dips in", blockAt(3.5, 0.5, 6, 1.5, 0.4), true],
    [
      "beside a round that ends on the side",
      bodyOf([4, 0], [6, 0], [6, 3], [5, 3], [5, 1, 0.5], [4, 1]),
      false,
    ],
  ])("tells bodies %s", (_, other, overlap) => {
    expect(bordersOverlap(blockAt(0, 0, 4, 2), other, at)).toBe(overlap);
    expect(bordersOverlap(other, blockAt(0, 0, 4, 2), at)).toBe(overlap);
  });

  it("does not count an arc that only ends on a side", () => {
    // A hollow fillet that fills its ledge: it runs out exactly on x = 0, where the other body's side stands.
    const ledge = bodyOf([-9, -9], [-1, -9], [-1, -4, 1], [0, -4], [0, 0], [-9, 0]);
    expect(bordersOverlap(ledge, blockAt(0, -12, 7, 0), at)).toBe(false);
    expect(bordersOverlap(blockAt(0, -12, 7, 0), ledge, at)).toBe(false);
  });
});

describe("SolidBody", () => {
  const ring = outlineOf([0, 0], [10, 0], [10, 10], [0, 10], [0, 8], [8, 8], [8, 2], [0, 2]);
  const body = new SolidBody(ring, { x: 1, y: 1 });

  it.each([
    [9, 5, true],
    [5, 1, true],
    [5, 5, false],
    [-1, 1, false],
    [11, 5, false],
  ])("holds (%d, %d): %s", (x, y, held) => {
    expect(body.contains(x - 1, y - 1)).toBe(held);
  });
});
