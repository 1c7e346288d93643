/**
 * A disc in a pocket with rounded bottom corners: the pocket is a smaller one grown by the corners' radius, so a disc has
 * what is left of radius and distance from the smaller one's middle lines. Contact, clearance and overlap, whichever of the
 * two moves. Source: Minkowski sums; the swing is marched in small steps.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Features, featuresOf } from "../../src/contact/features.ts";
import { firstContact } from "../../src/contact/firstContact.ts";
import { leastDistance } from "../../src/contact/leastDistance.ts";
import { Meeting } from "../../src/contact/meeting.ts";
import { bordersOverlap } from "../../src/contact/overlap.ts";
import { makePairCurve } from "../../src/contact/pairCurve.ts";
import { tableSwing } from "../../src/motion/swing.ts";
import { between } from "../contact/roughJob.ts";
import { outlineOf } from "../contact/shapes.ts";
import { type Point, turned } from "./roundedBlocks.ts";

const HALF = 4;
const ROUND = 2.5;
const DEEP = 12;

/** Pocket open upward, its floor's middle at (0, 0) before it is laid; walls at ±4, corners rounded by 2.5. */
function pocketAt(x: number, y: number, askew: number): Features {
  const corners: readonly (readonly [number, number, number?])[] = [
    [-9, DEEP],
    [-9, -3],
    [9, -3],
    [9, DEEP],
    [HALF, DEEP],
    [HALF, 0, ROUND],
    [-HALF, 0, ROUND],
    [-HALF, DEEP],
  ];
  const placed = corners.map(([px, py, radius = 0]) => [...turned([px, py], askew, x, y), radius] as const);
  return featuresOf(outlineOf(...placed), { x: 0, y: 0 });
}

/** A disc is one round of every direction's half either way; two of them make it whole. */
function discAt([x, y]: Point, radius: number): Features {
  const F = new Features(0, 2, 0);
  F.addRound(x, y, radius, 1, 0, 0, 5);
  F.addRound(x, y, radius, -1, 0, 0, 5);
  return F;
}

/** What a disc's middle, seen from the pocket, has left to wall and floor; for middles within the pocket. */
function leftOver([x, y]: Point, radius: number): number {
  const across = Math.max(0, Math.abs(x) - (HALF - ROUND));
  const down = Math.max(0, ROUND - y);
  if (down === 0) return Math.min(HALF - Math.abs(x), y) - radius;
  return ROUND - radius - Math.hypot(across, down);
}

interface Case {
  readonly at: Point;
  readonly askew: number;
  /** The disc's middle at rest, seen from the pocket. */
  readonly disc: Point;
  readonly radius: number;
  readonly discMoves: boolean;
  readonly slideTan: number;
  readonly to: number;
}

const cases = fc
  .sample(
    fc.noBias(
      fc.record({
        at: fc.tuple(between(-8, 8), between(-8, 8)),
        askew: between(0, 6),
        disc: fc.tuple(between(-2.5, 2.5), between(1, 6)),
        radius: between(0.3, 1.4),
        discMoves: fc.boolean(),
        slideTan: fc.oneof(fc.constant(0), between(0, 6)),
        to: between(0.05, 0.7),
      }),
    ),
    { seed: 73, numRuns: 400 },
  )
  .map((one): Case => one);

/** What is left at a leaf angle; undefined where the disc is no longer well within the pocket. */
function leftAt(one: Case, phi: number): number | undefined {
  const slide = one.slideTan * Math.tan(phi / 2);
  const [dx, dy] = turned(one.disc, one.askew, ...one.at);
  const moved: Point = one.discMoves ? turned([dx + slide, dy], phi) : turnBack([dx, dy], phi, slide);
  const [px, py] = [moved[0] - one.at[0], moved[1] - one.at[1]];
  const seen = turned([px, py], -one.askew);
  if (seen[1] > DEEP - 3 || seen[1] < one.radius - 1 || Math.abs(seen[0]) > HALF + 0.3) return undefined;
  return leftOver(seen, one.radius);
}

/** A point that stands, seen from what slides and turns. */
function turnBack(point: Point, phi: number, slide: number): Point {
  const [x, y] = turned(point, -phi);
  return [x - slide, y];
}

interface Truth extends Case {
  readonly first: number;
  readonly least: number;
}

