/**
 * Which bends share a table: those of a part that is the same from both ends, turned round. Source: symmetry, told by hand.
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { type Seat, seatFor } from "../../src/motion/seat.ts";
import { isSameSeat, seatTables } from "../../src/sequence/seatTables.ts";
import { jobOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

const { file } = TRUTHS.bends[0]!;

function jobWith(flats: readonly number[], turns: readonly ("up" | "down")[], angles?: readonly number[]) {
  const bends = turns.map((turn, i) => ({
    turn,
    angle: angles?.[i] ?? 90,
    overbend: (angles?.[i] ?? 90) + 2,
  }));
  return jobOf({ ...file, part: { ...file.part, dimensions: "flat", flats, bends } });
}

/** By bend with the start clamped: whether its table is that of its counterpart with the end clamped. */
function shared(job: ReturnType<typeof jobWith>): boolean[] {
  const n = job.part.bends.length;
  const tables = seatTables(job.part, job.brake, new Machine(job.brake, job.part.thicknessMm));
  expect(tables).toHaveLength(2 * n);
  for (let bend = 0; bend < n; bend++) {
    expect(tables[2 * bend]!.seat).toMatchObject({ bend, clamped: "start" });
    expect(tables[2 * bend + 1]!.seat.movingChain.joints).toBe(bend);
  }
  return Array.from({ length: n }, (_, bend) => tables[2 * bend] === tables[2 * (n - 1 - bend) + 1]);
}

describe("a table is shared", () => {
  it.each([
    ["of a channel", [20, 30, 20], ["up", "up"], [true, true]],
    ["of a hat", [20, 15, 30, 15, 20], ["down", "up", "up", "down"], [true, true, true, true]],
    ["of a Z", [20, 30, 20], ["up", "down"], [true, true]],
    ["of one bend in the middle", [20, 20], ["up"], [true]],
    ["not of legs that are not alike", [20, 30, 21], ["up", "up"], [false, false]],
    ["not of a bend off the middle", [20, 20.5], ["up"], [false]],
    [
      "not of turns that are not alike",
      [20, 15, 30, 15, 20],
      ["down", "up", "up", "up"],
      [false, false, false, false],
    ],
  ] as const)("%s", (_, flats, turns, expected) => {
    expect(shared(jobWith(flats, turns))).toEqual(expected);
  });

  it("not of angles that are not alike", () => {
    expect(shared(jobWith([20, 30, 20], ["up", "up"], [90, 80]))).toEqual([false, false]);
  });
});

describe("two seats", () => {
  const seat = () => {
    const { part, brake } = jobWith([20, 15, 30, 15, 20], ["down", "up", "up", "down"]);
    return seatFor(part, brake, 1, "start");
  };

  it("are the same where only bend and end are told otherwise", () => {
    const one = seat();
    expect(isSameSeat(one, { ...one, bend: 3, clamped: "end" })).toBe(true);
  });

  it.each([
    "thicknessMm",
    "insideRadiusMm",
    "angleRad",
    "fromRad",
    "overbendRad",
    "sweepRad",
    "clampedTangentX",
    "movingTangentX",
    "noseSetbackMm",
  ] as const)("differ by %s", (key) => {
    const one = seat();
    expect(isSameSeat(one, { ...one, [key]: one[key] + 0.01 })).toBe(false);
  });

  it.each(["flatMm", "allowanceMm", "insideRadiusMm", "angleRad", "turn"] as const)(
    "differ by %s of a side",
    (key) => {
      const one = seat();
      for (const chain of ["movingChain", "clampedChain"] as const) {
        const figures = one[chain][key].slice();
        figures[figures.length - 1] = -figures.at(-1)!;
        const other: Seat = { ...one, [chain]: { ...one[chain], [key]: figures } };
        expect(isSameSeat(one, other)).toBe(false);
        expect(isSameSeat(other, one)).toBe(false);
      }
    },
  );

  it("differ by how many joints a side has", () => {
    const one = seat();
    const shorter = Object.fromEntries(
      Object.entries(one.movingChain).map(([key, list]) => [
        key,
        typeof list === "number" ? list : list.slice(0, -1),
      ]),
    ) as unknown as Seat["movingChain"];
    expect(isSameSeat(one, { ...one, movingChain: shorter })).toBe(false);
    expect(isSameSeat({ ...one, movingChain: shorter }, one)).toBe(false);
  });
});
