/**
 * What is left to get a part in and out by, from rooms put together by hand: open, passable, and the way that three together
 * leave. Source: heights added up on paper (src/model.md, section 7).
 */
import { describe, expect, it } from "vitest";
import { isOpen, LoadingChecks, openRoom, type Room } from "../../src/contact/loading.ts";
import { Machine } from "../../src/contact/machine.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { jobOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

type Blocked = readonly (readonly [number, number])[];

function room(sheet: Blocked = [], clamp: Blocked = [], overlaps = false): Room {
  const made = { ...openRoom(), overlaps };
  for (const [from, to] of sheet) made.sheet.add(from, to);
  for (const [from, to] of clamp) made.clamp.add(from, to);
  return made;
}

/** Checks on a brake that lifts 10 mm. */
function checksOf(openEnds: boolean): LoadingChecks {
  const { file } = TRUTHS.bends[0]!;
  const job = { ...file, brake: { ...file.brake, lift: 10, openEnds } };
  const { part, brake } = jobOf(job);
  return new LoadingChecks(
    new SideChecks(seatFor(part, brake, 0, "start"), new Machine(brake, part.thicknessMm)),
  );
}

describe("a room", () => {
  it.each([
    [room(), true],
    [room([[1, 2]]), false],
    [room([], [[1, 2]]), false],
    [room([[1, 2]], [[1, 2]]), false],
    [room([], [], true), false],
    [room([[1, 2]], [], true), false],
  ])("%# is open where nothing is blocked", (some, open) => {
    expect(isOpen(some)).toBe(open);
  });

  it.each([
    [room(), true],
    [room([[-1, 4]], [[-1, 6]]), true],
    [room([[-1, 4]], [[-1, 7]]), false],
    [room([[-1, 11]]), false],
    [room([], [[-1, 11]]), false],
    [room([[5, 11]], [[3, 11]]), true],
    [room([], [], true), false],
    [room([[-1, 9]], [[-1, 0.5]]), true],
    [room([[-1, 9]], [[-1, 1.5]]), false],
  ])("%# lets the sheet pass where both heights together are within the lift", (some, lets) => {
    expect(checksOf(true).lets(some)).toBe(lets);
  });

  it.each([
    [room(), room(), room(), "front"],
    // Each list alone is free where another is not: 2 is blocked by the second, 4 by the third, 6 is free of all.
    [room([[-1, 2]]), room([[1, 4]]), room([[3, 6]]), "front"],
    [room([[-1, 2]]), room([[1, 4]]), room([[3, 11]]), "end"],
    [room([[-1, 4]]), room([], [[-1, 5]]), room(), "front"],
    [room([[-1, 4]]), room([], [[-1, 5]]), room([], [[4, 7]]), "end"],
    [room([[-1, 4]]), room([], [[-1, 5]]), room([[3, 5]]), "front"],
    [room([[-1, Infinity]]), room(), room(), "end"],
    [room([], [], true), room(), room(), "blocked"],
    [room(), room([], [], true), room(), "blocked"],
    [room(), room(), room([], [], true), "blocked"],
  ] as const)("%# with two others leaves a way", (moving, clamped, zone, way) => {
    expect(checksOf(true).handling(moving, clamped, zone)).toBe(way);
    expect(checksOf(false).handling(moving, clamped, zone)).toBe(way === "end" ? "blocked" : way);
  });
});
