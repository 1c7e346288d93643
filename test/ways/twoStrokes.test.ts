/**
 * Orders that begin a bend and finish it later, as job files have them: what is read, refused and answered.
 * Source: the model (src/model.md, section 5); springback in proportion, as for whole bends.
 */

import { describe, expect, it } from "vitest";
import { orderMade } from "../../src/jobFile/orderMade.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { stageAt } from "../../src/jobFile/stageAt.ts";
import { answerOf, jobOf } from "../cases/answers.ts";
import { rectangle } from "../rectangle.ts";

const hat = (order: object[], flats = [20, 30, 20]) => ({
  noseroom: 1,
  units: "mm",
  part: {
    name: "lip",
    material: "mild steel",
    thickness: 0.8,
    insideRadius: 0.8,
    kFactor: 0.44,
    dimensions: "outside",
    flats,
    bends: [
      { angle: 90, turn: "up", overbend: 93 },
      { angle: 60, turn: "up", overbend: 62 },
    ],
  },
  brake: {
    name: "bar",
    clamp: { type: "bar", thickness: 4, depth: 12, noseRadius: 0.8, topRadius: 0.8 },
    bed: { profile: rectangle(-160, -7, 0, 0) },
    leaf: { profile: rectangle(0, -4, 15, 0), swing: 135 },
    lift: 60,
    openEnds: true,
  },
  order,
});

const BEGUN = [
  { bend: 1, clamped: "start", to: 30 },
  { bend: 2, clamped: "end" },
  { bend: 1, clamped: "start" },
];

describe("an order that begins a bend and finishes it later", () => {
  it("is answered stroke by stroke", () => {
    const { order } = answerOf(hat(BEGUN));
    expect(order.map(({ bend, stroke, from }) => ({ bend, stroke, from }))).toEqual([
      { bend: 1, stroke: "begin", from: undefined },
      { bend: 2, stroke: undefined, from: undefined },
      { bend: 1, stroke: "finish", from: 30 },
    ]);
    expect(order.map(({ angle }) => angle)).toEqual([30, 60, 90]);
    // 30° is a third of the bend, and so is the leaf's 93°.
    expect(order.map(({ overbend }) => overbend)).toEqual([31, 62, 93]);
    expect(order[0]!.relaxesTo).toBeCloseTo(30, 9);
  });

  it("leaves the blank as it is", () => {
    const whole = answerOf(
      hat([
        { bend: 1, clamped: "start" },
        { bend: 2, clamped: "end" },
      ]),
    );
    expect(answerOf(hat(BEGUN)).blank).toEqual(whole.blank);
  });

  it("keeps the sheet's length in every stage", () => {
    const job = jobOf(hat(BEGUN));
    const answer = answerOf(hat(BEGUN));
    const length = ({ flatsMm, bends }: typeof job.part) =>
      [...flatsMm, ...bends.map(({ allowanceMm }) => allowanceMm)].reduce((sum, one) => sum + one, 0);
    for (const index of [0, 1, 2])
      expect(length(stageAt(job, answer, index).part)).toBeCloseTo(length(job.part), 9);
    expect(orderMade(answer)).toEqual(job.order);
  });

  it.each<[string, object[], string, RegExp]>([
    [
      "an end that changes",
      [BEGUN[0]!, BEGUN[1]!, { bend: 1, clamped: "end" }],
      "order[2].clamped",
      /"start", as where the bend was begun/u,
    ],
    [
      "a bend begun twice",
      [BEGUN[0]!, BEGUN[0]!, BEGUN[1]!, BEGUN[2]!],
      "order[1].bend",
      /no earlier step has begun/u,
    ],
    [
      "a bend begun after it is made",
      [BEGUN[2]!, BEGUN[0]!, BEGUN[1]!],
      "order[1].bend",
      /no earlier step has made/u,
    ],
    ["a bend never finished", [BEGUN[0]!, BEGUN[1]!], "order", /each bend once/u],
    [
      "more than the whole bend",
      [{ ...BEGUN[0], to: 90 }, BEGUN[1]!, BEGUN[2]!],
      "order[0].to",
      /less than the bend's own 90 degrees/u,
    ],
    ["no angle", [{ ...BEGUN[0], to: 0 }, BEGUN[1]!, BEGUN[2]!], "order[0].to", /above 0/u],
  ])("refuses %s", (_, order, path, allowed) => {
    const read = readJob(JSON.stringify(hat(order)));
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems.map((problem) => problem.path)).toContain(path);
    expect(read.problems.find((problem) => problem.path === path)!.allowed).toMatch(allowed);
  });
});
