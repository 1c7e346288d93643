/**
 * The drawing of a nest, taken apart again: as many blanks as counted, each of its size, all inside the sheet.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { nestOnSheet } from "../../src/blank/nest.ts";
import { nestedWhole } from "../../src/blank/nestedBlank.ts";
import type { Mark } from "../../src/drawing/model.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { drawNest } from "../../src/pictures/nestDrawing.ts";

const question = {
  blank: { widthMm: 122, lengthMm: 300 },
  sheet: { widthMm: 1000, lengthMm: 2000 },
  grain: "free" as const,
  kerfMm: 2,
};

function cornersOf(mark: Mark): readonly { x: number; y: number }[] {
  return mark.kind === "outline" ? mark.outline.edges.map((edge) => edge.from) : [];
}

test("drawNest shows each blank once, at true size, inside the sheet", () => {
  const nest = nestOnSheet(question)!;
  const { marks, sentence, window } = drawNest(question, nest, "mm");
  const blanks = marks.filter((mark) => mark.kind === "outline" && mark.layer === "cut").map(cornersOf);
  expect(blanks.length).toBe(nest.perSheet);
  for (const corners of blanks) {
    const xs = corners.map((corner) => corner.x);
    const ys = corners.map((corner) => corner.y);
    const sides = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].sort(
      (a, b) => a - b,
    );
    expect(sides[0]).toBeCloseTo(122, 9);
    expect(sides[1]).toBeCloseTo(300, 9);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...xs)).toBeLessThanOrEqual(1000);
    expect(Math.max(...ys)).toBeLessThanOrEqual(2000);
  }
  expect(sentence).toBe(
    `${nest.perSheet} blanks off a sheet of 1000.00 mm by 2000.00 mm, ${Math.round(nest.wastePercent)} % waste in the strips.`,
  );
  expect(window.min.x).toBeLessThan(0);
  expect(window.max.y).toBeGreaterThan(2000);
});

test("drawNest numbers every cut that runs across the whole sheet", () => {
  const nest = nestOnSheet(question)!;
  const { marks } = drawNest(question, nest, "in");
  const numbers = marks.flatMap((mark) =>
    mark.kind === "text" && mark.words.startsWith("cut ") ? [mark.words] : [],
  );
  const across = nest.cuts.filter((cut) => cut.from.x === 0 && cut.to.x === 1000);
  expect(numbers).toEqual(across.map((_, i) => `cut ${i + 1}`));
});

/** Twice the area inside, above 0 where the corners run counter-clockwise. */
function doubleArea(corners: readonly { x: number; y: number }[]): number {
  return corners.reduce((sum, { x, y }, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return sum + x * next.y - next.x * y;
  }, 0);
}

test.each(["cable-trough-ends", "end-cap"])(
  "drawNest of %s: true outlines fill their rectangles, turned and never mirrored",
  (name) => {
    const read = readAnyJob(
      readFileSync(new URL(`../../examples/whole/${name}.json`, import.meta.url), "utf8"),
    );
    if (!read.ok || read.kind !== "whole") throw new Error("an example is read");
    const { outline } = read.job.part.sheet.pattern;
    const blank = nestedWhole(read.job.part);
    // Their bends run both ways, so either way of laying them comes up.
    expect(blank.bothWays).toBe(true);
    const asked = { blank, sheet: { widthMm: 1000, lengthMm: 600 }, grain: "free" as const, kerfMm: 0 };
    const nest = nestOnSheet(asked)!;
    expect(new Set(nest.places.map(({ laid }) => laid)).size).toBe(2);
    const cut = drawNest(asked, nest, "mm", blank.shapeAt)
      .marks.filter((mark) => mark.kind === "outline" && mark.layer === "cut")
      .map(cornersOf);
    expect(cut.length).toBe(nest.perSheet);
    for (const [i, corners] of cut.entries()) {
      const { at, widthMm, heightMm } = nest.places[i]!;
      const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
      expect([Math.min(...xs), Math.min(...ys)]).toEqual([expect.closeTo(at.x, 9), expect.closeTo(at.y, 9)]);
      expect(Math.max(...xs)).toBeCloseTo(at.x + widthMm, 9);
      expect(Math.max(...ys)).toBeCloseTo(at.y + heightMm, 9);
      expect(doubleArea(corners)).toBeCloseTo(doubleArea(outline), 6);
    }
  },
);
