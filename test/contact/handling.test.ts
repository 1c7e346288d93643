/**
 * Getting a part in and out, with lifts that can be worked out on paper and found by bisecting.
 * Source: plane geometry, beside each test. Free ends are not drawn in by the inset, so these lifts are exact.
 */

import { describe, expect, it } from "vitest";
import { BlockedHeights } from "../../src/contact/blockedHeights.ts";
import { judgeStep, type Step } from "../../src/contact/step.ts";
import { jobOf } from "../cases/answers.ts";
import { rectangle } from "../rectangle.ts";

const T = 0.8;

interface Setup {
  readonly flats: readonly number[];
  readonly turns: readonly ("up" | "down")[];
  readonly lift: number;
  readonly openEnds?: boolean;
  readonly bedLong?: number;
  readonly frame?: readonly (readonly (readonly number[])[])[];
}

/** The last bend of a part with all others made, the start clamped under a bar 6 thick and 20 deep. */
function lastBend({ flats, turns, lift, openEnds = false, bedLong = 100, frame = [] }: Setup): Step {
  const { part, brake, marginMm } = jobOf({
    noseroom: 1,
    units: "mm",
    part: {
      name: "angle",
      material: "mild steel",
      thickness: T,
      insideRadius: 1,
      kFactor: 0.44,
      dimensions: "outside",
      flats,
      bends: turns.map((turn) => ({ angle: 90, turn, overbend: 90 })),
    },
    brake: {
      name: "lifts",
      clamp: { type: "bar", thickness: 6, depth: 20, noseRadius: 0.8, topRadius: 0.8 },
      bed: { profile: rectangle(-bedLong, -60, 0, 0) },
      leaf: { profile: rectangle(0, -8, 9, 0), swing: 135 },
      frame,
      lift,
      openEnds,
    },
  });
  const last = turns.length - 1;
  return judgeStep(part, brake, { bendsDone: (1 << last) - 1, bend: last, clamped: "start" }, marginMm);
}

function leastLift(setup: Omit<Setup, "lift">, ask: (step: Step) => string): number {
  let [blocked, free] = [0, 200];
  expect(ask(lastBend({ ...setup, lift: blocked }))).toBe("blocked");
  expect(ask(lastBend({ ...setup, lift: free }))).toBe("front");
  while (free - blocked > 1e-7) {
    const middle = (free + blocked) / 2;
    if (ask(lastBend({ ...setup, lift: middle })) === "front") free = middle;
    else blocked = middle;
  }
  return free;
}

describe("a flange that stands up behind the bar", () => {
  // Its tip is 16 over the bed; to slide out the clamp's underside, T over the bed when closed, must go that high.
  const setup = { flats: [16, 60, 20], turns: ["up", "up"] as const };

  it("asks for a lift of its height less the sheet", () => {
    expect(leastLift(setup, (step) => step.load)).toBeCloseTo(16 - T, 5);
    expect(leastLift(setup, (step) => step.unload)).toBeCloseTo(16 - T, 5);
  });

  it("goes in at the end where the ends are open", () => {
    const step = lastBend({ ...setup, lift: 1, openEnds: true });
    expect([step.load, step.unload, step.verdict]).toEqual(["end", "end", "clear"]);
    expect(lastBend({ ...setup, lift: 1 }).verdict).toBe("hits");
  });
});

describe("a flange that hangs behind a short bed", () => {
  // Its tip hangs 12 − T under the bed's top: the part itself must rise by that, and the clamp with it.
  it("asks for a lift of what hangs under the bed", () => {
    const setup = { flats: [12, 60, 20], turns: ["down", "up"] as const, bedLong: 40 };
    expect(leastLift(setup, (step) => step.load)).toBeCloseTo(12 - T, 5);
  });

  it("is blocked for good by a frame that the sheet would lift into", () => {
    const frame = [
      [
        [-56, 5],
        [-50, 5],
        [-50, 9],
        [-56, 9],
      ],
    ];
    const setup = { flats: [12, 60, 20], turns: ["down", "up"] as const, bedLong: 40, frame };
    const step = lastBend({ ...setup, lift: 150 });
    expect([step.load, step.contact]).toEqual(["blocked", undefined]);
  });
});

describe("a flat blank", () => {
  it("slides in without any lift", () => {
    const step = lastBend({ flats: [40, 20], turns: ["up"], lift: 0 });
    expect([step.load, step.unload]).toEqual(["front", "front"]);
  });
});

describe("BlockedHeights", () => {
  const heightsOf = (...spans: [number, number][]) => {
    const heights = new BlockedHeights();
    for (const [from, to] of spans) heights.add(from, to);
    return heights;
  };

  it("merges spans that touch or overlap, in whatever order they come", () => {
    expect(heightsOf([5, 6], [1, 2], [2, 5.5]).bounds).toEqual([1, 6]);
    expect(heightsOf([8, 9], [1, 2], [4, 5]).bounds).toEqual([1, 2, 4, 5, 8, 9]);
    expect(heightsOf([1, 9], [3, 4]).bounds).toEqual([1, 9]);
  });

  it("leaves out what is no higher than a hair or lies under 0", () => {
    expect(heightsOf([3, 3], [-5, 0], [-2, 1e-9]).bounds).toEqual([]);
  });

  it("takes the height 0 as blocked only by a span that reaches under it", () => {
    expect(heightsOf([0, 4]).leastFree(0)).toBe(0);
    expect(heightsOf([-3, 4]).leastFree(0)).toBe(4);
    expect(heightsOf([-3, 4], [4.5, 7]).leastFree(0)).toBe(4);
  });

  it("climbs out of the span in which it starts, its ends being free", () => {
    const heights = heightsOf([1, 2], [4, 6]);
    expect([
      heights.leastFree(0.5),
      heights.leastFree(1.5),
      heights.leastFree(2),
      heights.leastFree(5),
    ]).toEqual([0.5, 2, 2, 6]);
  });

  it("takes over another list", () => {
    const heights = heightsOf([1, 2]);
    heights.addAll(heightsOf([1.5, 3], [7, 8]));
    expect(heights.bounds).toEqual([1, 3, 7, 8]);
  });
});
