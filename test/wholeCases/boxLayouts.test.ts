/**
 * Blanks of boxes against published layouts (test/sources/boxLayouts.ts), and corners against sums by hand.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { faaBox, publicChassis, publicTray } from "../sources/boxLayouts.ts";

const { brake } = JSON.parse(
  readFileSync(new URL("../../examples/whole/end-cap.json", import.meta.url), "utf8"),
);

function jobOfPart(part: object, units: "mm" | "in" = "mm") {
  // Fingers for any part of this page; its own are in mm.
  const fingers = [100, 60, 40, 20, 10, 5, 2].map((mm) => ({ width: `${mm} mm`, count: 3 }));
  const inUnits = JSON.parse(JSON.stringify(brake), (_, value) =>
    typeof value === "number" && units === "in" ? value / 25.4 : value,
  );
  const turned = { ...inUnits.clamp, noseAngle: brake.clamp.noseAngle, fingers };
  const own = { ...inUnits, clamp: turned, leaf: { ...inUnits.leaf, swing: 135 } };
  const sheet = { name: "box", material: "5052-H32", dimensions: "outside", ...part };
  const read = readAnyJob(JSON.stringify({ noseroom: 1, units, part: sheet, brake: own }));
  if (!read.ok || read.kind !== "whole") throw new Error(JSON.stringify(read));
  return read.job;
}

/** The blank alone: no order is looked for. */
function blankOfPart(part: object, units?: "mm" | "in") {
  return checkWhole({ ...jobOfPart(part, units), order: [] }).blank;
}

function sizeOf(outline: readonly (readonly number[])[]): [number, number] {
  const [xs, ys] = [outline.map(([x]) => x!), outline.map(([, y]) => y!)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

function areaOf(outline: readonly (readonly number[])[]): number {
  const twice = outline.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    return sum + x! * nextY! - nextX! * y!;
  }, 0);
  return twice / 2;
}

const square = (height: number) => ({ left: height, right: height, front: height, back: height });

describe("published layouts", () => {
  it("the handbook's box: developed both ways as its channel, holes where the inside tangent lines cross", () => {
    const { thicknessIn, radiusIn, bottomIn, wallIn } = faaBox;
    const box = { width: bottomIn, depth: bottomIn, walls: square(wallIn) };
    const answer = checkWhole(jobOfPart({ thickness: thicknessIn, insideRadius: radiusIn, box }, "in"));
    for (const mm of sizeOf(answer.blank.outline))
      expect(Math.abs(mm / 25.4 - faaBox.developedIn)).toBeLessThan(faaBox.chartReadsToIn);
    expect(answer.blank.reliefHoles).toHaveLength(4);
    const inside = faaBox.flatIn + faaBox.chartAllowanceIn;
    for (const { x, y, diameter } of answer.blank.reliefHoles) {
      expect(diameter / 25.4).toBeCloseTo(2 * radiusIn, 6);
      for (const mm of [x, y]) {
        const fromEdge = Math.min(mm / 25.4, faaBox.developedIn - mm / 25.4);
        expect(Math.abs(fromEdge - inside)).toBeLessThan(faaBox.chartReadsToIn);
      }
    }
    // Two opposite sides first, then the other two on fingers between them. Left and right are bends 1 and 2.
    const pairs = answer.order.map(({ bends: [bend] }) => (bend! <= 2 ? "sides" : "ends"));
    expect(answer.verdict).not.toBe("hits");
    expect([pairs[0], pairs[2]]).toEqual([pairs[1], pairs[3]]);
    expect(pairs[0]).not.toBe(pairs[2]);
  });

  it.each(faaBox.leastHoles)("the handbook's least relief hole of $thicknessIn sheet", (row) => {
    const { thicknessIn, diameterIn } = row;
    const box = { width: 3, depth: 3, walls: square(1) };
    const blank = blankOfPart({ thickness: thicknessIn, insideRadius: 3 / 64, box }, "in");
    for (const { diameter } of blank.reliefHoles) expect(diameter / 25.4).toBeCloseTo(diameterIn, 9);
  });

  it("a public page's tray: blank, deduction and bend lines", () => {
    const { baseMm, wallMm, thicknessMm, radiusMm, kFactor, blankMm } = publicTray;
    const box = { width: baseMm[0], depth: baseMm[1], walls: square(wallMm) };
    const blank = blankOfPart({ thickness: thicknessMm, insideRadius: radiusMm, kFactor, box });
    const size = sizeOf(blank.outline);
    for (const [i, mm] of size.entries()) expect(mm).toBeCloseTo(blankMm[i]!, 1);
    for (const { deduction } of blank.bends) expect(deduction).toBeCloseTo(publicTray.deductionMm, 3);
    const [left, right] = [blank.bends[0]!.line[0][0], blank.bends[1]!.line[0][0]];
    expect(left).toBeCloseTo(publicTray.bendLineMm, 2);
    expect(size[0] - right).toBeCloseTo(publicTray.bendLineMm, 2);
  });

  it("a public page's three bends: the blank of a chassis with a closed end is as long", () => {
    const { outsideMm, bends, thicknessMm, radiusMm, kFactor } = publicChassis;
    const bend = { angle: 90, turn: "up" };
    const flats = [60, 90, 90, 60];
    expect(flats.reduce((sum, mm) => sum + mm, 0)).toBe(outsideMm);
    const end = { ...bend, flat: 2, at: "start", size: 30 };
    const blank = blankOfPart({
      thickness: thicknessMm,
      insideRadius: radiusMm,
      kFactor,
      length: 150,
      flats,
      bends: Array.from({ length: bends }, () => bend),
      ends: [end],
    });
    expect(sizeOf(blank.outline)[0]).toBeCloseTo(publicChassis.blankMm, 1);
    for (const { deduction } of blank.bends) expect(deduction).toBeCloseTo(publicChassis.deductionMm, 2);
  });
});

