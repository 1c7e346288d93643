/**
 * Whether a walk along the sheet is back in the plane of its first flat, leading outward: chains of 45° and 90° bends followed on
 * paper, r = T = 1. A joint turning up goes about a centre 2 off the under face, one turning down about one 1 off it.
 */
import { expect, it } from "vitest";
import { Strip } from "../../src/contact/strip.ts";
import { chainWith, type Joint, T } from "./seatOnPaper.ts";

const up = (angleDeg: number): Joint => ({ turn: 1, angleDeg });
const down = (angleDeg: number): Joint => ({ turn: -1, angleDeg });

it.each([
  ["flat all along", [10, 5], [up(90)], 0, true],
  ["past a bend up", [10, 5], [up(45)], 1, false],
  ["past a hair's bend", [10, 5], [up(0.001)], 1, false],
  // Down and up again: level, but lower.
  ["in a plane beside it", [10, 5, 5], [down(45), up(45)], 3, false],
  // Down 45°, 3 on, up 90°, up 3 + (1 − cos 45°)/sin 45°: at its height, leading up.
  ["through it, leading up", [10, 3, 3 + Math.SQRT2 - 1, 4], [down(45), up(90), down(45)], 3, false],
  // The same with 3 on either side, and down 45°: level again at the old height.
  ["back in it", [10, 3, 3, 4], [down(45), up(90), down(45)], 7, true],
  ["a little beside it", [10, 3, 3.0001, 4], [down(45), up(90), down(45)], 7, false],
  // Down, along 4, up by one less than down, and over: in it, leading back.
  ["back in it the wrong way", [10, 5, 4, 4, 3], [down(90), up(90), up(90), up(90)], 15, false],
] as const)("a sheet is %s", (_, flats, joints, formed, inPlane) => {
  const strip = new Strip(chainWith(flats, joints), T);
  // Walked to where the last joint made leads, whatever was walked before.
  const k = 32 - Math.clz32(formed);
  strip.walkTo(flats.length - 1, 0);
  strip.walkTo(k, formed);
  expect(strip.inFirstPlane()).toBe(inPlane);
  if (formed === 15) {
    expect(strip.y).toBeCloseTo(0, 9);
    expect(strip.c).toBeCloseTo(-1, 9);
  }
  if (flats[2] === 3 + Math.SQRT2 - 1) expect(strip.y).toBeCloseTo(0, 9);
});

it("is where it would be walked anew, whatever was walked before", () => {
  const chain = () => chainWith([10, 3, 4, 5], [down(45), up(90), up(30)]);
  const where = (strip: Strip, k: number, formed: number) => {
    strip.walkTo(k, formed);
    return [strip.x, strip.y, strip.c, strip.s];
  };
  for (let before = 0; before < 8; before++)
    for (let formed = 0; formed < 8; formed++)
      for (let k = -1; k <= 3; k++) {
        const strip = new Strip(chain(), T);
        strip.walkTo(3, before);
        expect(where(strip, k, formed)).toEqual(where(new Strip(chain(), T), k, formed));
      }
});
