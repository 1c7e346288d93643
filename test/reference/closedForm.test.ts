/**
 * Limits that can be written down: how thick a bar goes under a channel, how long a return flange a 45° finger lets by.
 * Source: plane geometry, worked out in each test; the part's faces are pulled in by 0.01 mm, which both limits show.
 */

import { describe, expect, it } from "vitest";
import { rectangle } from "../rectangle.ts";
import { checkBend } from "./bendCheck.ts";
import type { PlainClamp, PlainJob } from "./plainJob.ts";

const T = 0.8128;
const RADIUS = 0.8;
const INSET = 0.01;

/** A channel of the given web and return flange, its last bend made with the other flange clamped. */
function channel(web: number, returnFlange: number, clamp: PlainClamp, kFactor = 0.44): PlainJob {
  const bends = [90, 90].map((over) => ({ angle: 90, turn: "up" as const, overbend: over }));
  return {
    part: {
      thickness: T,
      insideRadius: RADIUS,
      kFactor,
      dimensions: "outside",
      flats: [returnFlange, web, 12.7],
      bends,
    },
    brake: {
      clamp,
      bed: { profile: rectangle(-160, -80, 0, 0) },
      leaf: { profile: rectangle(0, -10, 9, 0), swing: 135 },
      lift: 40,
      openEnds: true,
    },
  };
}

const lastBend = (job: PlainJob) => checkBend(job, { done: [true, false], bend: 1, end: "end" });

/** The largest value that meets nothing, between one that passes and one that does not. */
function limitOf(passes: (value: number) => boolean, good: number, bad: number): number {
  expect(passes(good)).toBe(true);
  expect(passes(bad)).toBe(false);
  let [low, high] = [good, bad];
  while (high - low > 4e-4) {
    const middle = (low + high) / 2;
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return low;
}

describe("a square bar under a channel of web 10", () => {
  const bar = (thickness: number, topRadius: number): PlainClamp => {
    return { type: "bar", noseRadius: RADIUS, topRadius, thickness, depth: 60 };
  };

  const thickest = (topRadius: number, kFactor: number) =>
    limitOf((h) => lastBend(channel(10, 8, bar(h, topRadius), kFactor)).contact === null, 6, 9.5);

  it("passes while T + h < W − T when its top front edge is rounded and the sheet does not stretch", () => {
    // With k = 1 the flange slides out along the leaf just as fast as the turning face recedes: the limit is the one at 90°.
    expect(Math.abs(thickest(RADIUS, 1) - (10 - 2 * T + INSET))).toBeLessThan(0.002);
  });

  it("passes a hair less when the sheet stretches: the flange lags behind while it slides out", () => {
    const limit = thickest(RADIUS, 0.44);
    expect(limit).toBeLessThan(10 - 2 * T + INSET - 0.005);
    expect(limit).toBeGreaterThan(10 - 2 * T + INSET - 0.01);
  });

  it("is met by the return bend's inside arc when that edge is sharp", () => {
    // The edge stands r from the arc's centre line; the arc of r + i, i the inset, is over it √((r + i)² − r²) above its start.
    const over = Math.sqrt((RADIUS + INSET) ** 2 - RADIUS ** 2);
    expect(Math.abs(thickest(0, 0.44) - (10 - 2 * T - RADIUS + over))).toBeLessThan(0.005);
  });
});

it("a 45° finger lets by a return flange of W − T + r − (1 + √2)·Rn", () => {
  const finger: PlainClamp = { type: "finger", noseAngle: 45, noseRadius: RADIUS, height: 60, footDepth: 80 };
  const limit = limitOf((flange) => lastBend(channel(10, flange, finger)).contact === null, 5, 12);
  expect(Math.abs(limit - (10 - T + RADIUS - (1 + Math.SQRT2) * RADIUS + INSET))).toBeLessThan(0.002);
});

describe("a channel of .032 in sheet, web 3/8 in, flanges 1/2 in, overbend 92°", () => {
  // No source but this reference: recorded, so that a later change shows. The overbend moves the clamped tangent back.
  const inch = 25.4;
  const job = (clamp: PlainClamp): PlainJob => {
    const plain = channel((3 / 8) * inch, inch / 2, clamp);
    const bends = plain.part.bends.map((bend) => ({ ...bend, overbend: 92 }));
    return { ...plain, part: { ...plain.part, insideRadius: T, bends } };
  };
  const bar = (noseAngle: number): PlainClamp => ({
    type: "bar",
    noseAngle,
    noseRadius: T,
    topRadius: T,
    thickness: inch / 4,
    depth: 40,
    holderBack: (3 / 4) * inch,
    holderHeight: 40,
    holderDepth: 20,
  });

  it("stops at 75.0° on a 45° finger", () => {
    const finger: PlainClamp = { type: "finger", noseAngle: 45, noseRadius: T, height: 40, footDepth: 60 };
    expect(Math.abs(lastBend(job(finger)).contact!.angleDeg - 74.97)).toBeLessThan(0.05);
  });

  it("closes round a 1/4 in bar bevelled to 86° with 0.98 mm to spare, and hits it near 90.6° when left square", () => {
    expect(Math.abs(lastBend(job(bar(86))).clearanceMm! - 0.978)).toBeLessThan(0.005);
    expect(Math.abs(lastBend(job(bar(90))).contact!.angleDeg - 90.6)).toBeLessThan(0.05);
  });
});
