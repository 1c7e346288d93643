/**
 * Hems and offsets.
 * Sources: a closed hem takes 43 % of the thickness off the outside dimensions (The Fabricator, the basics of hemming sheet metal, under
 * .080 in; from memory); 120° or more to flatten and a lift of 3 T and the gap: common practice, no source. The rest is plane geometry,
 * worked in each test.
 */

import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { judgeDoubts } from "../../src/answer/doubt.ts";
import type { JudgedStep } from "../../src/jobFile/answer.ts";
import { orderMade } from "../../src/jobFile/orderMade.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { stageAt } from "../../src/jobFile/stageAt.ts";
import { stageScene } from "../../src/motion/scene.ts";
import { offsetHeight } from "../../src/part/offset.ts";
import { drawStep } from "../../src/pictures/step.ts";
import { boxOf } from "../../src/plane/bounding.ts";
import { flangeChart } from "../../src/ways/flangeChart.ts";
import { toldSteps } from "../../src/words/toldStep.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { rectangle } from "../rectangle.ts";

const T = 0.8;
const up = { angle: 90, turn: "up", overbend: 90 };

interface Wish {
  flats?: unknown[];
  bends?: object[];
  clamp?: object;
  brake?: object;
  part?: object;
  order?: object[];
}

function fileOf({
  flats = [10, 60, 25],
  bends = [{ hem: "closed", turn: "up" }, up],
  clamp,
  brake,
  part,
  order,
}: Wish) {
  return {
    noseroom: 1,
    units: "mm",
    part: {
      name: "hemmed edge",
      material: "mild steel",
      thickness: T,
      insideRadius: 1,
      dimensions: "outside",
      flats,
      bends,
      ...part,
    },
    brake: {
      name: "finger brake",
      clamp: { type: "finger", noseAngle: 40, noseRadius: 0.8, height: 40, footDepth: 60, ...clamp },
      bed: { profile: rectangle(-120, -60, 0, 0) },
      leaf: { profile: rectangle(0, -8, 20, 0), swing: 150 },
      lift: 40,
      openEnds: false,
      ...brake,
    },
    ...(order && { order }),
  };
}

function answered(wish: Wish = {}) {
  const read = readJob(JSON.stringify(fileOf(wish)));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { job: read.job, file: read.file, answer: check(read.job) };
}

function problems(wish: Wish): string[] {
  const read = readJob(JSON.stringify(fileOf(wish)));
  return read.ok ? [] : read.problems.map(({ path }) => path);
}

const strokesOf = (order: readonly JudgedStep[]) =>
  order.map(({ bend, stroke }) => `${bend} ${stroke ?? ""}`.trim());

