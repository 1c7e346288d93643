/**
 * What the narrow brake says, and what comes back of it: window on the safe side, bow and crown, sizes as built.
 * Figures by hand.
 */
import { describe, expect, test } from "vitest";
import { windowSentence } from "../../src/narrowBrake/barWindow.ts";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import { madeBrake } from "../../src/narrowBrake/madeBrake.ts";
import { TROUGH_BRAKE } from "./trough.ts";

describe("windowSentence", () => {
  test("never rounds a limit past itself: 7.8994 mm is 0.310 or 0.311 in, not 5/16", () => {
    expect(
      windowSentence({ thinnestMm: 3.7755, thickestMm: 7.8994, stockInsideMm: [4.7625, 6.35] }, "in"),
    ).toBe("Clamp bar from 0.149 to 0.311 in thick: 3/16 or 1/4 in from stock.");
    expect(windowSentence({ thinnestMm: 3.7755, thickestMm: 7.8994, stockInsideMm: [] }, "mm")).toBe(
      "Clamp bar from 3.78 to 7.89 mm thick: no stock size.",
    );
  });

  test("a shut window says what stands against what", () => {
    expect(windowSentence({ thinnestMm: 4.2, thickestMm: 3.5, stockInsideMm: [] }, "mm")).toBe(
      "No clamp bar will do: it must be at least 4.20 mm to hold and at most 3.50 mm to clear.",
    );
  });
});

test("bows say the same figures as the plan, crown where the bow is largest", () => {
  const { bows, plan } = designNarrowBrake(TROUGH_BRAKE);
  expect(bows.map(({ member }) => member)).toEqual(["holder", "bed", "leaf"]);
  const leaf = bows[2]!;
  expect(leaf.bowMm).toBe(plan!.leaf.bowMm);
  expect(leaf.sentence).toContain(`bows ${Math.round(leaf.bowMm * 100)} hundredths of a millimetre`);
  expect(leaf.sentence).toContain(`${leaf.angleLostDeg.toFixed(1)}°`);
  expect(leaf.crown[4]!.packingMm).toBeCloseTo(leaf.midDeflectionMm, 9);
  expect(leaf.sentence).toContain("in the middle");
});

test("madeBrake takes what was measured in place of what was planned", () => {
  const design = designNarrowBrake(TROUGH_BRAKE);
  const planned = madeBrake(design);
  const built = madeBrake(design, {
    barThicknessMm: 4.9,
    overhangMm: 13.2,
    noseAngleDeg: 85,
    leafFaceMm: 37,
  });
  expect(built.clamp).toEqual({ ...planned.clamp, thickness: 4.9, holderBack: 13.2, noseAngle: 85 });
  expect(Math.max(...built.leaf.profile.map(([x]) => x))).toBe(37);
  expect(built.bed).toEqual(planned.bed);
});
