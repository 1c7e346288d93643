/**
 * The best order of parts on which the search looks long, from the blank and from the goal: as wide as the widest by one plain
 * pass over all sets of bends, which measures every move and bounds nothing.
 */
import { expect, it, vi } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/job/job.ts";
import { changesBetween } from "../../src/sequence/moves.ts";
import { reachFrom } from "../../src/sequence/reach.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { WidestBack } from "../../src/sequence/widestBack.ts";
import { benchJob } from "../bench/benchJobs.ts";

/** Fewest changes of all orders that fold, and the most that the least clearance of such an order can be. */
function plainly({ part, brake }: Job): { readonly changes: number; readonly mm: number } {
  const n = part.bends.length;
  const seats = seatTables(part, brake, new Machine(brake, part.thicknessMm));
  const { withStart, withEnd } = reachFrom(part, seats);
  const best = Array.from({ length: 4 << n }, () => ({ changes: Number.POSITIVE_INFINITY, mm: -1 }));
  for (let set = 0; set < 1 << n; set++) {
    for (let bend = 0; bend < n; bend++) {
      for (const endHeld of [0, 1]) {
        if (((endHeld ? withEnd : withStart)[set]! & (1 << bend)) === 0) continue;
        const [lower, upper] = [reversed(set & ((1 << bend) - 1), bend), set >>> (bend + 1)];
        const seat = seats[2 * bend + endHeld]!;
        const mm = endHeld
          ? seat.clearance(lower, upper, Number.POSITIVE_INFINITY)
          : seat.clearance(upper, lower, Number.POSITIVE_INFINITY);
        const hold = endHeld + (part.bends[bend]!.turn === "up" ? 2 : 0);
        const to = best[4 * (set | (1 << bend)) + hold]!;
        for (let before = 0; before < 4; before++) {
          const from = set === 0 ? { changes: 0, mm: Number.POSITIVE_INFINITY } : best[4 * set + before]!;
          const changes = from.changes + (set === 0 ? 0 : changesBetween(before, hold));
          const through = Math.min(from.mm, mm);
          if (changes > to.changes || (changes === to.changes && through <= to.mm)) continue;
          [to.changes, to.mm] = [changes, through];
        }
      }
    }
  }
  return best
    .slice(-4)
    .reduce((a, b) => (b.changes < a.changes || (b.changes === a.changes && b.mm > a.mm) ? b : a));
}

function reversed(mask: number, count: number): number {
  return Number.parseInt([...mask.toString(2).padStart(count, "0")].reverse().join("") || "0", 2);
}

it.each([12, 13])("a ring of %i unlike flats", (n) => {
  const job = benchJob("lopsided", n);
  const fromGoal = vi.spyOn(WidestBack.prototype, "stepBack");
  // A margin that nothing keeps: all orders are tight, and the widest of those with fewest changes is the best.
  const { order, viable } = searchOrders(job.part, job.brake, 99);
  expect(fromGoal.mock.results.filter(({ value }) => value !== undefined)).toHaveLength(1);
  fromGoal.mockRestore();
  expect(viable).toBe(true);
  let [done, changes, mm] = [0, 0, Number.POSITIVE_INFINITY];
  order.forEach((move, i) => {
    const { clearanceMm } = judgeStep(job.part, job.brake, done, move.bend, move.clamped, 99);
    mm = Math.min(mm, clearanceMm ?? Number.POSITIVE_INFINITY);
    done |= 1 << move.bend;
    if (i > 0 && order[i - 1]!.clamped !== move.clamped) changes++;
  });
  const plain = plainly(job);
  expect(changes).toBe(plain.changes);
  expect(mm).toBeCloseTo(plain.mm, 4);
});
