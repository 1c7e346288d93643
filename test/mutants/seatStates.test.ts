/**
 * One bend after the other in every state of some rough parts, asked of the search's own table: can it be made, and how clear.
 * Source: contact/step.ts, which looks at every piece of the sheet and keeps nothing (held to the reference elsewhere).
 */
import { describe, expect, it } from "vitest";
import { isOpen, LoadingChecks, openRoom } from "../../src/contact/loading.ts";
import { Machine } from "../../src/contact/machine.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import { judgeStep } from "../../src/contact/step.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { SeatTable } from "../../src/sequence/seatTable.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { pathOver } from "../../src/sequence/sidePath.ts";
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
      const loading = new LoadingChecks(new SideChecks(seat, machine));
      const zone = [false, true].map((finished) => {
        const room = openRoom();
        loading.bendZone(finished, room);
        return isOpen(room);
      });
      expect(table.zoneIsOpen).toBe(zone.every((open) => open));
      const sets = Array.from({ length: 1 << n }, (_, set) => set).filter(
        (set) => ((set >>> bend) & 1) === 0,
      );
      while (sets.length > 0) {
        seed = (seed * 1103515245 + 12345) % 2 ** 31;
        const [set] = sets.splice((seed >>> 8) % sets.length, 1) as [number];
        const moving = pathOver(seat.movingChain.joints, formedJoints(seat.movingChain, set));
        const still = pathOver(seat.clampedChain.joints, formedJoints(seat.clampedChain, set));
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

it("makes no bend for which the leaf would swing into the clamp itself", () => {
  const [file] = roughParts(51, 1, false);
  const bends = [120, 45].map((angle) => ({ angle, turn: "up" as const, overbend: angle }));
  // The clamp stands up square behind its setback: at 120° a leaf of 16 mm would lie 8 mm behind the bend line.
  const { part, brake } = jobOf({
    ...file!,
    units: "mm",
    part: { ...file!.part, dimensions: "flat", thickness: 0.8, flats: [30, 30, 30], bends },
    brake: {
      ...file!.brake,
      setback: 0.8,
      clamp: {
        type: "profile",
        profiles: [
          [
            [0, 0],
            [0, 40],
            [-30, 40],
            [-30, 0],
          ],
        ],
        noseRadius: 0.5,
      },
      leaf: {
        profile: [
          [0, -10],
          [16, -10],
          [16, 0],
          [0, 0],
        ],
        swing: 135,
      },
      frame: [],
      openEnds: true,
    },
  });
  const tables = seatTables(part, brake, new Machine(brake, part.thicknessMm));
  expect(tables.map(({ never }) => never)).toEqual([true, true, false, false]);
  expect(tables[0]!.canMake(0b10, 0b1)).toBe(false);
});
