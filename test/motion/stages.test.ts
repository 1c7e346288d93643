/**
 * Orders with bends made in two strokes, stage by stage: the part that goes in and comes out, the bends done, the nose.
 * Source: followed on paper; nose setback and the begun bend's flats by the formulas of src/model.md, section 5, written out again.
 */

import { expect, it } from "vitest";
import { stageScene } from "../../src/motion/scene.ts";
import { type OrderStep, stagesOf } from "../../src/motion/stages.ts";
import { jobOf } from "../cases/answers.ts";
import { rectangle } from "../rectangle.ts";

const flats = [12, 22, 30, 15];
const job = jobOf({
  noseroom: 1,
  units: "mm",
  part: {
    name: "tray",
    material: "mild steel",
    thickness: 1,
    insideRadius: 1,
    kFactor: 0.5,
    dimensions: "outside",
    flats,
    bends: [
      { angle: 90, turn: "up", overbend: 93 },
      { angle: 90, turn: "up", overbend: 93 },
      { angle: 120, turn: "up", overbend: 124 },
    ],
  },
  brake: {
    name: "plain",
    clamp: { type: "bar", thickness: 5, depth: 30, noseRadius: 0.8 },
    bed: { profile: rectangle(-50, -20, 0, 0) },
    leaf: { profile: rectangle(0, -5, 20, 0), swing: 130 },
    lift: 20,
    openEnds: true,
  },
});
const { part, brake } = job;
const rad = (deg: number) => (deg * Math.PI) / 180;

/**
 * Flats of the part with one bend left at `toDeg`: r = T = 1, K = 0.5, pivot on the edge. The bend's arc starts where the
 * leaf, at the overbend of either angle, has the clamped tangent line.
 */
function flatsLeft(bend: number, clamped: "start" | "end", fullDeg: number, toDeg: number): number[] {
  const over = part.bends[bend]!.overbendDeg / fullDeg;
  const onClamped = 2 * (Math.tan(rad(over * fullDeg) / 2) - Math.tan(rad(over * toDeg) / 2));
  const onMoving = 1.5 * rad(fullDeg - toDeg) - onClamped;
  const [before, after] = clamped === "start" ? [onClamped, onMoving] : [onMoving, onClamped];
  return part.flatsMm.map((mm, i) => mm + (i === bend ? before : i === bend + 1 ? after : 0));
}

const near = (list: readonly number[]) => list.map((one) => expect.closeTo(one, 9));

it("counts the bends done, never the bend itself, and leaves part and brake alone where all bends are made whole", () => {
  const order: OrderStep[] = [
    { bend: 2, clamped: "start" },
    { bend: 0, clamped: "end" },
    { bend: 1, clamped: "start" },
  ];
  const stages = stagesOf(part, brake, order);
  expect(stages.map(({ bendsDone }) => bendsDone)).toEqual([0, 4, 5]);
  stages.forEach((stage, i) => {
    expect(stage).toEqual({ ...order[i], part, brake, bendsDone: stage.bendsDone });
    expect(stage.brake).toBe(brake);
  });
});

