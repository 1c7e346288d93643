/**
 * The widest way looked for from the goals back, on parts with many orders: changes and least clearance as plain enumeration
 * found them. Source: test/reference/enumerate.ts, recorded in rankings.json.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { AllowedMasks, Moves } from "../../src/sequence/moves.ts";
import { reachFrom } from "../../src/sequence/reach.ts";
import { seatTables } from "../../src/sequence/seatTables.ts";
import { StateClearance } from "../../src/sequence/stateClearance.ts";
import { WidestBack } from "../../src/sequence/widestBack.ts";
import { jobOf } from "../cases/answers.ts";
import type { SearchTruth } from "./truths.ts";

const CLEARANCE_MM = 0.005;

const { searches } = JSON.parse(readFileSync(new URL("rankings.json", import.meta.url), "utf8")) as {
  readonly searches: readonly SearchTruth[];
};

/** All moves of a job that lead to the whole part with fewest changes. */
function frugalOf({ part, brake }: Job) {
  const seats = seatTables(part, brake, new Machine(brake, part.thicknessMm));
  const moves = new Moves(part, [(1 << part.bends.length) - 1]);
  const { withStart, withEnd } = reachFrom(part, seats);
  const frugal = moves.frugal(moves.leadingOn(new AllowedMasks(withStart, withEnd)))!;
  expect(frugal.fewest).toBe(Math.min(...frugal.changes.slice(-4)));
  return { moves, frugal, clearance: new StateClearance(seats, part.bends.length) };
}

/** Steps taken until the blank is reached, nothing counted wider than `mostMm`; none where that never happens. */
function lookedBack(job: Job, mostMm: number) {
  const { moves, frugal, clearance } = frugalOf(job);
  const back = new WidestBack(moves, clearance, frugal, mostMm);
  let bound = mostMm;
  while (back.mostMm >= 0) {
    expect(back.mostMm).toBeLessThanOrEqual(bound);
    bound = back.mostMm;
    const through = back.stepBack(mostMm);
    if (through !== undefined) return { through, way: back.way(), fewest: frugal.fewest };
  }
  return { through: undefined, way: [], fewest: frugal.fewest };
}

// The best of these is the widest of all with fewest changes: clear without any change, or tight since nothing is clear.
const folding = searches.filter(({ rank }) => rank?.changes === 0 || rank?.verdict === "tight");

it("has enough parts to look at, with and without clearances", () => {
  expect(folding.length).toBeGreaterThan(40);
  expect(folding.filter(({ rank }) => rank!.clearance !== null).length).toBeGreaterThan(30);
});

describe.each(folding)("a recorded part", ({ file, rank }) => {
  const job = jobOf(file);

  it("has the widest way that plain enumeration finds, and goes along it", () => {
    const { through, way, fewest } = lookedBack(job, Number.POSITIVE_INFINITY);
    expect(fewest).toBe(rank!.changes);
    let [done, least] = [0, Number.POSITIVE_INFINITY];
    for (const { at, bend } of way) {
      const { part, brake, marginMm } = job;
      const clamped = at & 1 ? "end" : "start";
      expect(at & 2).toBe(part.bends[bend]!.turn === "up" ? 2 : 0);
      least = Math.min(
        least,
        judgeStep(part, brake, done, bend, clamped, marginMm).clearanceMm ?? Number.POSITIVE_INFINITY,
      );
      done |= 1 << bend;
      expect(at >> 2).toBe(done);
    }
    expect(way).toHaveLength(job.part.bends.length);
    if (rank!.clearance === null) expect([through, least]).toEqual([Infinity, Infinity]);
    else {
      expect(Math.abs(through! - rank!.clearance)).toBeLessThan(CLEARANCE_MM);
      expect(Math.abs(least - rank!.clearance)).toBeLessThan(CLEARANCE_MM);
    }
  });

  it("counts nothing wider than it is told", () => {
    const half = rank!.clearance === null ? 1 : rank!.clearance / 2;
    expect(lookedBack(job, half).through).toBe(Math.fround(half));
  });
});
