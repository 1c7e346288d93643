/**
 * The made brake as a job file's brake: shapes that the file contract asks for, sizes those of the plan.
 * The contract: section 4 and 11 of the model.
 */
import { describe, expect, test } from "vitest";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import { bedProfile, madeBrake, type ProfilePoint } from "../../src/narrowBrake/madeBrake.ts";
import { sectionOf } from "../../src/narrowBrake/strength/section.ts";
import { TROUGH_BRAKE } from "./trough.ts";

function signedArea(profile: readonly ProfilePoint[]): number {
  return (
    profile.reduce((sum, [x, y], i) => {
      const [x1, y1] = profile[(i + 1) % profile.length]!;
      return sum + x * y1 - x1 * y;
    }, 0) / 2
  );
}

describe("madeBrake", () => {
  const design = designNarrowBrake({ ...TROUGH_BRAKE, leafFaceMaxMm: 12 });
  const brake = madeBrake(design);

  test("clamp is the planned bar under its holder", () => {
    const { bar, holder } = design.plan!;
    expect(brake.clamp).toMatchObject({
      type: "bar",
      noseRadius: 0.8,
      noseAngle: 86,
      thickness: bar.thicknessMm,
      depth: bar.depthMm,
      holderBack: 14,
    });
    expect(brake.clamp.holderBack + brake.clamp.holderDepth).toBeLessThanOrEqual(bar.depthMm);
    expect(holder.shape).toMatchObject({
      widthMm: brake.clamp.holderDepth,
      heightMm: brake.clamp.holderHeight,
    });
  });

  test("bed fills x ≤ 0 below its top, leaf lies below its face at x ≥ 0, both counter-clockwise", () => {
    for (const [x, y] of brake.bed.profile) expect(x <= 0 && y <= 0).toBe(true);
    for (const [x, y] of brake.leaf.profile) expect(x >= 0 && y <= 0).toBe(true);
    expect(signedArea(brake.bed.profile)).toBeGreaterThan(0);
    expect(signedArea(brake.leaf.profile)).toBeGreaterThan(0);
    expect(Math.max(...brake.leaf.profile.map(([x]) => x))).toBe(design.plan!.leaf.faceMm);
  });

  test("profiles of solid shapes have the section's own area", () => {
    const angle = { kind: "angle", widthMm: 60, heightMm: 40, thicknessMm: 5 } as const;
    expect(signedArea(bedProfile(angle))).toBeCloseTo(sectionOf(angle).areaMm2, 9);
    const { leaf } = design.plan!;
    const solid = leaf.shape.kind === "tube" ? leaf.faceMm * leaf.standingMm : leaf.section.areaMm2;
    expect(signedArea(brake.leaf.profile)).toBeCloseTo(solid, 9);
  });

  test("no plan, no brake", () => {
    const none = designNarrowBrake({ ...TROUGH_BRAKE, thickestByClearanceMm: 1 });
    expect(() => madeBrake(none)).toThrow(RangeError);
  });
});
