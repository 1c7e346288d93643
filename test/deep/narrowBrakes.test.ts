/**
 * Narrow brakes of every length from 4 to 48 in and every sheet to 16 ga steel and .090 aluminium against assemblyTruths.ts, the leaf turned
 * by 5° at a time.
 */
import { expect, test } from "vitest";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import type { NarrowBrakeRequirements } from "../../src/narrowBrake/requirements.ts";
import { assemblyTruths } from "../narrowBrake/assemblyTruths.ts";
import { manyDesigns } from "../narrowBrake/designs.ts";
import { overlaps, type PieceLike } from "../narrowBrake/solidOverlap.ts";

const DESIGNS = manyDesigns();

test("designNarrowBrake: at least 24 designs, a plan for each of 18 in and under, and a plan or a true reason for the rest", () => {
  expect(DESIGNS.length).toBeGreaterThanOrEqual(24);
  for (const { name, design } of DESIGNS) {
    if (design.plan) continue;
    expect(design.refused!.why, name).toMatch(/\d/u);
    expect(design.refused!.longestMm, name).toBeGreaterThanOrEqual(18 * 25.4);
  }
});

assemblyTruths(DESIGNS, 5);

/** Anything that a shop could ask, sensible or not, from a seed. */
function random(seed: number): NarrowBrakeRequirements {
  let state = seed;
  const from = (low: number, high: number) => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return low + ((high - low) * state) / 2_147_483_648;
  };
  from(0, 1);
  const thicknessMm = from(0.4, 2.3);
  const setback = from(-1, 4);
  const metal = { name: "sheet", yieldMpa: from(60, 400), modulusMpa: 150_000, ultimateMpa: 450 };
  const part = {
    name: "random",
    metal,
    thicknessMm,
    lengthMm: from(60, 900),
    shortestFlangeMm: from(4 * thicknessMm, 40),
    shortestClampedMm: from(3 * thicknessMm, 30),
    deepestClampedMm: from(0, 1) < 0.4 ? from(100, 400) : from(10, 80),
    bends: [setback, setback + from(0, 8)].map((noseSetbackMm) => ({
      overbendDeg: from(60, 110),
      noseSetbackMm,
    })),
  };
  return {
    units: from(0, 1) < 0.5 ? "in" : "mm",
    parts: [part],
    thickestByClearanceMm: from(5, 40),
    overhangMm: from(6, 60),
    noseRadiusMm: from(0.4, 3),
    frontBevelDeg: Math.round(from(0, 25)),
    liftMm: from(3, 60),
    handForceN: from(80, 500),
    vise: { jawHeightMm: from(20, 90), jawWidthMm: from(60, 200) },
    ...(from(0, 1) < 0.5 && { leafFaceMaxMm: from(6, 30) }),
  };
}

test("designNarrowBrake of anything: pieces that go together, checks that pass and a leaf that turns far enough, or a reason with figures", () => {
  let plans = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const asked = random(seed * 7919);
    const { plan, refused } = designNarrowBrake(asked);
    if (plan === null) {
      expect(refused!.why, `seed ${seed}`).toMatch(/\d|would stand in one place/u);
      continue;
    }
    plans++;
    const pieces = plan.assembly.pieces as readonly PieceLike[];
    for (const deg of [0, 45, plan.assembly.swing]) expect(overlaps(pieces, deg), `seed ${seed}`).toEqual([]);
    expect(
      plan.checks.filter(({ passes }) => !passes).map(({ check }) => check),
      `seed ${seed}`,
    ).toEqual([]);
    expect(plan.assembly.swing).toBeGreaterThanOrEqual(
      Math.max(...asked.parts[0]!.bends.map(({ overbendDeg }) => overbendDeg)),
    );
  }
  expect(plans).toBeGreaterThan(20);
});