it("leaves two bends part way at once, and finishes them one after the other", () => {
  const order: OrderStep[] = [
    { bend: 0, clamped: "start", toDeg: 40 },
    { bend: 2, clamped: "end", toDeg: 70 },
    { bend: 0, clamped: "start" },
    { bend: 1, clamped: "start" },
    { bend: 2, clamped: "end" },
  ];
  const stages = stagesOf(part, brake, order);
  expect(stages.map(({ bendsDone }) => bendsDone)).toEqual([0, 1, 4, 5, 3]);
  const [one, two] = [flatsLeft(0, "start", 90, 40), flatsLeft(2, "end", 120, 70)];
  const both = part.flatsMm.map((mm, i) => mm + (one[i]! - mm) + (two[i]! - mm));
  const whole = [...part.flatsMm];
  expect(stages.map((stage) => stage.part.flatsMm)).toEqual([one, both, two, two, whole].map(near));
  expect(stages.map((stage) => stage.part.bends.map(({ angleDeg }) => angleDeg))).toEqual([
    [40, 90, 120],
    [40, 90, 70],
    [90, 90, 70],
    [90, 90, 70],
    [90, 90, 120],
  ]);
  // Springback in proportion.
  const overbends = stages.slice(0, 3).map((stage) => stage.part.bends.map(({ overbendDeg }) => overbendDeg));
  const [o40, o70] = [(93 * 40) / 90, (124 * 70) / 120];
  expect(overbends).toEqual([near([o40, 93, 124]), near([o40, 93, o70]), near([93, 93, o70])]);
  // As they go in: with the bend at hand where its first stroke left it.
  expect(stages.map(({ begun }) => begun?.fromDeg)).toEqual([undefined, undefined, 40, undefined, 70]);
  expect(stages[2]!.begun!.part.flatsMm).toEqual(near(both));
  expect(stages[4]!.begun!.part.flatsMm).toEqual(near(two));
  // The nose stands for the whole bend when it is begun: (r + T)·tan(θo/2) − Rn.
  const nose = (overbendDeg: number) => 2 * Math.tan(rad(overbendDeg) / 2) - 0.8;
  const noses = stages.map((stage) => stage.part.bends[stage.bend]!.noseSetbackMm);
  expect(noses).toEqual(near([nose(93), nose(124), nose(93), nose(93), nose(124)]));
  for (const stage of stages) expect(stage.brake).toBe(brake);
});

it("tells a first stroke that would eat a whole flat by its bend, counted from 1", () => {
  // 120° left at 75°, the leaf at 124° and 77.5°: the moving flat gives 2·(tan 62° − tan 38.75°) − 1.5·45°, in radians: 0.978 mm.
  const withLast = (lastMm: number) => ({
    ...part,
    flatsMm: part.flatsMm.map((mm, i) => (i === 3 ? lastMm : mm)),
  });
  const order = [{ bend: 2, clamped: "start", toDeg: 75 }] as const;
  expect(() => stagesOf(withLast(0.9), brake, order)).toThrow(
    new RangeError("bend 3 left at 75 degrees would eat a whole flat"),
  );
  expect(stagesOf(withLast(1), brake, order)[0]!.part.flatsMm[3]).toBeCloseTo(1 - 0.978, 3);
});

it("shows a begun bend as it was left until the leaf has come up to it", () => {
  const stages = stagesOf(part, brake, [
    { bend: 0, clamped: "start", toDeg: 40 },
    { bend: 0, clamped: "start" },
  ]);
  const [, second] = stages;
  const sheet = (deg: number) => stageScene(second!, rad(deg)).sheet;
  const leaf = (deg: number) => stageScene(second!, rad(deg)).leaf;
  for (const deg of [0, 15, 39.9]) expect(sheet(deg)).toEqual(sheet(40));
  expect(sheet(41)).not.toEqual(sheet(40));
  // The leaf's outer lower corner, (20, −5), turned about the bed's edge.
  const corner = (deg: number) => {
    const [x, y] = [20, -5];
    return [x * Math.cos(rad(deg)) - y * Math.sin(rad(deg)), x * Math.sin(rad(deg)) + y * Math.cos(rad(deg))];
  };
  for (const deg of [0, 15, 39.9, 40, 60, 93]) {
    const [x, y] = corner(deg);
    expect(Math.min(...leaf(deg).edges.map(({ from }) => Math.hypot(from.x - x!, from.y - y!)))).toBeLessThan(
      1e-9,
    );
  }
  // A bend made from the flat turns with the leaf from the start.
  const [first] = stages;
  expect(stageScene(first!, rad(15)).sheet).not.toEqual(stageScene(first!, rad(0)).sheet);
});
