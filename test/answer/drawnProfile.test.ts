/**
 * A clamp traced as a free profile: drawn away from x = 0, and with a nose that contradicts `noseRadius`.
 * Source: the same clamp drawn in its place, and as a bar by its measures (src/model.md, section 4).
 */

import { expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { rectangle } from "../rectangle.ts";

function answered(clamp: object, doubts?: object) {
  const file = {
    noseroom: 1,
    units: "mm",
    part: {
      name: "channel",
      material: "mild steel",
      thickness: 0.8,
      insideRadius: 1,
      dimensions: "outside",
      flats: [12, 24, 12],
      bends: [
        { angle: 90, turn: "up", overbend: 90 },
        { angle: 90, turn: "up", overbend: 90 },
      ],
    },
    brake: {
      name: "traced brake",
      clamp,
      bed: { profile: rectangle(-120, -60, 0, 0) },
      leaf: { profile: rectangle(0, -10, 20, 0), swing: 135 },
      lift: 30,
      openEnds: false,
      ...(doubts && { doubts }),
    },
  };
  const read = readJob(JSON.stringify(file));
  return read.ok ? check(read.job) : read.problems;
}

const traced = (byX: number, noseRadius = 1) => ({
  type: "profile",
  noseRadius,
  profiles: [
    [
      [byX, 0, 1],
      [byX, 9],
      [byX - 50, 9],
      [byX - 50, 0],
    ],
  ],
});
const bar = { type: "bar", thickness: 9, depth: 50, noseRadius: 1 };

function sound(of: ReturnType<typeof answered>) {
  if (!("order" in of)) throw new Error(JSON.stringify(of));
  return of;
}
const figures = (of: ReturnType<typeof answered>) =>
  sound(of).order.map(({ bend, clamped, verdict, clearance, setback }) => [
    bend,
    clamped,
    verdict,
    clearance?.toFixed(9),
    setback.toFixed(9),
  ]);

test("a profile drawn anywhere along x is moved to its place, and that is said", () => {
  expect(figures(answered(traced(0)))).toEqual(figures(answered(bar)));
  for (const byX of [-3.5, 40]) {
    const answer = answered(traced(byX));
    expect(figures(answer)).toEqual(figures(answered(bar)));
    expect(sound(answer).warnings.join(" ")).toContain(
      `The foremost point of the clamp's profile is drawn at x = ${byX} mm: the answer moves the whole clamp ${Math.abs(byX)} mm ${byX > 0 ? "back" : "forward"}, to x = 0.`,
    );
  }
  expect(sound(answered(traced(0))).warnings.join(" ")).not.toContain("foremost");
});

test("a nose that the profile rounds otherwise than noseRadius says is taken as drawn, and that is said", () => {
  const answer = answered(traced(0, 0.4));
  expect(figures(answer)).toEqual(figures(answered(bar)));
  expect(sound(answer).warnings.join(" ")).toContain(
    "The profile's nose is rounded with 1 mm, and noseRadius says 0.4 mm: the answer takes the profile's 1 mm.",
  );
  expect(sound(answered(traced(0))).warnings.join(" ")).not.toContain("noseRadius says");
});

test("a doubt of noseRadius means nothing beside a rounding of the profile's own", () => {
  expect(answered(traced(0), { noseRadius: 0.1 })).toMatchObject([{ path: "brake.doubts.noseRadius" }]);
  const sharp = {
    ...traced(0),
    profiles: [
      [
        [0, 0],
        [0, 9],
        [-50, 9],
        [-50, 0],
      ],
    ],
  };
  expect(sound(answered(sharp, { noseRadius: 0.1 })).verdict).toBe("clear");
});
