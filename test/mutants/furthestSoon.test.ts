/**
 * How far a part gets that can't be finished, seen soon: the same order as the full look at all that can be reached gives.
 * Source: that full look, itself held to plain enumeration (searches.test.ts, goals.test.ts); sets of bends told on paper.
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { AskedMoves } from "../../src/sequence/askedMoves.ts";
import { countOf } from "../../src/sequence/bendSets.ts";
import { furthestOrder, furthestSoon } from "../../src/sequence/furthest.ts";
import { MOST_SETS, MostReached } from "../../src/sequence/mostReached.ts";
import { type Allowed, AllowedMasks, Moves } from "../../src/sequence/moves.ts";
import { Ranking } from "../../src/sequence/ranking.ts";
import { reachFrom, SearchStopped } from "../../src/sequence/reach.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { StateClearance } from "../../src/sequence/stateClearance.ts";
import { benchJob } from "../bench/benchJobs.ts";
import { jobOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

function both({ part, brake, marginMm }: Job) {
  const machine = new Machine(brake, part.thicknessMm);
  const soon = furthestSoon(part, machine, seatTables(part, brake, machine), marginMm);
  const seats = seatTables(part, brake, machine);
  const reach = reachFrom(part, seats);
  const viable = reach.reached.at(-1) === 1;
  return { soon, viable, reach, full: () => furthestOrder(part, machine, seats, reach, marginMm) };
}

describe("a part that can't be finished", () => {
  const failing = TRUTHS.searches.filter(({ rank }) => rank === null);

  it("is told from one that can", () => {
    const folding = TRUTHS.searches.filter(({ rank }) => rank !== null).slice(0, 30);
    expect(folding.length).toBeGreaterThan(10);
    for (const { file } of folding) expect(both(jobOf(file)).soon).toBeUndefined();
  });

  it("comes in all sorts", () => {
    expect(failing.length).toBeGreaterThan(20);
    const soon = failing.filter(({ file }) => both(jobOf(file)).soon);
    expect(soon.length).toBeGreaterThan(failing.length / 4);
    const faces = soon.map(({ file }) => new Set(file.part.bends.map(({ turn }) => turn)).size);
    expect(faces).toContain(1);
    expect(faces).toContain(2);
  });

  it.each([0, 1, 2, 3, 4, 5, 6, 7])(
    "gets as far by the same order, wherever that is soon seen, part of eight %i",
    (eighth) => {
      for (const { file, furthest } of failing.filter((_, i) => i % 8 === eighth)) {
        const { soon, full } = both(jobOf(file));
        if (!soon) continue;
        expect(soon.order).toEqual(full());
        expect(soon.order).toHaveLength(furthest + 1);
      }
    },
  );

  it.each([0, 1, 2, 3])(
    "has a clear way or none, seen from the goals back as by all moves, quarter %i",
    (quarter) => {
      let [none, some] = [0, 0];
      for (const { file } of failing.filter((_, i) => i % 8 === quarter)) {
        const { part, brake } = jobOf(file);
        const machine = new Machine(brake, part.thicknessMm);
        const seats = seatTables(part, brake, machine);
        const reach = reachFrom(part, seats);
        const most = Math.max(...[...reach.reached].map((reached, set) => (reached ? countOf(set) : 0)));
        if (most === 0) continue;
        const goals = [...reach.reached.keys()].filter((set) => reach.reached[set] && countOf(set) === most);
        const moves = new Moves(part, goals);
        const all = moves.leadingOn(new AllowedMasks(reach.withStart, reach.withEnd));
        const ranking = new Ranking(moves, new StateClearance(seats, moves.n));
        for (const leastMm of [0.1, 0.7, 2, 5, 11]) {
          const isNone = ranking.best(all, leastMm).ways.length === 0;
          if (isNone) none++;
          else some++;
          expect(ranking.noneIsWide(new AskedMoves(seats), leastMm)).toBe(isNone);
        }
      }
      expect(Math.min(none, some)).toBeGreaterThan(0);
    },
  );

  it.each(["curl", "lopsided", "boxed"] as const)("of many bends, %s", (shape) => {
    const { soon, full, reach } = both(benchJob(shape, 14));
    expect(soon!.order).toEqual(full());
    expect(soon!.statesChecked).toBeLessThan(reach.statesChecked / 5);
  });
});

it("asks of each move once, and counts it", () => {
  const { part, brake } = benchJob("hat", 5);
  const seats = seatTables(part, brake, new Machine(brake, part.thicknessMm));
  const reach = reachFrom(part, seats);
  const asked = new AskedMoves(seats);
  expect(asked.count).toBe(0);
  let count = 0;
  for (let round = 0; round < 2; round++) {
    for (let set = 0; set < 31; set++) {
      if (!reach.reached[set]) continue;
      for (let bend = 0; bend < 5; bend++) {
        if ((set >>> bend) & 1) continue;
        if (round === 0) count += 2;
        expect(asked.has(set, bend, 0)).toBe(((reach.withStart[set]! >>> bend) & 1) === 1);
        expect(asked.has(set, bend, 1)).toBe(((reach.withEnd[set]! >>> bend) & 1) === 1);
      }
    }
  }
  expect(asked.count).toBe(count);
});

describe("the sets of most bends", () => {
  /** Moves by rule. */
  const by = (may: (set: number, bend: number, endHeld: number) => boolean): Allowed => ({ has: may });
  const always = () => true;

  it("are none where all bends can be made, or nothing is looked at", () => {
    expect(new MostReached(4, by(always), always).sets()).toBeUndefined();
    expect(
      new MostReached(
        4,
        by(() => false),
        () => false,
      ).sets(),
    ).toBeUndefined();
  });

  it("are the flat blank where no bend can be made", () => {
    expect(
      new MostReached(
        4,
        by(() => false),
        always,
      ).sets(),
    ).toEqual([0]);
  });

  it("are all of the largest size that some order reaches, with either end", () => {
    for (const end of [0, 1]) {
      // Bends 3 and 4 bar one another, and bend 0 can only be made after two.
      const may = by(
        (set, bend, held) =>
          held === end && (bend < 3 || (set & 24) === 0) && (bend > 0 || countOf(set) === 2),
      );
      const sets = Array.from({ length: 32 }, (_, set) => set).filter((set) => isReached(set, may));
      const most = Math.max(...sets.map(countOf));
      expect(most).toBe(4);
      expect(new MostReached(5, may, always).sets()).toEqual(sets.filter((set) => countOf(set) === most));
    }
  });

  it("are the lowest where there are very many", () => {
    const sets = new MostReached(
      12,
      by((set) => countOf(set) < 6),
      always,
    ).sets()!;
    expect(sets).toHaveLength(MOST_SETS);
    const all = Array.from({ length: 1 << 12 }, (_, set) => set).filter((set) => countOf(set) === 6);
    expect(sets).toEqual(all.slice(0, MOST_SETS));
  });

  it("are given up where that takes too long", () => {
    let looks = 0;
    const few = () => ++looks <= 5;
    expect(
      new MostReached(
        6,
        by((set) => countOf(set) < 3),
        few,
      ).sets(),
    ).toBeUndefined();
    expect(looks).toBe(6);
  });

  /** Plainly: whether some order of the set's bends can be made. */
  function isReached(set: number, may: Allowed): boolean {
    if (set === 0) return true;
    for (let bend = 0; bend < 5; bend++) {
      const earlier = set & ~(1 << bend);
      if (earlier === set || !(may.has(earlier, bend, 0) || may.has(earlier, bend, 1))) continue;
      if (isReached(earlier, may)) return true;
    }
    return false;
  }
});

it("ends when its watcher says so", () => {
  const { part, brake, marginMm } = benchJob("lopsided", 14);
  const machine = new Machine(brake, part.thicknessMm);
  const seats = seatTables(part, brake, machine);
  let looks = 0;
  const watch = { progress: () => undefined, stopped: () => ++looks > 3 };
  expect(() => furthestSoon(part, machine, seats, marginMm, watch)).toThrow(SearchStopped);
  expect(looks).toBe(4);
});