function truthOf(one: Case): Truth | undefined {
  const step = one.to / 400;
  const start = leftAt(one, 0);
  if (start === undefined || start < 0.05) return undefined;
  let [least, where] = [Infinity, 0];
  for (let i = 0; i <= 400; i++) {
    const left = leftAt(one, i * step);
    if (left === undefined) return undefined;
    if (left < least) [least, where] = [left, i * step];
    if (left > 0) continue;
    // Deep enough after it that it is no graze.
    const after = leftAt(one, Math.min(one.to, (i + 2) * step));
    if (after === undefined || after > -1e-4) return undefined;
    let [free, met] = [(i - 1) * step, i * step];
    while (met - free > 1e-11) {
      const middle = (free + met) / 2;
      if (leftAt(one, middle)! > 0) free = middle;
      else met = middle;
    }
    return { ...one, first: met, least: 0 };
  }
  if (least < 0.01) return undefined;
  let [low, high] = [Math.max(0, where - step), Math.min(one.to, where + step)];
  for (let i = 0; i < 50; i++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (leftAt(one, a)! < leftAt(one, b)!) high = b;
    else low = a;
  }
  return { ...one, first: Infinity, least: leftAt(one, (low + high) / 2)! };
}

const truths = cases.flatMap((one) => truthOf(one) ?? []);
const meets = truths.filter(({ first }) => first < Infinity);
const passes = truths.filter(({ first }) => first === Infinity);

function bodiesOf(one: Case): readonly [moving: Features, fixed: Features] {
  const disc = discAt(turned(one.disc, one.askew, ...one.at), one.radius);
  const pocket = pocketAt(...one.at, one.askew);
  return one.discMoves ? [disc, pocket] : [pocket, disc];
}

const groups = <Item>(items: readonly Item[]) =>
  Array.from({ length: Math.ceil(items.length / 10) }, (_, i) => ({
    some: items.slice(10 * i, 10 * i + 10),
  }));

it("has enough discs that meet the pocket and that pass", () => {
  expect(Math.min(meets.length, passes.length)).toBeGreaterThan(30);
});

describe.each(groups(meets))("discs that meet the pocket", ({ some }) => {
  it("meet it first at the angle marched to, at one point", () => {
    for (const one of some) {
      const [A, B] = bodiesOf(one);
      const swing = tableSwing(1, one.slideTan, 0, one.to);
      const found = { phiRad: Infinity, kind: "roundOnEdge" as const, a: 0, b: 0 };
      const meeting = new Meeting();
      const phi = firstContact(A, B, swing, one.to, makePairCurve(), meeting, found);
      expect(Math.abs(phi - one.first)).toBeLessThan(1e-6);
      [meeting.kind, meeting.a, meeting.b] = [found.kind, found.a, found.b];
      const slide = one.slideTan * Math.tan(phi / 2);
      expect(meeting.meets(phi, Math.cos(phi), Math.sin(phi), slide)).toBe(true);
      expect(Math.hypot(meeting.movingX - meeting.fixedX, meeting.movingY - meeting.fixedY)).toBeLessThan(
        1e-6,
      );
      const [dx, dy] = turned(one.disc, one.askew, ...one.at);
      const middle: Point = one.discMoves ? turned([dx + slide, dy], phi) : [dx, dy];
      expect(Math.hypot(meeting.fixedX - middle[0], meeting.fixedY - middle[1])).toBeCloseTo(one.radius, 6);
    }
  });
});

describe.each(groups(passes))("discs that pass the pocket's walls", ({ some }) => {
  it("have the least distance marched over, between two points so far apart", () => {
    for (const one of some) {
      const [A, B] = bodiesOf(one);
      const swing = tableSwing(1, one.slideTan, 0, one.to);
      for (const cutOff of [Infinity, ROUND + 3, one.least + 1e-4]) {
        const near = { mm: cutOff, phiRad: 0, movingX: 0, movingY: 0, fixedX: 0, fixedY: 0 };
        leastDistance(A, B, swing, makePairCurve(), new Meeting(), near);
        expect(Math.abs(near.mm - one.least)).toBeLessThan(1e-6);
        expect(leftAt(one, near.phiRad)).toBeCloseTo(near.mm, 6);
        expect(Math.hypot(near.movingX - near.fixedX, near.movingY - near.fixedY)).toBeCloseTo(near.mm, 6);
      }
    }
  });
});

it("overlaps at rest where the disc has less than nothing left", () => {
  let [over, free] = [0, 0];
  for (const random of cases) {
    const one = { ...random, disc: [1.5 * random.disc[0], 0.7 * random.disc[1]] as const };
    const left = leftOver(one.disc, one.radius);
    // A disc that lies deep in the wall crosses other sides of it.
    if (Math.abs(left) < 0.01 || left < -one.radius) continue;
    const still = { ...one, discMoves: true };
    const [disc, pocket] = bodiesOf(still);
    for (const [A, B] of [
      [disc, pocket],
      [pocket, disc],
    ] as const) {
      const at = { x: Infinity, y: Infinity };
      expect(bordersOverlap(A, B, at)).toBe(left < 0);
      if (left > 0) continue;
      const middle = turned(one.disc, one.askew, ...one.at);
      expect(Math.hypot(at.x - middle[0], at.y - middle[1])).toBeCloseTo(one.radius, 6);
    }
    if (left < 0) over++;
    else free++;
  }
  expect(Math.min(over, free)).toBeGreaterThan(50);
});