describe("a closed hem", () => {
  const { job, answer } = answered();

  test("is two steps, folded and flattened", () => {
    expect(answer.verdict).toBe("clear");
    expect(strokesOf(answer.order)).toEqual(["1 fold", "1 flatten", "2"]);
    expect(answer.order[1]).toMatchObject({
      clamped: "start",
      overbend: 0,
      reached: 0,
      angle: 180,
      relaxesTo: 180,
    });
  });

  test("takes 43 % of the thickness off the outside dimensions", () => {
    const square = 2 * (1 + T) - (Math.PI / 2) * (1 + job.part.kFactor * T);
    const took = 10 + 60 + 25 - square - answer.blank.developedWidth;
    expect(took / T).toBeCloseTo(0.43, 2);
  });

  test("is folded as far as the leaf gets clear, in tenths of a degree: that angle as a plain bend folds, and a little more hits", () => {
    const fold = answer.order[0]!;
    expect(fold.overbend).toBeGreaterThan(120);
    expect(fold.overbend).toBeLessThan(150);
    const { part } = stageAt(job, answer, 0);
    const plain = (overbend: number) =>
      answered({
        part: { dimensions: "flat", kFactor: part.kFactor },
        flats: [...part.flatsMm],
        bends: [{ angle: fold.angle, overbend, turn: "up" }, up],
        order: [
          { bend: 1, clamped: "end" },
          { bend: 2, clamped: "end" },
        ],
      }).answer.order[0]!;
    expect(plain(fold.overbend).verdict).not.toBe("hits");
    expect(plain(fold.overbend + 0.2).verdict).toBe("hits");
  });

  test("says what to do, and is drawn lying on its flat under the clamp", () => {
    const [, flatten] = toldSteps(job, answer);
    expect(flatten?.title).toBe("2. Bend 1, hem, flattened");
    expect(flatten?.sentences.join(" ")).toContain("Keep fingers out from under the clamp.");
    expect(flatten?.sentences.at(-1)).toBe("Then measure: 10.00 mm from the fold to the edge.");
    const scene = stageScene(stageAt(job, answer, 1), 0);
    const [sheet, clamp] = [boxOf(scene.sheet), boxOf(...scene.clamp)];
    expect(sheet.minY).toBeCloseTo(0, 9);
    expect(sheet.maxY).toBeCloseTo(2 * T, 9);
    expect(clamp.minY).toBeCloseTo(2 * T, 9);
    // The clamp's underside ends a nose radius behind its foremost point, and covers the hem to its edge: 10 mm over all.
    expect(clamp.maxX - 0.8 - sheet.minX).toBeCloseTo(10, 6);
    for (const [i] of answer.order.entries())
      expect(drawStep(job, answer, i).marks.length).toBeGreaterThan(5);
  });

  test("is the same hem at the other end", () => {
    const last = answered({ flats: [25, 60, 10], bends: [up, { hem: "closed", turn: "up" }] }).answer;
    expect(last.blank.developedWidth).toBeCloseTo(answer.blank.developedWidth, 9);
    expect(last.order.map(({ verdict }) => verdict)).toEqual(answer.order.map(({ verdict }) => verdict));
    expect(last.order[0]!.overbend).toBe(answer.order[0]!.overbend);
  });
});

test("a hem that was misread by a little is folded as far as it then gets, and the chart is of the other bends", () => {
  const { job, answer } = answered({
    bends: [
      { hem: "closed", turn: "up" },
      { angle: 90, turn: "up" },
    ],
  });
  expect(judgeDoubts(job, orderMade(answer), [0.25, 0.25, 0.25])).toMatchObject({ worst: null });
  const chart = flangeChart(job, [90]);
  expect(chart.insideRadius).toBe(1);
  expect(chart.curves[0]?.points.some(({ flange }) => flange !== null)).toBe(true);
});

describe("a hem that can't be made", () => {
  test("is told with the leaf angle that it gets to, under 120°", () => {
    const { job, answer } = answered({
      clamp: { noseAngle: 75 },
      flats: [60, 80],
      bends: [{ hem: "closed", turn: "up" }],
    });
    const fold = answer.order.find(({ stroke }) => stroke === "fold")!;
    expect(fold.verdict).toBe("hits");
    expect(fold.reached).toBeLessThan(120);
    expect(verdictSentence(job, answer)).toContain(
      `a hem wants 120° of leaf or more before the clamp can flatten it; at ${fold.reached.toFixed(1)}°`,
    );
  });

  test("wants a clamp that opens three thicknesses and the gap, and more for the hem as it was folded", () => {
    const { job, answer } = answered({
      brake: { lift: 3 },
      flats: [10, 60],
      bends: [{ hem: "open", turn: "up", gap: 1 }],
      order: [{ bend: 1, clamped: "end" }],
    });
    const [fold, flatten] = answer.order;
    const { part } = stageAt(job, answer, 0);
    const turned = (fold!.angle * Math.PI) / 180;
    const tip =
      (part.bends[0]!.insideRadiusMm + T) * (1 - Math.cos(turned)) + part.flatsMm[0]! * Math.sin(turned);
    expect(tip - T).toBeGreaterThan(3 * T + 1);
    expect(flatten).toMatchObject({ verdict: "hits", load: "blocked" });
    const said = Number(/wants ([\d.]+) mm/u.exec(flatten?.because ?? "")?.[1]);
    expect(said).toBeCloseTo(tip - T, 2);
  });

  test("is no slip of another kind", () => {
    expect(problems({ bends: [up, { hem: "closed", turn: "up" }, up], flats: [20, 20, 20, 20] })).toEqual([
      "part.bends[1].hem",
    ]);
    expect(problems({ bends: [{ hem: "closed", turn: "up", gap: 1 }, up] })).toEqual(["part.bends[0].gap"]);
    expect(problems({ bends: [{ hem: "open", turn: "up", gap: 0 }, up] })).toEqual(["part.bends[0].gap"]);
    expect(problems({ bends: [{ hem: "closed", turn: "up", angle: 180 }, up] })).toEqual([
      "part.bends[0].angle",
    ]);
    expect(problems({ bends: [{ hem: "rolled", turn: "up" }, up] })).toEqual(["part.bends[0].hem"]);
    expect(problems({ bends: [{ gap: 1, angle: 90, turn: "up" }, up] })).toEqual(["part.bends[0].gap"]);
    expect(problems({ flats: [1.2, 60, 25] })).toEqual(["part.flats[0]"]);
  });
});

