/**
 * What a foreman would say to a brake: each remark from the slip that calls for it, and none to a sound brake.
 * Common practice, no source.
 */
import { describe, expect, it } from "vitest";
import { barClamp } from "../../src/brake/bar.ts";
import type { Brake } from "../../src/brake/brake.ts";
import { brakeRemarks } from "../../src/brake/brakeRemarks.ts";
import { filletedOutline } from "../../src/plane/fillet.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { brakeRemarkWords } from "../../src/words/brakeRemarkWords.ts";

function block(left: number, bottom: number, right: number, top: number): Outline {
  const result = filletedOutline([
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ]);
  if (!result.ok) throw new Error(result.fault.kind);
  return result.outline;
}

function clampWith(holderBackMm: number, depthMm = 45) {
  const result = barClamp({
    thicknessMm: 10,
    depthMm,
    noseRadiusMm: 0.8,
    noseAngleDeg: 60,
    holder: { backMm: holderBackMm, heightMm: 20, depthMm: 20 },
  });
  if (!result.ok) throw new Error(result.fault.key);
  return result.clamp;
}

const sound: Brake = {
  name: "bar brake",
  clamp: clampWith(30),
  bed: block(-160, -80, 0, 0),
  leaf: { outline: block(0, -10, 25, 0), swingDeg: 135, pivot: { x: 0, y: 0 } },
  frame: [block(-200, -80, -170, 60)],
  liftMm: 30,
  openEnds: true,
  noseSetback: "auto",
};

function remarks(change: Partial<Brake>): string[] {
  return brakeRemarks({ ...sound, ...change }, 0.8).map((remark) => brakeRemarkWords(remark, "mm"));
}

describe("brakeRemarks", () => {
  it("has nothing to say to a sound brake", () => {
    expect(remarks({})).toEqual([]);
  });

  it.each<[string, Partial<Brake>, RegExp]>([
    ["a clamp that doesn't open", { liftMm: 0.5 }, /lifts 0\.5 mm, no more than the sheet is thick/u],
    ["a short swing", { leaf: { ...sound.leaf, swingDeg: 80 } }, /swings to 80° only/u],
    ["a pivot far off", { leaf: { ...sound.leaf, pivot: { x: 30, y: 40 } } }, /pivot stands 50 mm from/u],
    ["a low leaf", { leaf: { ...sound.leaf, outline: block(0, -10, 25, -2) } }, /lies 2 mm below the bed/u],
    [
      "a leaf in the bed",
      { leaf: { ...sound.leaf, outline: block(-3, -10, 25, 0) } },
      /Leaf at rest and bed/u,
    ],
    ["a leaf in the frame", { frame: [block(20, -9, 40, -2)] }, /frame piece 1 stand in one place/u],
    // The top front edge stands at 0.8/tan 30° − 0.8 − 10/tan 60° = −5.19, the holder at −2.
    ["a holder over the nose", { clamp: clampWith(2) }, /overhangs the front of the bar by 3\.19 mm/u],
    ["a clamp deeper than the bed", { clamp: clampWith(30, 165) }, /reaches 5 mm past the back of the bed/u],
  ])("%s", (_, change, remark) => {
    const said = remarks(change);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(remark);
  });
});
