/**
 * Ways out that are looked for last: the nose set farther back, all bends left open, pairs of changes, the block.
 * Source: plane geometry, worked here, and each way run again on the changed job, read anew.
 */
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { isWayOut } from "../../src/jobFile/wayOut.ts";
import { waysOut } from "../../src/ways/waysOut.ts";
import { faultsOf, readAs } from "./tryWays.ts";

const bed = {
  profile: [
    [-120, -60],
    [0, -60],
    [0, 0],
    [-120, 0],
  ],
};
const leaf = {
  profile: [
    [0, -10],
    [25, -10],
    [25, 0],
    [0, 0],
  ],
  swing: 150,
};

function jobOf(flats: number[], bends: object[], clamp: object) {
  return readAs({
    noseroom: 1,
    units: "mm",
    part: {
      name: "part",
      material: "mild steel",
      thickness: 0.8,
      insideRadius: 0.8,
      dimensions: "outside",
      flats,
      bends,
    },
    brake: {
      name: "bar brake",
      clamp: { type: "bar", depth: 50, noseRadius: 0.8, ...clamp },
      bed,
      leaf,
      lift: 40,
      openEnds: true,
    },
  });
}

describe("a wall that leans over a square bar", () => {
  const phi = (92.5 * Math.PI) / 180;
  const read = jobOf([30, 40], [{ angle: 90, turn: "up", overbend: 92.5 }], { thickness: 9 });
  const ways = waysOut(read.file, read.job, check(read.job), { pairs: true });

  test("is freed by the nose set farther back, as far as the geometry says", () => {
    const way = ways.find((one) => one.kind === "setback");
    if (!way || !isWayOut(way)) throw new Error("none");
    // The bar's top front edge (−s, T + h) lies T, less the inset of 0.01, from the leaf's face.
    const s = (0.8 - 0.01 - 9.8 * Math.cos(phi)) / Math.sin(phi);
    expect(way.limit?.figure).toBeCloseTo(s, 1);
    expect(way.limit!.figure).toBeGreaterThanOrEqual(s - 0.006);
    expect(way.sentence).toContain("mm back for every bend instead of");
    expect(faultsOf(read, way)).toEqual([]);
  });

  test("ends with the recipe for the hand, its faces cut back by the springback", () => {
    expect(ways.at(-1)).toMatchObject({ kind: "byHand" });
    expect(ways.at(-1)!.sentence).toContain(
      "fold bend 1 over a block with an edge rounded to 0.8 mm and its faces at 87.5°, and let it spring back to 90°.",
    );
    expect(waysOut(read.file, read.job, check(read.job)).some(({ kind }) => kind === "byHand")).toBe(false);
  });
});

describe("a part that no single change frees", () => {
  const bends = [
    { angle: 90, turn: "down", overbend: 92 },
    { angle: 90, turn: "up", overbend: 92 },
    { angle: 90, turn: "up", overbend: 92 },
  ];
  const holder = { holderBack: 12, holderHeight: 30, holderDepth: 40 };
  const read = jobOf([18, 17, 27, 26], bends, { thickness: 6, noseAngle: 85, ...holder });
  const answer = check(read.job);

  test("is told that pairs are tried elsewhere, and there a pair frees it", () => {
    const single = waysOut(read.file, read.job, answer);
    expect(single.filter(isWayOut).some(({ kind }) => kind === "twoFlats")).toBe(false);
    const pairs = waysOut(read.file, read.job, answer, { pairs: true }).filter(isWayOut);
    const pair = pairs.find(({ kind }) => kind === "twoFlats");
    expect(pair?.sentence).toMatch(
      /^Make flat 2 longer by [\d.]+ mm and trim flat 4 by [\d.]+ mm\. It then folds/u,
    );
    for (const way of pairs) expect(faultsOf(read, way)).toEqual([]);
    expect(
      single.some(({ sentence }) =>
        sentence.includes("No single change helps; `noseroom ways` tries pairs."),
      ),
    ).toBe(single.filter(isWayOut).length === 0);
  });
});

test("a way that leaves under a tenth of a millimetre comes last and says so", () => {
  const bends = [
    { angle: 90, turn: "down", overbend: 92 },
    { angle: 90, turn: "down", overbend: 92 },
    { angle: 90, turn: "up", overbend: 92 },
  ];
  const read = jobOf([25, 8, 22, 19], bends, {
    thickness: 6,
    noseAngle: 85,
    holderBack: 12,
    holderHeight: 30,
    holderDepth: 40,
  });
  const ways = waysOut(read.file, read.job, check(read.job), { pairs: true }).filter(isWayOut);
  const scant = ways.filter(({ clearance }) => clearance !== null && clearance < 0.1);
  expect(scant.length).toBeGreaterThan(0);
  for (const way of scant) {
    expect(way.last).toBe(true);
    expect(way.because).toContain("less than a shop can hold");
    expect(ways.indexOf(way)).toBeGreaterThanOrEqual(ways.filter(({ last }) => !last).length);
  }
});
