/**
 * The best order of parts on which the search looks long, from the blank and from the goal: as wide as the widest by one plain
 * pass over all sets of bends, which measures every move and bounds nothing.
 */
import { expect, it, vi } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { reachFrom } from "../../src/sequence/reach.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { WidestBack } from "../../src/sequence/widestBack.ts";
import { benchJob } from "../bench/benchJobs.ts";
import { widestPlainly } from "../sequence/widestPlainly.ts";

function plainly({ part, brake }: Job) {
  const n = part.bends.length;
  const seats = seatTables(part, brake, new Machine(brake, part.thicknessMm));
  return widestPlainly(part, reachFrom(part, seats), (set, bend, endHeld) => {
    // Joint by joint outward: toward the start the digits as they stand, toward the end from the last on.
    const bits = set.toString(2).padStart(n, "0");
    const [upperDown, lowerDown] = [bits.slice(0, n - 1 - bend), bits.slice(n - bend)];
    const lower = Number.parseInt(`1${lowerDown}`, 2);
    const upper = Number.parseInt(`1${[...upperDown].reverse().join("")}`, 2);
    const [moving, clamped] = endHeld ? [lower, upper] : [upper, lower];
    return seats[2 * bend + endHeld]!.clearance(moving, clamped, Number.POSITIVE_INFINITY);
  });
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
