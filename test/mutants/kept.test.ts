/**
 * What the search keeps: counts of orders, pages, bytes and rooms, put in and asked for again. Source: whole numbers of any size,
 * and lists made beside them.
 */
import { describe, expect, it } from "vitest";
import type { LoadingChecks, Room } from "../../src/contact/loading.ts";
import { openRoom } from "../../src/contact/loading.ts";
import { BARRED, Beginnings, FREE, FREE_ON } from "../../src/sequence/beginnings.ts";
import { countOf, nextOfAsMany, reversedSet } from "../../src/sequence/bendSets.ts";
import { OrderCount } from "../../src/sequence/orderCount.ts";
import { Pages } from "../../src/sequence/pages.ts";
import { NO_WAY, OPEN, Rooms } from "../../src/sequence/rooms.ts";
import { formedOn, pathOver, pathToEnd, pathToStart } from "../../src/sequence/sidePath.ts";
import { WidestFirst } from "../../src/sequence/widestFirst.ts";

describe("a count of orders", () => {
  it("is exact as far as 20!·2^20 and beyond", () => {
    const orders = new OrderCount(44);
    let exact = 1n;
    for (let set = 1; set < 44; set++) {
      // Threes, fives and sevens: odd numbers of more digits than one part holds.
      const ways = 2 + 2 * (set % 3);
      // Two sorts of ways from the same set, one after the other.
      orders.add(set, set - 1, ways);
      orders.add(set, set - 1, 1);
      exact *= BigInt(ways + 1);
      expect(orders.of(set)).toBe(exact);
    }
    expect(exact).toBeGreaterThan(2n ** 90n);
  });

  it("is exact where the low part is just full", () => {
    const orders = new OrderCount(50);
    for (let set = 1; set < 50; set++) {
      orders.add(set, set - 1, 2);
      expect(orders.of(set)).toBe(2n ** BigInt(set));
    }
  });
});

describe("sets of bends", () => {
  it.each([1, 2, 3, 4])("come lowest first, %i at a time", (count) => {
    const all = Array.from({ length: 1 << 7 }, (_, set) => set).filter((set) => countOf(set) === count);
    const found = [(1 << count) - 1];
    while (found.length < all.length) found.push(nextOfAsMany(found.at(-1)!));
    expect(found).toEqual(all);
  });

  it("count and run backwards", () => {
    for (let set = 0; set < 64; set++) {
      const digits = [...set.toString(2).padStart(6, "0")];
      expect(countOf(set)).toBe(digits.filter((digit) => digit === "1").length);
      expect(reversedSet(set, 6)).toBe(Number.parseInt(digits.reverse().join(""), 2));
    }
  });
});

it("counts the joints formed toward either end, nearest first", () => {
  // Of six bends the second, third and sixth are made; seen from the fourth.
  const set = 0b100110;
  expect(formedOn(pathToEnd(set, 3, 6))).toBe(0b10);
  expect(formedOn(pathToStart(set, 3))).toBe(0b011);
  expect(formedOn(pathToEnd(set, 0, 6))).toBe(0b10011);
  expect(formedOn(pathToStart(set, 4))).toBe(0b0110);
});

describe("a queue", () => {
  it.each([1, 5, 64, 65, 300])(
    "of %i gives the widest first, then the deepest, then the first put in",
    (count) => {
      const queue = new WidestFirst();
      const waiting: { readonly entry: number; readonly width: number; readonly depth: number }[] = [];
      let entry = 0;
      const put = () => {
        const one = { entry: entry++, width: (entry * 7919) % 5, depth: (entry * 104729) % 3 };
        queue.put(one.entry, one.width, one.depth);
        waiting.push(one);
        waiting.sort((a, b) => b.width - a.width || b.depth - a.depth || a.entry - b.entry);
      };
      const take = () => {
        const { width, depth } = waiting[0]!;
        expect(queue.first).toEqual({ width, depth });
        expect(queue.take()).toBe(waiting.shift()!.entry);
        expect(queue.size).toBe(waiting.length);
      };
      for (let i = 0; i < count; i++) put();
      for (let i = 0; i < count; i++) {
        take();
        if (i % 3 === 0) put();
      }
      while (waiting.length > 0) take();
    },
  );
});

describe("pages", () => {
  it("give every beginning a place of its own, on a page that its nearest joints choose", () => {
    const made: number[] = [];
    const pages = new Pages(12, (beginnings) => {
      made.push(beginnings);
      return { number: made.length, beginnings };
    });
    const all = new Set<string>();
    const ofPages = new Map<number, string>();
    for (let k = 0; k <= 12; k++) {
      for (let formed = 0; formed < 1 << k; formed++) {
        const path = pathOver(k, formed);
        const { number, beginnings } = pages.of(path);
        const at = pages.at(path);
        expect(at).toBeLessThan(beginnings);
        all.add(`${number} ${at}`);
        // Of nine joints and more all but the last nine choose the page.
        const nearest = k < 9 ? "short" : `${k} ${formed & ((1 << (k - 9)) - 1)}`;
        expect(ofPages.get(number) ?? nearest).toBe(nearest);
        ofPages.set(number, nearest);
      }
    }
    expect(all.size).toBe(2 ** 13 - 1);
    expect(new Set(ofPages.values()).size).toBe(ofPages.size);
    // All of 0 to 8 joints share one page; those of 9, 10, 11 and 12 take one, two, four and eight.
    expect(made).toEqual(Array.from({ length: 16 }, () => 512));
  });

  it.each([0, 3, 8, 9])("are no larger than a side of %i joints asks for", (joints) => {
    const made: number[] = [];
    const pages = new Pages(joints, (beginnings) => made.push(beginnings));
    const places = new Set<string>();
    for (let path = 1; path < 2 << joints; path++) places.add(`${pages.of(path)} ${pages.at(path)}`);
    expect(places.size).toBe((2 << joints) - 1);
    expect(made).toEqual(joints < 9 ? [2 << joints] : [512, 512]);
  });
});

