/**
 * The tables that the search keeps against the full check of one bend, state by state: can it be made, and how clear.
 * Source: contact/step.ts, which looks at every piece of the sheet and keeps nothing.
 */
import { expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import type { End } from "../../src/part/part.ts";
import { SeatTable } from "../../src/sequence/seatTable.ts";
import { pathOver } from "../../src/sequence/sidePath.ts";
import { benchJob } from "../bench/benchJobs.ts";

const ENDS: readonly End[] = ["start", "end"];

/** Both answers for one state: the table's and the full check's. */
function bothSay(
  { part, brake, marginMm }: Job,
  table: SeatTable | undefined,
  bend: number,
  clamped: End,
  set: number,
) {
  const seat = seatFor(part, brake, bend, clamped);
  const asked = table ?? new SeatTable(seat, new Machine(brake, part.thicknessMm));
  const moving = pathOver(seat.movingChain.joints, formedJoints(seat.movingChain, set));
  const clampedSide = pathOver(seat.clampedChain.joints, formedJoints(seat.clampedChain, set));
  const step = judgeStep(part, brake, set, bend, clamped, marginMm);
  const canMake = asked.canMake(moving, clampedSide);
  const mm = canMake ? asked.clearance(moving, clampedSide, Number.POSITIVE_INFINITY) : undefined;
  return { asked, canMake, mm, step };
}

// The free end of the run that swings up grazes a flange that stands over the bend: the run has a thickness.
it.each([
  [4, 0b10100000100000000],
  [4, 0b10010100000100000000],
  [8, 0b10100000000000000],
])("sees the swinging run's end meet a flange that stands over bend %i", (bend, set) => {
  const { canMake, step } = bothSay(benchJob("spiral", 20), undefined, bend, "end", set);
  expect(step.contact?.member).toBe("part");
  expect(canMake).toBe(false);
});

it.each(["hat", "spiral", "shut", "open"] as const)("says of %s what the full check says", (shape) => {
  const n = 14;
  const job = benchJob(shape, n);
  let [seed, made, differ] = [7, 0, 0];
  for (let bend = 0; bend < n; bend += 3) {
    for (const clamped of ENDS) {
      let table: SeatTable | undefined;
      for (let i = 0; i < 60; i++) {
        seed = (seed * 1103515245 + 12345) % 2 ** 31;
        // Few bends in some states, many in others.
        const set = (seed >>> 8) & (i % 3 === 0 ? seed >>> 3 : -1) & ((1 << n) - 1) & ~(1 << bend);
        const { asked, canMake, mm, step } = bothSay(job, table, bend, clamped, set);
        table = asked;
        expect(canMake, `${bend} ${clamped} ${set.toString(2)}`).toBe(step.verdict !== "hits");
        if (!canMake) continue;
        made++;
        const full = step.clearanceMm ?? Number.POSITIVE_INFINITY;
        if (mm !== full && !(Math.abs(mm! - full) < 1e-4)) differ++;
      }
    }
  }
  expect(differ).toBe(0);
  if (shape !== "shut") expect(made).toBeGreaterThan(20);
});