describe("corners, by hand", () => {
  // 100 by 80 outside, walls 30, T 1, r 1, K 0.5: setback 2, allowance 1.5·π/2, bottom 96 by 76, walls 28 deep.
  const [T, r, BOTTOM_X, BOTTOM_Y, DEEP] = [1, 1, 96, 76, 28];
  const BA = (Math.PI / 2) * 1.5;
  const bottom = BOTTOM_X * BOTTOM_Y;

  function blankOf(more: object, wall: unknown = 30) {
    const walls = { left: wall, right: wall, front: wall, back: wall };
    return blankOfPart({
      thickness: T,
      insideRadius: r,
      kFactor: 0.5,
      box: { width: 100, depth: 80, walls, ...more },
    });
  }

  it("open: walls end at the tangent lines of their neighbours", () => {
    const { outline, reliefHoles } = blankOf({});
    expect(areaOf(outline)).toBeCloseTo(bottom + 2 * (BA + DEEP) * (BOTTOM_X + BOTTOM_Y), 6);
    expect(sizeOf(outline)[0]).toBeCloseTo(BOTTOM_X + 2 * (BA + DEEP), 9);
    // 1/8 in, since twice the radius is less; centred on the bottom's corners.
    expect(reliefHoles.map(({ diameter }) => diameter)).toEqual([3.175, 3.175, 3.175, 3.175]);
    const near = DEEP + BA;
    expect(reliefHoles.some(({ x, y }) => Math.abs(x - near) < 1e-9 && Math.abs(y - near) < 1e-9)).toBe(true);
  });

  it.each([0, 0.7])("meet, a gap of %d: walls reach on by r and half of the gap's diagonal less", (gap) => {
    const reach = r - gap / Math.SQRT2;
    const area = bottom + 2 * (BA + DEEP) * (BOTTOM_X + BOTTOM_Y) + 8 * reach * DEEP;
    expect(areaOf(blankOf({ corners: "meet", gap }).outline)).toBeCloseTo(area, 6);
  });

  it.each([
    ["inside", 0, -T],
    ["inside", 0.5, -T - 0.5],
    ["outside", 0, T],
    ["outside", 0.5, T + 0.5],
  ] as const)(
    "tabs %s, %d off: their walls are longer or shorter by the sheet and the gap",
    (on, gap, by) => {
      // Tabs of 12 outside are 10 beyond their bends; strips run no farther than the bottom's edge.
      const { outline, bends } = blankOf({ corners: { tab: 12, on }, gap });
      const wall = BOTTOM_Y + 2 * by;
      const sides = 2 * (BA * Math.min(wall, BOTTOM_Y) + DEEP * wall) + 4 * (BA + 10) * DEEP;
      expect(areaOf(outline)).toBeCloseTo(bottom + 2 * (BA + DEEP) * BOTTOM_X + sides, 6);
      expect(bends).toHaveLength(8);
    },
  );

  it("lips turned in are mitred at 45°, half of the gap back at each corner", () => {
    const lipped = { height: 30, lips: [{ size: 10, turn: "in" }] };
    const { outline } = blankOf({ gap: 1 }, lipped);
    // A wall gives both of its bends' setbacks, a lip one.
    const lip = (edge: number) => BA * (edge - 1) + 8 * (edge - 1 - 8);
    const walls = 2 * (BA + 26) * (BOTTOM_X + BOTTOM_Y);
    expect(areaOf(outline)).toBeCloseTo(bottom + walls + 2 * (lip(BOTTOM_X) + lip(BOTTOM_Y)), 6);
  });

  it("a lipped wall with tabs has its lip no wider than itself", () => {
    const lipped = { height: 30, lips: [{ size: 10, turn: "out" }] };
    const walls = { left: lipped, right: 30, front: 30, back: 30 };
    const { outline } = blankOfPart({
      thickness: T,
      insideRadius: r,
      kFactor: 0.5,
      box: { width: 100, depth: 80, walls, corners: { tab: 12, on: "inside" } },
    });
    const side = BOTTOM_Y - 2 * T;
    const lips = (BA + 8) * side;
    const sides = (BA + 26) * side + (BA + DEEP) * side + 2 * (BA + 10) * (26 + DEEP);
    expect(areaOf(outline)).toBeCloseTo(bottom + 2 * (BA + DEEP) * BOTTOM_X + sides + lips, 6);
  });
});
