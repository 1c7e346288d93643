/**
 * The drawing of a nest, taken apart again: as many blanks as counted, each of its size, all inside the sheet.
 */
import { expect, test } from "vitest";
import { nestOnSheet } from "../../src/blank/nest.ts";
import type { Mark } from "../../src/drawing/model.ts";
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
