/**
 * What the checks of a side look into: pieces that can meet and no other, no piece twice, no corner where a piece only joins the
 * next. Source: directions from the pivot and counts of sides, worked out beside each.
 */
import { describe, expect, it } from "vitest";
import { noContact } from "../../src/contact/sideChecks.ts";
import { chainWith, seatOnPaper } from "./seatOnPaper.ts";
import { block, checksOf, DOWN, UP, watched } from "./sides.ts";

describe("pieces are looked into only where they can meet:", () => {
  const low = block(0, -5, 40, 0);
  const high = block(0, -5, 40, 0.5);

  it.each([
    // Seen from the pivot the flange starts at atan2(32, −13): 112°.
    ["a flange past the sweep of a low leaf", low, 90, UP, false],
    ["a flange past the sweep of a leaf that stands up", high, 90, UP, true],
    ["a flange that the leaf comes to", low, 120, UP, true],
    ["a flange that hangs down", low, 90, DOWN, true],
  ] as const)("%s", (_, leaf, angleDeg, joint, looked) => {
    const clamped = chainWith([10, 30], [joint], 30, 40);
    const checks = checksOf(seatOnPaper({ clamped, angleDeg }), { leaf });
    const pairs = watched(checks);
    checks.withBrake("clamped", 1, 1, noContact());
    expect(pairs().length > 0).toBe(looked);
  });

  it.each([
    ["a body past the sweep", [-20, 10, -15, 15], UP, false],
    ["a body in the sweep", [2, 20, 6, 25], UP, true],
    ["a body under the leaf", [23.5, -12, 26, -8], UP, false],
    ["a body under the leaf, for a flange that hangs down", [23.5, -12, 26, -8], DOWN, true],
  ] as const)("%s", (_, [x0, y0, x1, y1], joint, looked) => {
    // The sweep of 60° ends before 110°, what the flange's box adds to it.
    const seat = seatOnPaper({ sweepDeg: 60, moving: chainWith([20, 10], [joint]) });
    const checks = checksOf(seat, { frame: block(x0, y0, x1, y1) });
    const pairs = watched(checks);
    checks.withBrake("moving", 1, 1, noContact());
    expect(pairs().length > 0).toBe(looked);
  });

  it("two flats joined through the bend never", () => {
    const checks = checksOf(seatOnPaper(), {});
    const pairs = watched(checks);
    const record = noContact();
    for (const m of [0, 1]) for (const c of [0, 1]) checks.withSelf(m, 0, c, 0, record);
    expect([pairs(), record]).toEqual([[], noContact()]);
    checks.withSelf(1, 0, 1, 1, record);
    expect(pairs().length).toBeGreaterThan(0);
    // However many of them there are on the one side.
    const long = chainWith([1, 1, 1], [UP, UP]);
    for (const [moving, clamped, m, c] of [
      [long, chainWith([9], []), 2, 0],
      [chainWith([9], []), long, 0, 2],
    ] as const) {
      const uneven = checksOf(seatOnPaper({ moving, clamped }), {});
      const seen = watched(uneven);
      uneven.withSelf(m, 0, c, 0, record);
      expect(seen()).toEqual([]);
    }
  });

  it("the leaf for a piece where it lies, for what rides on it and for its start, not for the start that the zone cuts", () => {
    const checks = checksOf(seatOnPaper({ angleDeg: 135 }), {});
    expect(checks.pieces.startCut).toBeDefined();
    const { leaf } = checks.machine;
    const { features } = leaf;
    const asked: object[] = [];
    Object.defineProperty(leaf, "features", {
      get: () => {
        asked.push(features);
        return features;
      },
    });
    checks.withBrake("moving", 0, 0, noContact());
    expect(asked).toHaveLength(3);
  });
});

it("draws no corner where a piece only joins the next", () => {
  const three = (flat: number) => chainWith([20, 10, 5], [UP, UP], flat, flat + 10);
  const of = (fromDeg: number) => seatOnPaper({ fromDeg, moving: three(10), clamped: three(30) });
  const checks = checksOf(of(0), {});
  const counts = () => [checks.a, checks.b].map((F) => [F.segments, F.rounds, F.hollows]);
  checks.withBrake("clamped", 1, 0, noContact());
  expect(counts()[0]).toEqual([2, 0, 0]);
  checks.withBrake("clamped", 1, 1, noContact());
  expect(counts()[0]).toEqual([2, 1, 1]);
  checks.withBrake("moving", 1, 0, noContact());
  checks.withSelf(1, 0, 1, 1, noContact());
  expect(counts()).toEqual([
    [2, 0, 0],
    [2, 1, 1],
  ]);
  // Begun: the leaf's four corners and sides against two faces and a bend, once as it rises, once as it carries them.
  const begun = checksOf(of(30), { leaf: block(20, -5, 24, -1) });
  const pairs = watched(begun);
  begun.withBrake("moving", 1, 1, noContact());
  const seen = pairs();
  const most = { roundOnEdge: 4 * 2 + 4, edgeOnRound: 4 + 4 * 2 };
  for (const [kind, count] of Object.entries(most))
    expect(seen.filter((one) => one === kind).length, kind).toBeLessThanOrEqual(count);
});

it("tells what is in the run: up to the first joint made, and no farther than the side goes", () => {
  const three = chainWith([20, 10, 5], [UP, UP]);
  const checks = checksOf(seatOnPaper({ moving: three, clamped: chainWith([9], [], 30, 40) }), {});
  const runs = (formed: number) => [0, 1, 2, 3].map((k) => checks.inRun("moving", k, formed));
  expect(runs(0)).toEqual([true, true, true, false]);
  expect(runs(1)).toEqual([true, false, false, false]);
  expect(runs(2)).toEqual([true, true, false, false]);
  expect([0, 1].map((k) => checks.inRun("clamped", k, 0))).toEqual([true, false]);
});
