/**
 * Where a side reaches, taken in figure by figure: what is given back is never on the unsafe side, and never off by more than a
 * step of the scale. Source: largest, smallest and arc sine on paper (src/model.md, section 5, for the run's height).
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { SideReach } from "../../src/sequence/sideReach.ts";
import { jobOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

const MOST_MM = 100;
const STEP_RAD = Math.PI / 60_000;
const STEP_MM = MOST_MM / 60_000;

/** A seat whose moving side slides inward, and whose run rises over the pivot. */
function seatedSheet() {
  for (const { file } of TRUTHS.bends) {
    const { part, brake } = jobOf(file);
    const checks = new SideChecks(seatFor(part, brake, 0, "start"), new Machine(brake, part.thicknessMm));
    const slideMm = checks.pieces.turning.maxInward;
    const runTopMm = part.thicknessMm - brake.leaf.pivot.y;
    if (slideMm > 0.01 && runTopMm > 0.1) return { checks, slideMm, runTopMm };
  }
  throw new Error("no such seat among the truths");
}

let seated: ReturnType<typeof seatedSheet> | undefined;

/** Looked for by the first truth that asks, not as the file loads. */
function seat() {
  seated ??= seatedSheet();
  return seated;
}

const reachOf = (side: "moving" | "clamped") => new SideReach(side, seat().checks, MOST_MM);

/** At least `atLeast`, by a step at most. */
function expectJustOver(found: number, atLeast: number, step: number): void {
  expect(found).toBeGreaterThanOrEqual(atLeast);
  expect(found).toBeLessThanOrEqual(atLeast + step);
}

function expectJustUnder(found: number, atMost: number, step: number): void {
  expect(found).toBeLessThanOrEqual(atMost);
  expect(found).toBeGreaterThanOrEqual(atMost - step);
}

describe("the moving side", () => {
  it("reaches nowhere while all of it lies in the run", () => {
    const reach = reachOf("moving");
    reach.keep(0b1, true, 0.5, 20, 2);
    expect(reach.angle(0b1)).toBe(0);
    expect(reach.near(0b1)).toBe(Number.POSITIVE_INFINITY);
    expectJustOver(reach.rise(0b1), 0, STEP_RAD);
    reach.lastOf(0b1);
    expect([reach.lastNear, reach.lastFar, reach.lastAngle]).toEqual([0, Number.POSITIVE_INFINITY, -1]);
  });

  it("has the largest direction and the least distance of its elements, and the last one's own", () => {
    const { slideMm, runTopMm } = seat();
    const reach = reachOf("moving");
    reach.keep(0b1, true, 0, 20, 0);
    reach.keep(0b11, false, 20, 30, 1.2);
    reach.keep(0b111, false, 25, 40, 0.7);
    reach.keep(0b1111, false, 15, 22, 1.5);
    for (const [path, angle, near, far, own] of [
      [0b11, 1.2, 20, 30, [20, 1.2]],
      [0b111, 1.2, 20, 40, [25, 0.7]],
      [0b1111, 1.5, 15, 22, [15, 1.5]],
    ] as const) {
      expectJustOver(reach.angle(path), angle, STEP_RAD);
      expectJustUnder(reach.near(path), near, STEP_MM);
      expectJustOver(reach.rise(path), Math.asin(runTopMm / (near - slideMm)), 2 * STEP_RAD);
      expect(reach.reachInto(path)).toBeCloseTo(reach.angle(path) + reach.rise(path), 12);
      reach.lastOf(path);
      expectJustUnder(reach.lastNear, own[0], STEP_MM);
      expectJustOver(reach.lastFar, far, STEP_MM);
      expectJustOver(reach.lastAngle, own[1], STEP_RAD);
    }
  });

  it("takes in what may come beyond", () => {
    const { slideMm, runTopMm } = seat();
    const reach = reachOf("moving");
    reach.keep(0b1, true, 0, 20, 0);
    reach.keep(0b11, false, 20, 30, 1.2);
    reach.widen(0b11, 12, 1.3);
    expectJustOver(reach.angle(0b11), 1.3, STEP_RAD);
    expectJustUnder(reach.near(0b11), 12, STEP_MM);
    expectJustOver(reach.rise(0b11), Math.asin(runTopMm / (12 - slideMm)), 2 * STEP_RAD);
    reach.widen(0b11, 50, 0.2);
    expectJustOver(reach.angle(0b11), 1.3, STEP_RAD);
    expectJustUnder(reach.near(0b11), 12, STEP_MM);
    reach.lastOf(0b11);
    expectJustUnder(reach.lastNear, 20, STEP_MM);
  });

  it("stays safe past the ends of its scales", () => {
    const reach = reachOf("moving");
    reach.keep(0b1, false, 0, 20, -0.3);
    expect(reach.angle(0b1)).toBe(0);
    reach.keep(0b11, false, -2, 2 * MOST_MM, 4 * Math.PI);
    expect(reach.angle(0b11)).toBeGreaterThanOrEqual(Math.PI);
    expect(reach.near(0b11)).toBe(0);
    expect(reach.rise(0b11)).toBeGreaterThanOrEqual(Math.PI / 2);
    reach.lastOf(0b11);
    expect(reach.lastAngle).toBeGreaterThanOrEqual(Math.PI);
    expect([reach.lastNear, reach.lastFar]).toEqual([0, Number.POSITIVE_INFINITY]);
    reach.keep(0b10, false, 2 * MOST_MM, 3 * MOST_MM, 1);
    reach.lastOf(0b10);
    expect(reach.lastNear).toBeLessThanOrEqual(MOST_MM);
    expect(reach.lastNear).toBeGreaterThan(0.99 * MOST_MM);
  });

  it("sees a run from afar as low, from near as square up", () => {
    const { slideMm, runTopMm } = seat();
    const reach = reachOf("moving");
    expect(reach.runRises(runTopMm + slideMm)).toBe(Math.PI / 2);
    expect(reach.runRises(2 * runTopMm + slideMm)).toBeCloseTo(Math.PI / 6, 12);
    expect(reach.runRises(Number.POSITIVE_INFINITY)).toBe(0);
  });
});

