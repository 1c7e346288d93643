/**
 * The narrow brake's drawing: every stock size on it, dimensions that say what they measure, views that line up.
 * Figures are read back with the length reader and held against the distance between the measured points.
 */
import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/model.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import { drawNarrowBrake } from "../../src/narrowBrake/plans/narrowBrakeDrawing.ts";
import { parseLength } from "../../src/units/length.ts";
import { TRAY, TROUGH_BRAKE } from "./trough.ts";

type Dimension = Extract<Mark, { kind: "dimension" }>;

const brakes = [
  ["trough, inches", designNarrowBrake(TROUGH_BRAKE)],
  ["trough, mm", designNarrowBrake({ ...TROUGH_BRAKE, units: "mm" })],
  ["tray, bolts beyond the ends", designNarrowBrake({ ...TROUGH_BRAKE, units: "mm", parts: [TRAY] })],
  ["leaf of a flat on edge", designNarrowBrake({ ...TROUGH_BRAKE, leafFaceMaxMm: 8 })],
] as const;

describe.each(brakes)("drawNarrowBrake: %s", (_, brake) => {
  const drawing = drawNarrowBrake(brake);
  const plan = brake.plan!;
  const { units } = brake.requirements;
  const dimensions = drawing.marks.filter((mark): mark is Dimension => mark.kind === "dimension");
  const words = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.words] : [])).join("\n");

  test("each dimension's figure is the distance that it measures", () => {
    expect(dimensions.length).toBeGreaterThanOrEqual(20);
    for (const { from, to, words: figure } of dimensions) {
      const measured = Math.hypot(to.x - from.x, to.y - from.y);
      expect(Math.abs(parseLength(figure, units)! - measured)).toBeLessThanOrEqual(0.003 * 25.4 + 1e-9);
      // A dimension is level or upright.
      expect(Math.min(Math.abs(to.x - from.x), Math.abs(to.y - from.y))).toBeLessThan(1e-9);
    }
  });

  test("the sizes to make are dimensioned", () => {
    const lengths = dimensions.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y));
    const wanted = [
      plan.bar.thicknessMm,
      plan.bar.depthMm,
      plan.bar.lengthMm,
      plan.bar.overhangMm,
      plan.holder.bolts.spacingMm,
      plan.bed.lengthMm,
      plan.leaf.lengthMm,
      plan.leaf.faceMm,
      plan.leaf.standingMm,
      plan.tongue.widthMm,
      plan.tongue.heightMm,
      plan.tongue.thicknessMm,
      plan.screws.spacingMm,
    ];
    for (const size of wanted) expect(lengths.some((length) => Math.abs(length - size) < 1e-6)).toBe(true);
  });

  test("stock, torque, limits and cautions are in words", () => {
    for (const { stock } of [
      plan.bar,
      plan.holder,
      plan.bed,
      plan.leaf,
      plan.pin,
      plan.handle,
      plan.rail,
      plan.tongue,
    ]) {
      expect(words).toContain(stock.name);
    }
    expect(words).toContain("N·m");
    expect(words).toContain("no engineer's approval");
    expect(words).toMatch(/cuts/u);
    expect(words).toMatch(/crush/u);
    expect(drawing.sentence).toContain(plan.bar.stock.name);
  });

  test("outlines are closed, and everything lies in the window", () => {
    const { min, max } = drawing.window;
    for (const mark of drawing.marks) {
      if (mark.kind !== "outline") continue;
      mark.outline.edges.forEach((edge, i, edges) => {
        const next = edges[(i + 1) % edges.length]!;
        expect(Math.hypot(edge.to.x - next.from.x, edge.to.y - next.from.y)).toBeLessThan(1e-9);
        expect(edge.from.x > min.x && edge.from.x < max.x && edge.from.y > min.y && edge.from.y < max.y).toBe(
          true,
        );
      });
    }
    for (const { from, to } of dimensions) {
      for (const p of [from, to]) expect(p.x > min.x && p.x < max.x && p.y > min.y && p.y < max.y).toBe(true);
    }
  });

  test("bar, holder, bed and leaf of the section don't run into each other", () => {
    const box = (caption: string) => {
      const mark = drawing.marks.find((one) => one.kind === "outline" && one.caption === caption);
      const points = mark?.kind === "outline" ? mark.outline.edges.map(({ from }) => from) : [];
      return {
        minX: Math.min(...points.map(({ x }) => x)),
        maxX: Math.max(...points.map(({ x }) => x)),
        minY: Math.min(...points.map(({ y }) => y)),
        maxY: Math.max(...points.map(({ y }) => y)),
      };
    };
    expect(box("clamp bar").minY).toBeCloseTo(box("sheet").maxY, 9);
    expect(box("holder").minY).toBeCloseTo(box("clamp bar").maxY, 9);
    expect(box("bed").maxX).toBeCloseTo(box("leaf at rest").minX, 9);
    expect(box("bed").maxY).toBeCloseTo(0, 9);
    expect(box("clamp bar").maxX).toBeLessThanOrEqual(0);
    expect(box("clamp bar").maxX - box("holder").maxX).toBeCloseTo(plan.bar.overhangMm, 1);
  });

  test("the SVG pen takes it", () => {
    const svg = writeSvg(drawing);
    expect(svg).toContain("<svg");
    expect(svg).not.toMatch(/NaN|undefined|Infinity/u);
  });
});

test("drawNarrowBrake: no plan, no drawing; what is not yet right is on it", () => {
  const none = designNarrowBrake({ ...TROUGH_BRAKE, thickestByClearanceMm: 1 });
  expect(() => drawNarrowBrake(none)).toThrow(RangeError);
  const weak = drawNarrowBrake(designNarrowBrake({ ...TROUGH_BRAKE, vise: { forceN: 3000 } }));
  expect(JSON.stringify(weak.marks)).toContain("Not yet right: vise");
});
