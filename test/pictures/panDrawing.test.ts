/**
 * The drawing of a pan's blank: cut line inside the window, four bends with their lines within the walls, running figures.
 */
import { expect, test } from "vitest";
import { layOutPan } from "../../src/blank/pan.ts";
import { drawPan } from "../../src/pictures/panDrawing.ts";

const blank = layOutPan({
  insideWidthMm: 150,
  insideLengthMm: 220,
  wallMm: 40,
  thicknessMm: 0.8,
  insideRadiusMm: 1.2,
  kFactor: 0.44,
});

test("drawPan draws each bend line in the middle of its bend, between the relief holes", () => {
  const { marks, window } = drawPan(blank, "mm");
  const bends = marks.filter((mark) => mark.kind === "line" && mark.layer === "bendUp");
  expect(bends.length).toBe(4);
  expect(marks.filter((mark) => mark.layer === "sightLine").length).toBe(4);
  expect(marks.filter((mark) => mark.layer === "bendTangent").length).toBe(8);
  const [first] = bends;
  if (first?.kind !== "line") throw new Error("a bend line is missing");
  // Wall 40 outside: its flat is 40 − (1.2 + 0.8) = 38; half the allowance of π/2·(1.2 + 0.44·0.8) lies beyond.
  expect(first.from.x).toBeCloseTo(38 + (Math.PI / 4) * (1.2 + 0.44 * 0.8), 9);
  expect(first.to.x).toBe(first.from.x);
  expect(Math.abs(first.to.y - first.from.y)).toBeCloseTo(220 - 2 * 1.2, 9);
  expect(window.min.x).toBeLessThan(-20);
  expect(window.max.x).toBeGreaterThan(blank.across.sizeMm);
});

test("drawPan gives sight lines and the whole size as running figures from the edge, in the user's unit", () => {
  const figures = drawPan(blank, "mm").marks.flatMap((mark) => (mark.kind === "dimension" ? [mark] : []));
  expect(figures.length).toBe(6);
  for (const figure of figures) {
    const long = Math.hypot(figure.to.x - figure.from.x, figure.to.y - figure.from.y);
    expect(figure.words).toContain(`${long.toFixed(2)} mm`);
    expect([figure.from.x, figure.from.y]).toEqual([0, 0]);
  }
});
