/**
 * Ranking among made-up bends: the best ways forward to all goals, and the widest way looked for from the goals back. Source: all
 * orders listed one by one (src/model.md, section 8).
 */
import { describe, expect, it } from "vitest";
import { countOf } from "../../src/sequence/bendSets.ts";
import { AllowedMasks, Moves } from "../../src/sequence/moves.ts";
import { bestWays } from "../../src/sequence/rank.ts";
import { StateClearance } from "../../src/sequence/stateClearance.ts";
import { WidestBack } from "../../src/sequence/widestBack.ts";
import { compareRanks } from "../jobFile/everyOrder.ts";
import { widestPlainly } from "../sequence/widestPlainly.ts";
import { bestOf, MadeUp, setOf } from "./madeUp.ts";

const CASES = Array.from({ length: 40 }, (_, i) => [i, 0.35 + (i % 5) * 0.13, (i % 3) * 0.4] as const);

describe.each(CASES)("made-up bends, %i", (seed, share, openShare) => {
  const made = () => new MadeUp(4, seed, share, openShare);

  it.each([0.5, 2, 4])("have the best ways to all goals, margin %f", (marginMm) => {
    for (let size = 1; size <= 4; size++) {
      const some = made();
      const { part, seats, reach } = some;
      const goals = [...reach.reached.keys()].filter((set) => reach.reached[set] && countOf(set) === size);
      if (goals.length === 0) continue;
      const listed = some.orders(size, marginMm);
      const best = bestOf(listed);
      const expected = new Set(listed.filter(({ rank }) => compareRanks(rank, best) === 0).map(setOf));
      const ways = bestWays(part, seats, reach, goals.toReversed(), marginMm);
      // A set may be there once for each way in which it is held last.
      const sets = ways.map(({ set }) => set);
      expect(sets).toEqual(sets.toSorted((a, b) => a - b));
      expect(new Set(sets)).toEqual(expected);
      for (const way of ways) {
        const order = way.moves().map(({ bend, clamped }) => ({ bend, endHeld: clamped === "end" ? 1 : 0 }));
        const same = listed.find((one) => JSON.stringify(one.order) === JSON.stringify(order));
        expect(same?.rank).toEqual(best);
        expect(setOf({ order, rank: best })).toBe(way.set);
      }
    }
  });

  it("have the widest way from the goals back", () => {
    for (let size = 1; size <= 4; size++) {
      const some = made();
      const { part, seats, reach, n } = some;
      const goals = [...reach.reached.keys()].filter((set) => reach.reached[set] && countOf(set) === size);
      if (goals.length === 0) continue;
      // Nothing is tight at no margin: fewest changes first, then the widest.
      const best = bestOf(some.orders(size, 0));
      const moves = new Moves(part, goals);
      const all = moves.leadingOn(new AllowedMasks(reach.withStart, reach.withEnd));
      const frugal = moves.frugal(all)!;
      const { changes, fewest } = frugal;
      expect(fewest).toBe(best.changes);
      expect(fewest).toBe(Math.min(...goals.flatMap((goal) => [...changes.slice(4 * goal, 4 * goal + 4)])));
      const back = new WidestBack(moves, new StateClearance(seats, n), frugal, Number.POSITIVE_INFINITY);
      let through: number | undefined;
      let steps = 0;
      while (through === undefined && back.mostMm >= 0) {
        through = back.stepBack(Number.POSITIVE_INFINITY);
        steps++;
      }
      expect(through).toBe(best.clearanceMm);
      expect(steps).toBeLessThanOrEqual(4 * moves.sets);
      let [set, held, least] = [0, -1, Number.POSITIVE_INFINITY];
      let changed = 0;
      for (const { at, bend } of back.way()) {
        least = Math.min(least, some.clearance(set, bend, at & 1));
        expect(at & 2).toBe(part.bends[bend]!.turn === "up" ? 2 : 0);
        if (held >= 0) changed += ((held ^ at) & 1) + (((held ^ at) >> 1) & 1);
        held = at & 3;
        set |= 1 << bend;
        expect(at >> 2).toBe(set);
      }
      expect([goals.includes(set), changed, least]).toEqual([true, fewest, through]);
    }
  });
});

it("asks of a part's distance from itself only where the brake leaves as much", () => {
  const some = new MadeUp(5, 3, 1, 0);
  bestWays(some.part, some.seats, some.reach, [31], 0.5);
  // All states and ends of five bends are 160.
  expect(some.selfAsked).toBeLessThan(40);
});

describe("eleven made-up bends that close in on themselves", () => {
  it.each([2, 3, 10, 11, 33, 34])("have the best order, looked for from both sides, %i", (seed) => {
    const some = new MadeUp(11, seed, seed % 2 === 0 ? 1 : 0.8, 0, true);
    const stepBack = WidestBack.prototype.stepBack;
    let steps = 0;
    WidestBack.prototype.stepBack = function (mostMm) {
      steps++;
      return stepBack.call(this, mostMm);
    };
    try {
      const [way] = bestWays(some.part, some.seats, some.reach, [2047], 99);
      let [set, held, changes, least] = [0, -1, 0, Number.POSITIVE_INFINITY];
      for (const { bend, clamped } of way!.moves()) {
        const endHeld = clamped === "end" ? 1 : 0;
        least = Math.min(least, some.clearance(set, bend, endHeld));
        const hold = endHeld + (some.part.bends[bend]!.turn === "up" ? 2 : 0);
        if (held >= 0) changes += ((held ^ hold) & 1) + ((held ^ hold) >> 1);
        held = hold;
        set |= 1 << bend;
      }
      expect(set).toBe(2047);
      expect({ changes, mm: least }).toEqual(
        widestPlainly(some.part, some.reach, (made, bend, endHeld) => some.clearance(made, bend, endHeld)),
      );
      expect(steps).toBeGreaterThan(0);
      // Far fewer than the thousand looks from the other side.
      expect(steps).toBeLessThan(30);
    } finally {
      WidestBack.prototype.stepBack = stepBack;
    }
  });
});
