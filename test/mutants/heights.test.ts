/**
 * Heights from which a piece of sheet can't slide out past a body, or up to which it can't rise. Source: the two shapes cut
 * by many lines: across, to see whether anything of the body stands right of the sheet; upright, to see whether any stands over it.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BlockedHeights, blockHeights } from "../../src/contact/blockedHeights.ts";
import type { Features } from "../../src/contact/features.ts";
import { SolidBody } from "../../src/contact/solidBody.ts";
import { between } from "../contact/roughJob.ts";
import { outlineOf } from "../contact/shapes.ts";
import { type Point, turned } from "./roundedBlocks.ts";
import { bendPiece, inBend, type Laying, LONG, straightPiece, T } from "./sheetPieces.ts";

const LIFT = 12;
const LINES = 90;
/** Cuts by so many lines leave a height off by this at most. */
const OFF = 0.15;
const BESIDE = 0.2;

/** Where a closed polygon crosses the line on which coordinate `axis` is `at`, in pairs. */
function cuts(polygon: readonly Point[], axis: 0 | 1, at: number): number[] {
  return polygon
    .flatMap((a, i) => {
      const b = polygon[(i + 1) % polygon.length]!;
      if (a[axis] > at === b[axis] > at) return [];
      const share = (at - a[axis]) / (b[axis] - a[axis]);
      return [a[1 - axis]! + share * (b[1 - axis]! - a[1 - axis]!)];
    })
    .toSorted((a, b) => a - b);
}

interface Cut {
  readonly sheet: readonly number[];
  readonly body: readonly number[];
}

/** Cuts of the raised sheet and the body by the lines that may cross both. */
function cutBoth(sheet: readonly Point[], body: readonly Point[], axis: 0 | 1): Cut[] {
  const [s, b] = [sheet, body].map((polygon) => polygon.map((point) => point[axis]));
  const from = Math.max(Math.min(...s!), Math.min(...b!));
  const to = Math.min(Math.max(...s!), Math.max(...b!));
  return Array.from({ length: from < to ? LINES : 0 }, (_, i) => {
    const at = from + ((to - from) * (i + 0.5)) / LINES;
    return { sheet: cuts(sheet, axis, at), body: cuts(body, axis, at) };
  });
}

/** Whether the sheet raised by `height` (lowered: below 0) has any of the body in its way to the right. */
function slideBlocked(sheet: readonly Point[], body: readonly Point[], height: number): boolean {
  const raised = sheet.map(([x, y]): Point => [x, y + height]);
  return cutBoth(raised, body, 1).some((cut) => cut.body.at(-1)! > cut.sheet[0]!);
}

/** Whether any of the body lies between the sheet and itself moved upright by `height`. */
function riseBlocked(sheet: readonly Point[], body: readonly Point[], height: number): boolean {
  const [down, up] = [Math.min(0, height), Math.max(0, height)];
  return cutBoth(sheet, body, 0).some((cut) => {
    for (let i = 0; i < cut.sheet.length; i += 2)
      for (let j = 0; j < cut.body.length; j += 2)
        if (cut.body[j]! < cut.sheet[i + 1]! + up && cut.body[j + 1]! > cut.sheet[i]! + down) return true;
    return false;
  });
}

interface Case {
  readonly piece: Features;
  readonly sheet: readonly Point[];
  readonly body: readonly Point[];
  readonly up: 1 | -1;
}

/** Laid at any angle; `mirrored` sheets run to the left. */
function layingOf(angle: number, x: number, y: number): Laying {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return {
    name: "any",
    mirrored: false,
    lay: (strip) => strip.placeTurned(x, y, c, s),
    place: (point) => turned([point[0] + x, point[1] + y], angle),
  };
}

function bentSheet(laying: Laying, turn: 1 | -1, angle: number): Point[] {
  const marks = Array.from({ length: 41 }, (_, i) => (angle * i) / 40);
  return [
    ...marks.map((at) => laying.place(inBend(turn, 0, at))),
    ...marks.toReversed().map((at) => laying.place(inBend(turn, T, at))),
  ];
}

const cases = fc
  .sample(
    fc.noBias(
      fc.record({
        angle: fc.oneof(fc.constantFrom(0, Math.PI / 2, Math.PI), between(-3.1, 3.1)),
        x: between(-20, 5),
        y: between(-4, 4),
        kind: fc.constantFrom<("straight" | "up" | "down")[]>("straight", "straight", "up", "down"),
        bend: between(0.5, 2),
        body: fc.tuple(between(-12, 18), between(-12, 14), between(1, 9), between(1, 9), between(-1, 1)),
        hook: fc.boolean(),
        up: fc.constantFrom<(1 | -1)[]>(1, -1),
      }),
    ),
    { seed: 74, numRuns: 260 },
  )
  .flatMap(({ angle, x, y, kind, bend, body: [bx, by, wide, high, askew], hook, up }): Case[] => {
    const laying = layingOf(angle, x, y);
    const turn = kind === "down" ? -1 : 1;
    const straight = kind === "straight";
    const sheet = straight
      ? (
          [
            [0, 0],
            [LONG, 0],
            [LONG, T],
            [0, T],
          ] as const
        ).map(laying.place)
      : bentSheet(laying, turn, bend);
    const block: Point[] = hook
      ? [
          [0, 0],
          [wide + 3, 0],
          [wide + 3, high + 3],
          [0, high + 3],
          [0, high + 2],
          [wide + 2, high + 2],
          [wide + 2, 1],
          [0, 1],
        ]
      : [
          [0, 0],
          [wide, 0],
          [wide, high],
          [0, high],
        ];
    const body = block.map((corner) => turned(corner, askew, bx, by));
    // Sheet and body stand clear of each other, and so by a little either way.
    const near = [-0.2, 0, 0.2].some((shift) =>
      riseBlocked(
        sheet.map(([px, py]): Point => [px + shift, py + shift]),
        body,
        0,
      ),
    );
    if (near) return [];
    const piece = straight ? straightPiece(laying, 0, 3, true) : bendPiece(laying, turn, bend, 0, 3);
    return [{ piece, sheet, body, up }];
  });

