/**
 * The nose of a free clamp shape: how far its underside ends behind the foremost point, and the least radius it leaves room
 * for. Source: plane geometry, worked in each test.
 */
import { expect, test } from "vitest";
import { noseRounded } from "../../src/brake/noseCorner.ts";
import { leastInsideRadius } from "../../src/brake/nosePinch.ts";
import { profileClamp } from "../../src/brake/profile.ts";
import { shimmed } from "../../src/brake/shimmed.ts";
import { type Corner, filletedOutline } from "../../src/plane/fillet.ts";

function clampOf(...corners: Corner[]) {
  const result = filletedOutline(corners);
  if (!result.ok) throw new Error(result.fault.kind);
  const made = profileClamp({ noseRadiusMm: 0.8, outlines: [result.outline] });
  if (!made.ok) throw new Error(made.fault.key);
  return made.clamp;
}

const at = (x: number, y: number, radius?: number): Corner => ({
  x,
  y,
  ...(radius !== undefined && { radius }),
});
const back = [at(-30, 10), at(-30, 0)];

test("a rounded nose runs its radius, and leaves room for that radius", () => {
  const clamp = clampOf(at(0, 0, 1.2), at(0, 10), ...back);
  expect(clamp.noseRunMm).toBeCloseTo(1.2, 12);
  for (const deg of [30, 90, 120]) expect(leastInsideRadius(clamp, deg)).toBeCloseTo(1.2, 9);
});

test("a chamfered nose runs as far as its chamfer; its front corner must lie in the bend's arc", () => {
  // Chamfer 2 back and 1 up: the corner (2, 1) past the underside's end lies on an arc of (2² + 1²)/2 = 2.5 for any angle
  // past 2·atan(1/2) = 53.13°; below that the arc ends before it, on the ray at half the angle.
  const clamp = clampOf(at(-2, 0), at(0, 1), at(0, 10), ...back);
  expect(clamp.noseRunMm).toBeCloseTo(2, 12);
  const slack = 0.01;
  expect(leastInsideRadius(clamp, 90)).toBeCloseTo((5 - slack ** 2) / (2 * (1 + slack)), 12);
  expect(leastInsideRadius(clamp, 53.2)).toBeCloseTo((5 - slack ** 2) / (2 * (1 + slack)), 12);
  expect(leastInsideRadius(clamp, 50)).toBe(0);
});

test("a sharp nose runs nowhere and leaves room for any bend; a round bar runs half its thickness", () => {
  const sharp = clampOf(at(0, 0), at(0, 10), ...back);
  expect([sharp.noseRunMm, leastInsideRadius(sharp, 90)]).toEqual([0, 0]);
  const bull = clampOf(at(0, 0, 5), at(0, 10, 5), ...back);
  expect(bull.noseRunMm).toBeCloseTo(5, 12);
});

test("a shim adds its thickness to both", () => {
  const clamp = shimmed(clampOf(at(0, 0, 1.2), at(0, 10), ...back), 0.5);
  expect(clamp.noseRunMm).toBeCloseTo(1.7, 12);
  expect(leastInsideRadius(clamp, 90)).toBeCloseTo(1.7, 9);
});

test("the nose's corner drawn sharp is rounded by the nose radius; its own rounding stays, and so do chords of one", () => {
  const square = [at(0, 0), at(0, 10), ...back];
  expect(noseRounded([square], 0.8)[0]?.[0]).toEqual(at(0, 0, 0.8));
  const own = [[at(0, 0, 0.3), at(0, 10), ...back]];
  expect(noseRounded(own, 0.8)).toBe(own);
  const keptSharp = [[at(0, 0, 0), at(0, 10), ...back]];
  expect(noseRounded(keptSharp, 0.8)).toBe(keptSharp);
  const chords = [[at(-1, 0), at(-0.4, 0.15), at(0, 1), at(0, 10), ...back]];
  expect(noseRounded(chords, 0.8)).toBe(chords);
});