describe("the clamped side", () => {
  it("has the smallest direction and the least distance, from half a turn down", () => {
    const reach = reachOf("clamped");
    reach.keep(0b1, true, 0, 20, 0);
    expectJustUnder(reach.angle(0b1), Math.PI, STEP_RAD);
    reach.keep(0b11, false, 20, 30, 2);
    reach.keep(0b111, false, 25, 40, 2.5);
    reach.keep(0b110, false, 25, 40, 1.5);
    for (const [path, angle, own] of [
      [0b111, 2, 2.5],
      [0b110, 1.5, 1.5],
    ] as const) {
      expectJustUnder(reach.angle(path), angle, STEP_RAD);
      const into = Math.PI - reach.angle(path) + reach.rise(path);
      expect(reach.reachInto(path)).toBeCloseTo(into, 12);
      reach.lastOf(path);
      expectJustUnder(reach.lastAngle, own, STEP_RAD);
    }
    reach.keep(0b10, false, 20, 30, 2);
    reach.keep(0b101, false, 25, 40, -1);
    expect(reach.angle(0b101)).toBe(0);
  });

  it("does not slide", () => {
    const { runTopMm } = seat();
    expect(reachOf("clamped").runRises(2 * runTopMm)).toBeCloseTo(Math.PI / 6, 12);
  });

  it("takes in what may come beyond", () => {
    const reach = reachOf("clamped");
    reach.keep(0b1, true, 0, 20, 0);
    reach.widen(0b1, 12, 1.3);
    expectJustUnder(reach.angle(0b1), 1.3, STEP_RAD);
    expectJustUnder(reach.near(0b1), 12, STEP_MM);
    reach.widen(0b1, 50, 2.2);
    expectJustUnder(reach.angle(0b1), 1.3, STEP_RAD);
  });
});

it("keeps beginnings of many joints apart", () => {
  const reach = reachOf("moving");
  const first = 1 << 12;
  for (let path = first; path < 2 * first; path++) reach.keep(path, false, 1 + (path - first) / 50, 90, 1);
  for (let path = first; path < 2 * first; path++) {
    reach.lastOf(path);
    expectJustUnder(reach.lastNear, 1 + (path - first) / 50, STEP_MM);
  }
});
