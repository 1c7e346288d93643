/**
 * The quick look at a bend beside a table that only counts what it is asked: what the look says by itself, and what it leaves to
 * the table. Source: two sectors stay apart where both reaches together are less than the sweep leaves of half a turn.
 */
import { describe, expect, it } from "vitest";
import { QuickLook } from "../../src/sequence/quickLook.ts";
import type { SeatTable } from "../../src/sequence/seatTable.ts";
import { BARRED_SIDE } from "../../src/sequence/sideTable.ts";

interface Told {
  readonly reachRad?: number;
  readonly open?: boolean;
  readonly barred?: boolean;
}

/** A side of two joints, decided by the nearest; says the same of every set, and counts what it is asked. */
function side({ reachRad = 0, open = true, barred = false }: Told) {
  const asked: number[] = [];
  /** Says it of what decides alone. */
  const ofDecided = <T>(by: number, told: T): T => {
    expect([0b10, 0b11]).toContain(by);
    return told;
  };
  return {
    asked,
    joints: 2,
    keepDecided: () => undefined,
    decidedBy(path: number) {
      asked.push(path);
      return barred ? BARRED_SIDE : path >> 1;
    },
    isOpen: (by: number) => ofDecided(by, open),
    reach: { reachInto: (by: number) => ofDecided(by, reachRad) },
  };
}

function seatOf(
  moving: Told,
  clamped: Told,
  table: Partial<Record<"never" | "zoneIsOpen" | "answer", boolean>> = {},
) {
  const asked: [number, number][] = [];
  const seat = {
    asked,
    never: table.never ?? false,
    zoneIsOpen: table.zoneIsOpen ?? true,
    seat: { sweepRad: Math.PI / 2 },
    moving: side(moving),
    clamped: side(clamped),
    canMake(movingPath: number, clampedPath: number) {
      asked.push([movingPath, clampedPath]);
      return table.answer ?? true;
    },
  };
  return { seat, look: new QuickLook(seat as unknown as SeatTable) };
}

describe("a quick look", () => {
  it.each([
    [0, 0],
    [0.7, 0.7],
    [1.56, 0],
    [0, 1.56],
    [-2, 1.5],
    [1.5, -2],
  ])("lets sides pass that reach %f and %f, a quarter turn being free", (m, c) => {
    const { seat, look } = seatOf({ reachRad: m }, { reachRad: c }, { answer: false });
    expect(look.canMake(0b110, 0b110)).toBe(true);
    expect(seat.asked).toEqual([]);
  });

  it.each([
    [0.8, 0.8],
    [Math.PI / 2, 0],
    [0, Math.PI / 2],
    [100, 0],
    [0, 100],
    [7, 7],
    [-2, 1.6],
  ])("leaves to the table those that reach %f and %f", (m, c) => {
    for (const answer of [true, false]) {
      const { seat, look } = seatOf({ reachRad: m }, { reachRad: c }, { answer });
      expect(look.canMake(0b101, 0b100)).toBe(answer);
      expect(seat.asked).toEqual([[0b101, 0b100]]);
    }
  });

  it.each([
    [{ open: false }, {}, {}],
    [{}, { open: false }, {}],
    [{ open: false }, { open: false }, {}],
    [{}, {}, { zoneIsOpen: false }],
  ])("leaves to the table what blocks heights, case %#", (moving, clamped, table) => {
    const { seat, look } = seatOf(moving, clamped, { ...table, answer: false });
    expect(look.canMake(0b100, 0b100)).toBe(false);
    expect(seat.asked).toHaveLength(1);
  });

  it.each([
    [{ barred: true }, {}],
    [{}, { barred: true }],
  ])("bars by one side alone, case %#", (moving, clamped) => {
    const { seat, look } = seatOf(moving, clamped);
    for (let time = 0; time < 2; time++) expect(look.canMake(0b110, 0b110)).toBe(false);
    expect(seat.asked).toEqual([]);
  });

  it("looks at each set of a side once", () => {
    const { seat, look } = seatOf({}, {});
    for (let time = 0; time < 3; time++) {
      look.canMake(0b101, 0b110);
      look.canMake(0b101, 0b111);
    }
    expect(seat.moving.asked).toEqual([0b101]);
    expect(seat.clamped.asked).toEqual([0b110, 0b111]);
  });

  it("asks nothing of a bend that can never be made", () => {
    const { seat, look } = seatOf({}, {}, { never: true });
    expect(look.canMake(0b100, 0b100)).toBe(false);
    expect([seat.asked, seat.moving.asked, seat.clamped.asked]).toEqual([[], [], []]);
  });
});
