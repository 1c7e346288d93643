/**
 * A search as its watcher sees it: how far it is, how to end it, and how many states it looked at. Source: sets of bends counted
 * on paper; sets that can be reached by judging bends one by one.
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { countOf } from "../../src/sequence/bendSets.ts";
import { reachFrom, SearchStopped, type Watch } from "../../src/sequence/reach.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { jobOf } from "../cases/answers.ts";
import { Judge } from "../jobFile/everyOrder.ts";
import { TRUTHS } from "./truths.ts";

function reachOf({ part, brake }: Job, watch?: Watch) {
  return reachFrom(part, seatTables(part, brake, new Machine(brake, part.thicknessMm)), watch);
}

/** Three slight bends far apart, each possible at any time. */
function anyOrder(): Job {
  const { file } = TRUTHS.searches[0]!;
  const bend = { angle: 5, turn: "up", overbend: 5 } as const;
  const part = {
    ...file.part,
    dimensions: "flat",
    flats: [60, 60, 60, 60],
    bends: [bend, bend, bend],
  } as const;
  return jobOf({ ...file, part, brake: { ...file.brake, openEnds: true } });
}

describe("a watched search", () => {
  it("tells how far it is: sets done, and of those of as many bends one bend after the other", () => {
    const told: number[] = [];
    reachOf(anyOrder(), { progress: (fraction) => told.push(fraction), stopped: () => false });
    const thirds = [0, 1, 2, 3, 6, 9, 12, 15, 18];
    expect(told).toHaveLength(thirds.length);
    told.forEach((fraction, i) => {
      expect(fraction).toBeCloseTo(thirds[i]! / 24, 12);
    });
  });

  it("ends when it is told to, with a sentence", () => {
    let looks = 0;
    const watch = { progress: () => undefined, stopped: () => ++looks > 4 };
    expect(() => reachOf(anyOrder(), watch)).toThrow(SearchStopped);
    expect(looks).toBe(5);
    const stop = new SearchStopped();
    expect([stop.name, stop.message]).toEqual(["SearchStopped", "the search was stopped"]);
  });

  it("counts three bends that can be made in any order with either end", () => {
    const { viableOrders, statesChecked, withStart, withEnd } = reachOf(anyOrder());
    expect(viableOrders).toBe(48n);
    expect(statesChecked).toBe(2 * (3 + 3 * 2 + 3));
    expect([...withStart]).toEqual([7, 6, 5, 4, 3, 2, 1, 0]);
    expect([...withEnd]).toEqual([7, 6, 5, 4, 3, 2, 1, 0]);
  });
});

it.each(TRUTHS.searches.slice(0, 25))(
  "looks at every bend and end of each set that can be reached, part %#",
  ({ file }) => {
    const job = jobOf(file);
    const judge = new Judge(job);
    const n = job.part.bends.length;
    const reached = new Set([0]);
    let states = 0;
    for (let set = 0; set < 1 << n; set++) {
      if (!reached.has(set)) continue;
      states += 2 * (n - countOf(set));
      for (let bend = 0; bend < n; bend++) {
        if ((set >>> bend) & 1) continue;
        const made = (["start", "end"] as const).some(
          (clamped) => judge.of(set, { bend, clamped }).verdict !== "hits",
        );
        if (made) reached.add(set | (1 << bend));
      }
    }
    expect(reachOf(job).statesChecked).toBe(states);
  },
);
