/**
 * Narrow brakes of every length from 4 to 48 in and every sheet to 16 ga steel and .090 aluminium against assemblyTruths.ts, the leaf turned
 * by 5° at a time.
 */
import { expect, test } from "vitest";
import { assemblyTruths } from "../narrowBrake/assemblyTruths.ts";
import { manyDesigns } from "../narrowBrake/designs.ts";

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
