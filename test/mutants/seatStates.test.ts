/**
 * One bend after the other in every state of some rough parts, asked of the search's own table: can it be made, and how clear.
 * Source: contact/step.ts, which looks at every piece of the sheet and keeps nothing (held to the reference elsewhere).
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { SeatTable } from "../../src/sequence/seatTable.ts";
import { jobOf } from "../cases/answers.ts";
import { roughParts } from "./roughParts.ts";

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
