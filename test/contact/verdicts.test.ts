/**
 * What makes a bend's verdict: a way in that is blocked alone, a clearance that just keeps the margin.
 * Source: drawn on paper beside the job; tight is less than the margin (src/model.md, section 6).
 */

import { expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import { jobOf } from "../cases/answers.ts";
import { rectangle } from "../rectangle.ts";

/** A flange hangs 15 down, 14 out from the bend; a post stands before it, its top 10 down. */
const job = jobOf({
  noseroom: 1,
  units: "mm",
  part: {
    name: "drip edge",
    material: "mild steel",
    thickness: 1,
    insideRadius: 1,
    kFactor: 0.5,
    dimensions: "outside",
    flats: [30, 14, 15],
    bends: [
      { angle: 90, turn: "up", overbend: 90 },
      { angle: 90, turn: "down", overbend: 90 },
    ],
  },
  brake: {
    name: "posted",
    clamp: { type: "bar", thickness: 6, depth: 40, noseRadius: 0.8, topRadius: 0.8 },
    bed: { profile: rectangle(-60, -60, 0, 0) },
    leaf: { profile: rectangle(0, -8, 9, 0), swing: 100 },
    frame: [
      [
        [20, -30],
        [30, -30],
        [30, -10],
        [20, -10],
      ],
    ],
    lift: 2,
    openEnds: false,
  },
});

it("is a hit where the part can't go in, though nothing is met and the bent part comes out", () => {
  // Going in over the post asks for a lift of 5; once bent, the flange leads out 14 up.
  const step = judgeStep(job.part, job.brake, { bendsDone: 2, bend: 0, clamped: "start" }, 0);
  expect(step.contact).toBeUndefined();
  expect([step.load, step.unload, step.swingShort]).toEqual(["blocked", "front", false]);
  expect(step.verdict).toBe("hits");
  const roomy = judgeStep(
    job.part,
    { ...job.brake, liftMm: 20 },
    { bendsDone: 2, bend: 0, clamped: "start" },
    0,
  );
  expect([roomy.load, roomy.verdict]).toEqual(["front", "clear"]);
});

it("is tight under the margin, and clear where the margin is just kept", () => {
  const brake = { ...job.brake, liftMm: 20 };
  const at = (marginMm: number) =>
    judgeStep(job.part, brake, { bendsDone: 2, bend: 0, clamped: "start" }, marginMm);
  const mm = at(0).clearanceMm!;
  expect(mm).toBeGreaterThan(0.1);
  expect([at(mm).verdict, at(mm + 1e-9).verdict, at(mm - 1e-9).verdict]).toEqual(["clear", "tight", "clear"]);
});
