/**
 * One bend after the other in every state of some rough parts, asked of the search's own table: can it be made, and how clear.
 * Source: contact/step.ts, which looks at every piece of the sheet and keeps nothing (held to the reference elsewhere).
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { SeatTable } from "../../src/sequence/seatTable.ts";
import { jobOf } from "../cases/answers.ts";
import { randomJobs } from "../reference/randomJob.ts";

/** Between closed ends with little lift much is blocked; gentle bends on a thin bar leave much to look at. */
function roughParts(seed: number, count: number, gentle: boolean) {
  const some = randomJobs(5).filter(({ part }) => part.bends.length >= 4);
  return fc.sample(fc.noBias(some), { seed, numRuns: count }).map((file, i) => {
    const share = gentle ? 0.5 : 1;
    const bends = file.part.bends.map((bend) => ({
      ...bend,
      angle: bend.angle * share,
      overbend: bend.overbend * share,
    }));
    const { noseRadius } = file.brake.clamp;
    const clamp = { type: "bar" as const, thickness: 4, depth: 14, noseRadius, topRadius: noseRadius };
    return {
      ...file,
      part: { ...file.part, dimensions: "flat" as const, bends },
      brake: { ...file.brake, ...(gentle && { clamp }), lift: [3, 8, 20, 60][i % 4]!, openEnds: i % 3 === 0 },
    };
  });
}

const parts = [...roughParts(51, 14, false), ...roughParts(52, 14, true)];

describe.each(parts)("a rough part, %#", (file) => {
  it.each(["start", "end"] as const)("with the %s clamped", (clamped) => {
    const { part, brake, marginMm } = jobOf(file);
    const machine = new Machine(brake, part.thicknessMm);
    const n = part.bends.length;
    let seed = n;
    for (let bend = 0; bend < n; bend++) {
      const seat = seatFor(part, brake, bend, clamped);
      const table = new SeatTable(seat, machine);
      const sets = Array.from({ length: 1 << n }, (_, set) => set).filter(
        (set) => ((set >>> bend) & 1) === 0,
      );
      while (sets.length > 0) {
        seed = (seed * 1103515245 + 12345) % 2 ** 31;
        const [set] = sets.splice((seed >>> 8) % sets.length, 1) as [number];
        const moving = formedJoints(seat.movingChain, set);
        const still = formedJoints(seat.clampedChain, set);
        const step = judgeStep(part, brake, set, bend, clamped, marginMm, machine);
        const told = `bend ${bend} after ${set.toString(2)}`;
        expect(table.canMake(moving, still), told).toBe(step.verdict !== "hits");
        if (step.verdict === "hits") continue;
        const mm = table.clearance(moving, still, Number.POSITIVE_INFINITY);
        const exact = step.clearanceMm ?? Number.POSITIVE_INFINITY;
        if (exact === Number.POSITIVE_INFINITY) expect(mm, told).toBe(exact);
        else expect(Math.abs(mm - exact), told).toBeLessThan(1e-4);
        const enough = table.clearance(moving, still, 1);
        if (mm < 1) expect(Math.abs(enough - mm), told).toBeLessThan(1e-4);
        else expect(enough, told).toBeGreaterThanOrEqual(1);
        expect(table.brakeClearance(moving, still), told).toBeGreaterThanOrEqual(mm);
      }
    }
  });
});