function freeAt({ sheet, body, up }: Case, height: number): boolean {
  return !slideBlocked(sheet, body, up * height) && !riseBlocked(sheet, body, up * height);
}

const HEIGHTS = Array.from({ length: 12 }, (_, i) => 0.35 + i);

interface Told {
  readonly height: number;
  readonly free: boolean;
}

/** What the cuts say of a case, worked out once. */
const known = new Map<Case, readonly Told[]>();

function toldOf(one: Case): readonly Told[] {
  const before = known.get(one);
  if (before) return before;
  const told = HEIGHTS.flatMap((height): Told[] => {
    const [low, free, high] = [-OFF, 0, OFF].map((off) => freeAt(one, Math.max(0, height + off)));
    return low === free && free === high ? [{ height, free: free! }] : [];
  });
  known.set(one, told);
  return told;
}

const groups = Array.from({ length: Math.ceil(cases.length / 15) }, (_, i) => ({
  some: cases.slice(15 * i, 15 * i + 15),
}));

it("has enough heights that are free and that are blocked", () => {
  const all = cases.flatMap(toldOf);
  const free = all.filter((height) => height.free).length;
  expect(Math.min(free, all.length - free)).toBeGreaterThan(250);
});

describe.each(groups)("pieces of sheet", ({ some }) => {
  it("are blocked at the heights at which the cuts say so", () => {
    for (const one of some) {
      const { piece, body, up } = one;
      const told = toldOf(one);
      const solid = new SolidBody(outlineOf(...body), { x: 0, y: 0 });
      const out = new BlockedHeights();
      blockHeights(piece, solid, up, LIFT + 1, out);
      for (const { height, free } of told) {
        const said = JSON.stringify({ height, bounds: out.bounds, body, up });
        expect(out.leastFree(height) === height, said).toBe(free);
      }
      // Right beside each end of what is blocked the cuts agree.
      for (const bound of out.bounds.filter((end) => end > OFF && end < LIFT)) {
        for (const beside of [bound - BESIDE, bound + BESIDE]) {
          const [low, free, high] = [-OFF, 0, OFF].map((off) => freeAt(one, beside + off));
          if (low !== free || free !== high) continue;
          expect(out.leastFree(beside) === beside, JSON.stringify({ beside, bounds: out.bounds })).toBe(free);
        }
      }
      // A shorter lift leaves nothing out that it can reach.
      const short = new BlockedHeights();
      blockHeights(piece, solid, up, LIFT / 2, short);
      for (const { height, free } of told)
        if (height < LIFT / 2) expect(short.leastFree(height) === height).toBe(free);
    }
  });
});

describe("a union of heights", () => {
  const ends = fc.integer({ min: -3, max: 20 });
  const lists = fc.sample(fc.noBias(fc.array(fc.tuple(ends, ends), { minLength: 1, maxLength: 7 })), {
    seed: 75,
    numRuns: 150,
  });

  it("holds the heights of all it was made of, sorted and apart", () => {
    for (const list of lists) {
      const heights = new BlockedHeights();
      for (const [from, long] of list) heights.add(from, from + Math.abs(long) / 2);
      const covers = (at: number) => list.some(([from, long]) => from < at && at < from + Math.abs(long) / 2);
      const { bounds } = heights;
      bounds.forEach((bound, i) => void expect(i === 0 || bound > bounds[i - 1]!).toBe(true));
      for (let at = 0.25; at < 32; at += 0.5) {
        expect(heights.leastFree(at) === at, JSON.stringify({ list, at, bounds })).toBe(!covers(at));
        let next = at;
        while (covers(next)) next += 0.5;
        // The free height is the end of the stretch, a quarter before the first free mark.
        if (next > at) expect(heights.leastFree(at)).toBe(next - 0.25);
      }
      const again = new BlockedHeights();
      again.addAll(heights);
      expect(again.bounds).toEqual(bounds);
    }
  });

  it("takes what reaches under 0 for blocking 0 too, and what only touches for nothing", () => {
    const heights = new BlockedHeights();
    heights.add(2, 2 + 5e-7);
    heights.add(-4, 0);
    heights.add(-4, 5e-7);
    expect([heights.bounds, heights.leastFree(0)]).toEqual([[], 0]);
    heights.add(0, 1);
    expect(heights.leastFree(0)).toBe(0);
    expect(heights.leastFree(0.5)).toBe(1);
    heights.add(-2, 1);
    expect(heights.leastFree(0)).toBe(1);
    heights.add(1, 3);
    expect(heights.leastFree(0)).toBe(3);
    heights.add(5, Infinity);
    expect([heights.leastFree(4), heights.leastFree(6)]).toEqual([4, Infinity]);
  });
});
