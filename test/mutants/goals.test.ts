/**
 * The best ways to any of several goals: which sets of bends share the best rank, and an order for each. Source: all orders that
 * lead to them, listed one by one (src/model.md, section 8), over bends judged one by one.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import type { Step } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { countOf } from "../../src/sequence/bendSets.ts";
import { bestWays } from "../../src/sequence/rank.ts";
import { reachFrom } from "../../src/sequence/reach.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { jobOf } from "../cases/answers.ts";
import { compareRanks, Judge, type Move, type OrderRank } from "../jobFile/everyOrder.ts";
import type { SearchTruth } from "./truths.ts";

/** Ranks whose clearances differ by less may be taken for equal or not. */
const NEAR_MM = 1e-4;

const { searches } = JSON.parse(readFileSync(new URL("rankings.json", import.meta.url), "utf8")) as {
  readonly searches: readonly SearchTruth[];
};

/** The best rank of each set of `size` bends that some order makes. */
function ranksOf(judge: Judge, size: number): Map<number, OrderRank> {
  const ranks = new Map<number, OrderRank>();
  const { length: n } = judge.job.part.bends;
  const goOn = (set: number, moves: readonly Move[]): void => {
    if (moves.length === size) {
      const rank = judge.rank(moves);
      const best = ranks.get(set);
      if (!best || compareRanks(rank, best) < 0) ranks.set(set, rank);
      return;
    }
    for (let bend = 0; bend < n; bend++) {
      if ((set >>> bend) & 1) continue;
      for (const clamped of ["start", "end"] as const) {
        if (judge.of(set, { bend, clamped }).verdict === "hits") continue;
        goOn(set | (1 << bend), [...moves, { bend, clamped }]);
      }
    }
  };
  goOn(0, []);
  return ranks;
}

function found({ part, brake, marginMm }: Job, size: number) {
  const seats = seatTables(part, brake, new Machine(brake, part.thicknessMm));
  const reach = reachFrom(part, seats);
  const goals = [...reach.reached.keys()].filter((set) => reach.reached[set] && countOf(set) === size);
  // However the goals are told.
  return { goals, ways: bestWays(part, seats, reach, goals.toReversed(), marginMm) };
}

const some = searches.filter(({ file }) => [4, 5].includes(file.part.bends.length)).slice(0, 40);

it("has parts of several bends", () => {
  expect(some.length).toBeGreaterThan(25);
});

describe.each(some)("a recorded part", ({ file }) => {
  const job = jobOf(file);

  it.each([1, 2, 3])("has the best ways to sets of %i bends", (size) => {
    const judge = new Judge(job);
    const ranks = ranksOf(judge, size);
    const { goals, ways } = found(job, size);
    expect(goals).toEqual([...ranks.keys()].sort((a, b) => a - b));
    if (goals.length === 0) return;
    const best = [...ranks.values()].reduce((a, b) => (compareRanks(b, a) < 0 ? b : a));
    const sets = ways.map(({ set }) => set);
    expect(sets).toEqual(sets.toSorted((a, b) => a - b));
    const sure = [...ranks].filter(([, rank]) => compareRanks(rank, best) === 0).map(([set]) => set);
    expect(new Set(sets)).toEqual(new Set([...sets, ...sure]));
    for (const way of ways) {
      const rank = judge.rank(way.moves());
      expect([rank.verdict, rank.changes]).toEqual([best.verdict, best.changes]);
      expect(way.moves().reduce((set, { bend }) => set | (1 << bend), 0)).toBe(way.set);
      if (best.clearanceMm === Infinity) expect(rank.clearanceMm).toBe(Infinity);
      else expect(Math.abs(rank.clearanceMm - best.clearanceMm)).toBeLessThan(NEAR_MM);
    }
  });
});

describe.each(searches.filter(({ viableOrders }) => Number(viableOrders) === 0))(
  "a part that no order makes",
  ({ file }) => {
    it("is shown as far as any order gets, and of those by the bend that swings farthest", () => {
      const job = jobOf(file);
      const judge = new Judge(job);
      const { part, brake, marginMm } = job;
      const { order } = searchOrders(part, brake, marginMm);
      const size = order.length - 1;
      const ranks = ranksOf(judge, size);
      expect(ranksOf(judge, size + 1).size).toBe(0);
      const best = [...ranks.values()].reduce((a, b) => (compareRanks(b, a) < 0 ? b : a));
      const swings = [...ranks]
        .filter(([, rank]) => compareRanks(rank, best) === 0)
        .flatMap(([set]) =>
          part.bends.flatMap((_, bend) =>
            (set >>> bend) & 1
              ? []
              : (["start", "end"] as const).map((clamped) => swungBy(judge.of(set, { bend, clamped }))),
          ),
        );
      const made = order.slice(0, -1).reduce((set, { bend }) => set | (1 << bend), 0);
      expect(swungBy(judge.of(made, order.at(-1)!))).toBeCloseTo(Math.max(...swings), 8);
    });
  },
);

/** How far the leaf comes. */
function swungBy(step: Step): number {
  return step.contact ? step.contact.leafAngleRad : step.seat.sweepRad;
}
