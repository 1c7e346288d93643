/**
 * The verdict over all that a job doubts: leaf angle, nose setback, nose radius.
 * Source: plane geometry, worked here. A wall taller than a square clamp bar meets the bar's sharp top front edge (−s, T + h) when
 * that edge is within T (less the 0.01 mm by which faces are drawn in) of the leaf's face, a line through the pivot at the leaf angle φ:
 * s·sin φ + (T + h)·cos φ = T − 0.01. With automatic setback s = (r + T)·tan(φ/2) − Rn (src/model.md, section 4).
 */

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { waysOut } from "../../src/ways/waysOut.ts";
import { reportSections } from "../../src/words/reportWords.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { rectangle } from "../rectangle.ts";

const [T, r, Rn, h] = [1, 1.5, 1, 9];

/** One wall, 60 mm high, on a square bar 9 mm thick. */
function wall(change: { bend?: object; brake?: object; clamp?: object } = {}) {
  const file = {
    noseroom: 1,
    units: "mm",
    part: {
      name: "wall",
      material: "mild steel",
      thickness: T,
      insideRadius: r,
      dimensions: "outside",
      flats: [30, 60],
      bends: [{ angle: 90, turn: "up", ...change.bend }],
    },
    brake: {
      name: "square bar brake",
      clamp: { type: "bar", thickness: h, depth: 50, noseRadius: Rn, ...change.clamp },
      bed: { profile: rectangle(-120, -60, 0, 0) },
      leaf: { profile: rectangle(0, -8, 20, 0), swing: 135 },
      lift: 40,
      openEnds: false,
      ...change.brake,
    },
    order: [{ bend: 1, clamped: "start" }],
  };
  const read = readJob(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { read, answer: check(read.job) };
}

/** The leaf angle, in degrees, at which the wall meets the bar's top front edge with the nose set back by s. */
function meetsAt(setback: (phiRad: number) => number): number {
  let [low, high] = [Math.PI / 2, (3 * Math.PI) / 4];
  for (let i = 0; i < 60; i++) {
    const phi = (low + high) / 2;
    if (setback(phi) * Math.sin(phi) + (T + h) * Math.cos(phi) > T - 0.01) low = phi;
    else high = phi;
  }
  return (low * 180) / Math.PI;
}
const automatic = (phi: number) => (r + T) * Math.tan(phi / 2) - Rn;

describe("a leaf angle that is known as a range", () => {
  const limit = meetsAt(automatic);
  const likely = limit - 0.6;

  test("hits from the exact angle of the geometry on, though it folds as likely", () => {
    const { read, answer } = wall({ bend: { overbend: likely }, brake: { doubts: { overbend: 1 } } });
    const [step] = answer.order;
    expect(answer.verdict).toBe("hits");
    expect(step?.reached).toBeCloseTo(likely, 9);
    expect(step?.overbendRange[1]).toBeCloseTo(likely + 1, 9);
    expect(step?.foldsFor?.[1]).toBeCloseTo(limit, 4);
    expect(step?.contact).toMatchObject({ member: "clamp", part: "flat 2" });
    expect(verdictSentence(read.job, answer)).toBe(
      `Not sure to fold in this order: at bend 1, with the leaf past ${limit.toFixed(1)}° flat 2 meets the clamp bar, and springback may ask for up to ${(likely + 1).toFixed(1)}°.`,
    );
  });

  test("folds over all of it where the range ends before that angle, and the set-up says the range", () => {
    const { read, answer } = wall({ bend: { overbend: likely }, brake: { doubts: { overbend: 0.5 } } });
    expect(answer.verdict).toBe("clear");
    expect(answer.order[0]?.foldsFor).toEqual(answer.order[0]?.overbendRange);
    const setUp = reportSections(read.job, answer).find(([title]) => title === "Set-up")?.[1] ?? [];
    const [low, high] = [likely - 0.5, likely + 0.5].map((deg) => deg.toFixed(1));
    expect(setUp.join(" ")).toContain(`Bend 1 folds for any leaf angle from ${low}° to ${high}°.`);
  });

  test("is none where the overbend is given, or the doubt is 0", () => {
    expect(wall({ bend: { overbend: likely } }).answer.order[0]?.overbendRange).toEqual([likely, likely]);
    const [step] = wall({ brake: { doubts: { overbend: 0 } } }).answer.order;
    expect(step?.overbendRange).toEqual([step?.overbend, step?.overbend]);
  });

  test("ways out fold over all of it", () => {
    const { read, answer } = wall({ bend: { overbend: likely }, brake: { doubts: { overbend: 1 } } });
    const thinner = waysOut(read.file, read.job, answer).find((way) => way.kind === "thinnerBar");
    if (thinner?.kind !== "thinnerBar") throw new Error("no thinner bar");
    // A bar as thick as this just clears at the end of the range: the same geometry solved for h. Stock comes in whole millimetres.
    const phi = ((likely + 1) * Math.PI) / 180;
    const most = (T - 0.01 - automatic(phi) * Math.sin(phi)) / Math.cos(phi) - T;
    expect(thinner.to).toBeLessThanOrEqual(most);
    expect(thinner.to).toBeGreaterThan(most - 1);
  });
});

test("every leaf angle of a reckoned range folds where the verdict says so, read anew with that overbend", () => {
  for (const name of ["hat-stiffener", "drip-edge", "lens-box-tray", "eight-bends"]) {
    const text = readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8");
    const read = readJob(text);
    if (!read.ok) throw new Error(name);
    const answer = check(read.job);
    expect(answer.verdict).not.toBe("hits");
    const order = answer.order.map(({ bend, clamped }) => ({ bend, clamped }));
    for (const share of [0, 0.2, 0.4, 0.6, 0.8, 1]) {
      const bends = read.file.part.bends.map((bend, i) => {
        const { overbendRange, overbend } = answer.order.find((step) => step.bend === i + 1)!;
        const [low, high] = overbendRange;
        const at =
          share < 0.5 ? low + 2 * share * (overbend - low) : overbend + (2 * share - 1) * (high - overbend);
        return { ...bend, overbend: at };
      });
      const at = readJob(JSON.stringify({ ...read.file, order, part: { ...read.file.part, bends } }));
      if (!at.ok) throw new Error(JSON.stringify(at.problems));
      expect(check(at.job).verdict).not.toBe("hits");
    }
  }
});

describe("a nose that may stand or be otherwise than the job says", () => {
  // Further forward the bar's front meets the wall sooner: the limit of s − d.
  const s = 2;
  const forward = meetsAt(() => s - 0.3);
  const overbend = forward + 0.2;

  test("hits where the setback's doubt brings the bar into the wall, and says so", () => {
    expect(meetsAt(() => s)).toBeGreaterThan(overbend);
    const sure = wall({ bend: { overbend }, brake: { setback: s } });
    expect(sure.answer.verdict).not.toBe("hits");
    const { read, answer } = wall({ bend: { overbend }, brake: { setback: s, doubts: { setback: 0.3 } } });
    expect(answer.verdict).toBe("hits");
    // The setback for which the corner just clears at the overbend: the same geometry solved for s.
    const phi = (overbend * Math.PI) / 180;
    const from = s - (T - 0.01 - (T + h) * Math.cos(phi)) / Math.sin(phi);
    const failsAt = answer.order[0]?.failsAt;
    expect(failsAt?.noseSetbackBy).toBeCloseTo(-from, 4);
    expect(failsAt?.noseRadiusBy).toBeCloseTo(0, 9);
    expect(answer.order[0]?.contact?.angle).toBeCloseTo(overbend, 4);
    expect(verdictSentence(read.job, answer)).toContain(
      `Not sure to fold in this order: at bend 1, once the nose is ${from.toFixed(2)} mm farther forward than you say, flat 2 meets the clamp bar.`,
    );
  });

  test("pinches where a rounder nose wants a larger setback than it was set by", () => {
    // Least setback (Rn + T)·tan(θo/2) − Rn: at 90° it is T whatever Rn is; past it a rounder nose wants more.
    const least = (radius: number) => (radius + T) * Math.tan((110 * Math.PI) / 360) - radius;
    const setback = least(1);
    const bend = { angle: 105, overbend: 110 };
    const clamp = { noseAngle: 60 };
    expect(least(1.3) - setback).toBeGreaterThan(0.1 * T);
    expect(wall({ bend, clamp, brake: { setback } }).answer.order[0]?.refused).toBe(null);
    const { answer } = wall({ bend, clamp, brake: { setback, doubts: { noseRadius: 0.3 } } });
    expect(answer.order[0]).toMatchObject({ verdict: "hits", refused: "pinched" });
    // Where the least setback is a tenth of the thickness over what is set: x·(tan 55° − 1) = 0.1·T; a nose is tried in steps of 0.02 mm.
    const from = (0.1 * T) / (Math.tan((110 * Math.PI) / 360) - 1);
    expect(Math.abs(answer.order[0]!.failsAt!.noseRadiusBy - from)).toBeLessThan(0.02);
  });
});

test("a nose too far forward is named as the cause, with how much farther back this bend passes", () => {
  const s = 2;
  const overbend = meetsAt(() => s) + 0.3;
  const phi = (overbend * Math.PI) / 180;
  const short = (T - 0.01 - (T + h) * Math.cos(phi)) / Math.sin(phi) - s;
  const { read, answer } = wall({ bend: { overbend }, brake: { setback: s } });
  const noseBack = answer.order[0]?.noseBack ?? 0;
  expect(noseBack).toBeGreaterThan(short);
  expect(noseBack - short).toBeLessThan(0.2);
  expect(verdictSentence(read.job, answer)).toContain(
    `The nose stands too far forward: this bend passes with it ${noseBack.toFixed(2)} mm farther back.`,
  );
  expect(wall({ bend: { overbend }, brake: { setback: s + noseBack } }).answer.verdict).not.toBe("hits");
  // A thicker bar wants more than a turn of a screw: then the nose is not the cause.
  const thick = wall({ bend: { overbend }, brake: { setback: s }, clamp: { thickness: 40 } });
  expect(thick.answer.verdict).toBe("hits");
  expect(thick.answer.order[0]?.noseBack).toBe(undefined);
});

test("doubts of a brake that can't be are told by their key", () => {
  const slip = (doubts: object) => {
    const { read } = wall();
    const again = readJob(JSON.stringify({ ...read.file, brake: { ...read.file.brake, doubts } }));
    return again.ok ? [] : again.problems.map(({ path }) => path);
  };
  expect(slip({ overbend: 40 })).toEqual(["brake.doubts.overbend"]);
  expect(slip({ setback: -1 })).toEqual(["brake.doubts.setback"]);
  expect(slip({ noseRadius: 1 })).toEqual(["brake.doubts.noseRadius"]);
  expect(slip({ springback: 1 })).toEqual(["brake.doubts.springback"]);
});