describe("what is known of beginnings", () => {
  it("is kept apart for each of them", () => {
    const known = new Beginnings(4);
    const states = [0, FREE, BARRED, FREE_ON];
    const stateOf = (path: number) => states[(3 * path + (path >> 2)) % 4]!;
    const clearOn = (path: number) => path % 3 === 0;
    const each = (look: (path: number) => void) => {
      for (let path = 1; path < 32; path++) look(path);
    };
    each((path) => {
      expect([known.state(path), known.isClearOn(path)]).toEqual([0, false]);
      if (clearOn(path)) known.keepClearOn(path);
      known.keepState(path, stateOf(path));
    });
    each((path) => {
      expect(known.state(path)).toBe(stateOf(path));
      expect(known.isClearOn(path)).toBe(clearOn(path));
    });
  });
});

describe("rooms", () => {
  /** Rooms on a brake that lets pass whatever does not overlap and blocks nothing over 100. */
  const roomsOf = () =>
    new Rooms({
      lets: ({ overlaps, sheet, clamp }: Room) =>
        !overlaps && ![...sheet.bounds, ...clamp.bounds].some((bound) => bound > 100),
    } as unknown as LoadingChecks);
  const bounds = ({ sheet, clamp }: Room) => [[...sheet.bounds], [...clamp.bounds]];

  it("begin with one that blocks nothing", () => {
    expect(bounds(roomsOf().at(OPEN))).toEqual([[], []]);
  });

  it("add what an element blocks to what those before it do, and keep every one", () => {
    const rooms = roomsOf();
    const kept: { readonly number: number; readonly sheet: number[]; readonly clamp: number[] }[] = [
      { number: OPEN, sheet: [], clamp: [] },
    ];
    for (let i = 0; i < 40; i++) {
      const before = kept[(7 * i) % kept.length]!;
      const next = rooms.ofElement(before.number);
      expect(bounds(next)).toEqual([before.sheet, before.clamp]);
      const [sheet, clamp] = [openRoom().sheet, openRoom().clamp];
      for (const [from, list] of [
        [before.sheet, sheet],
        [before.clamp, clamp],
      ] as const) {
        for (let b = 0; b < from.length; b += 2) list.add(from[b]!, from[b + 1]!);
      }
      const target = i % 3 === 0 ? next.clamp : next.sheet;
      target.add(2 * i + 1, 2 * i + 2);
      (i % 3 === 0 ? clamp : sheet).add(2 * i + 1, 2 * i + 2);
      const number = rooms.joined(before.number);
      expect(kept.map((one) => one.number)).not.toContain(number);
      kept.push({ number, sheet: [...sheet.bounds], clamp: [...clamp.bounds] });
    }
    for (const { number, sheet, clamp } of kept) expect(bounds(rooms.at(number))).toEqual([sheet, clamp]);
  });

  it("share a number where no more is blocked", () => {
    const rooms = roomsOf();
    rooms.ofElement(OPEN).sheet.add(3, 9);
    const number = rooms.joined(OPEN);
    expect(number).not.toBe(OPEN);
    rooms.ofElement(number).sheet.add(4, 8);
    expect(rooms.joined(number)).toBe(number);
    rooms.ofElement(number);
    expect(rooms.joined(number)).toBe(number);
    rooms.ofElement(number).sheet.add(4, 10);
    expect(rooms.joined(number)).not.toBe(number);
    rooms.ofElement(number).clamp.add(4, 8);
    const other = rooms.joined(number);
    expect(other).not.toBe(number);
    rooms.ofElement(other).clamp.add(4, 9);
    expect(bounds(rooms.at(rooms.joined(other)))).toEqual([
      [3, 9],
      [4, 9],
    ]);
  });

  it("leave no way where the brake does not let them pass", () => {
    const rooms = roomsOf();
    rooms.ofElement(OPEN).overlaps = true;
    expect(rooms.joined(OPEN)).toBe(NO_WAY);
    rooms.ofElement(OPEN).sheet.add(3, 101);
    expect(rooms.joined(OPEN)).toBe(NO_WAY);
    rooms.ofElement(OPEN).sheet.add(3, 99);
    const number = rooms.joined(OPEN);
    expect(bounds(rooms.at(number))).toEqual([[3, 99], []]);
  });
});