test("a wall beside the hem stands where the hem leaves it: so far in front of the bed's edge", () => {
  const { job, answer } = answered({
    flats: [10, 16, 25],
    order: [
      { bend: 2, clamped: "start" },
      { bend: 1, clamped: "start" },
    ],
    clamp: { noseAngle: 80 },
  });
  const flatten = answer.order.find(({ stroke }) => stroke === "flatten")!;
  const [lip, beside] = job.part.flatsMm;
  // The flat runs on past the hem's edge, which lies where the underside ends: a nose radius and the setback, one thickness, behind the bed's edge.
  expect(flatten.clearance).toBeCloseTo(beside! - lip! - 0.8 - T, 2);
  expect(flatten.nearest?.member).toBe("bed");
});

describe("an offset", () => {
  const bends = [{ offset: 6, angle: 60, turn: "down" }];
  const { job, file } = answered({ flats: [30, 40], bends });

  test("is two bends against each other, with the flat that makes its height over the outside faces", () => {
    expect(file.part.bends.map(({ turn }) => turn)).toEqual(["down", "up"]);
    const [, middle] = job.part.flatsMm;
    // By the corners of the outline: the second flat's plane is so much higher than the first one's, and the sheet's thickness on top.
    const turned = Math.PI / 3;
    const mid = 1 + T / 2;
    const rise = mid * (1 - Math.cos(turned)) * 2 + middle! * Math.sin(turned);
    expect(rise + T).toBeCloseTo(6, 9);
    expect(offsetHeight({ angleDeg: 60, insideRadiusMm: 1, thicknessMm: T }, middle!)).toBeCloseTo(6, 9);
  });

  test("that its two bends alone make higher is told, with the least height", () => {
    const read = readJob(JSON.stringify(fileOf({ flats: [30, 40], bends: [{ offset: 1, angle: 60 }] })));
    const least = T + 2 * (1 + T / 2) * 0.5;
    expect(read.ok ? [] : read.problems).toEqual([
      {
        path: "part.bends[0].offset",
        found: "1",
        allowed: `a height over the outside faces of more than ${least} mm, which the two bends alone make at this angle and radius`,
      },
    ]);
    expect(problems({ flats: [30, 40], bends: [{ offset: 6 }] })).toEqual(["part.bends[0].angle"]);
    // Places after an offset are told as they stand in the file.
    expect(problems({ flats: [30, -5, 40], bends: [...bends, up] })).toEqual(["part.flats[1]"]);
    expect(problems({ flats: [30, 20, 40], bends: [...bends, { angle: 200, turn: "up" }] })).toEqual([
      "part.bends[1].angle",
    ]);
  });
});
