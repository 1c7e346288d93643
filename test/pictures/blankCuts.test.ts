/**
 * Cut-outs, relief holes and grain on the blank's drawing, its DXF read back by an independent library, the shop sheet's
 * strip and table, and the words that go with them. The blank is the example's: tangent lines by its own layout, radius
 * of the holes 1/16 in (FAA-H-8083-31, chapter 4: 1/8 in up to 0.064 in sheet).
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { dxfLayer, toDxf } from "../../src/drawing/dxfPen.ts";
import type { Mark } from "../../src/drawing/model.ts";
import { A4 } from "../../src/drawing/pageSize.ts";
import { outlinePath } from "../../src/drawing/pathData.ts";
import { writePdf } from "../../src/drawing/pdfPen.ts";
import { templatePages } from "../../src/drawing/template.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { drawBlank } from "../../src/pictures/blankDrawing.ts";
import { blankStrip } from "../../src/pictures/blankStrip.ts";
import { blankTable } from "../../src/pictures/blankTable.ts";
import { grainArrow } from "../../src/pictures/grainArrow.ts";
import { grainWords } from "../../src/words/grainWords.ts";
import { setUpSentences } from "../../src/words/setUpWords.ts";
import { readDxf } from "./readDxf.ts";
import { readPdf } from "./readPdf.ts";

function exampleWith(change: (part: Record<string, unknown>) => void = () => {}) {
  const file = JSON.parse(
    readFileSync(new URL("../../examples/lens-box-cut-outs.json", import.meta.url), "utf8"),
  );
  change(file.part);
  const reading = readJob(JSON.stringify(file));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return { job: reading.job, answer: check(reading.job) };
}

/** Web-side tangent lines: 25 − 1.8 and one allowance of π/2·(1 + 0.44·0.8); 86.4 further on. */
const NEAR = 23.2 + (Math.PI / 2) * 1.352;
const FAR = NEAR + 86.4;

describe("drawBlank with cut-outs", () => {
  const { job, answer } = exampleWith();
  const { entities } = readDxf(toDxf(drawBlank(job, answer)));
  const cut = entities.filter(({ layer }) => layer === dxfLayer("cut"));

  test("the DXF has the holes' arcs on the cut layer, each with its centre and radius", () => {
    const arcs = cut.filter(({ type }) => type === "ARC");
    const at = (x: number, y: number) =>
      arcs
        .filter((arc) => Math.hypot(arc.x! - x, arc.y! - y) < 1e-4)
        .reduce((sum, arc) => sum + sweep(arc), 0);
    for (const arc of arcs) expect(arc.r).toBeCloseTo(25.4 / 16, 4);
    // Three quarters of a hole lie in the sheet at a corner, half of one where the notch runs on past the bend.
    for (const [x, y] of [
      [NEAR, 20],
      [NEAR, 180],
      [FAR, 20],
      [FAR, 180],
    ] as const) {
      expect(at(x, y)).toBeCloseTo(1.5 * Math.PI, 2);
    }
    expect(at(NEAR, 90)).toBeCloseTo(Math.PI, 3);
    expect(at(NEAR, 110)).toBeCloseTo(Math.PI, 3);
  });

  test("no bend line runs where the sheet is cut away", () => {
    const lines = entities.filter(({ type, layer }) => type === "LINE" && /BEND|SIGHT/.test(layer));
    const low = lines.map(({ start, end }) => Math.min(start!.y, end!.y));
    const high = lines.map(({ start, end }) => Math.max(start!.y, end!.y));
    // Corners are cut away to 20 and from 180; the notch through bend 1 lies from 90 to 110.
    expect(Math.min(...low)).toBeCloseTo(20, 6);
    expect(Math.max(...high)).toBeCloseTo(180, 6);
    for (const { start, end } of lines) {
      if (start!.x > 30) continue;
      expect([start!.y, end!.y].sort((a, b) => a - b)).toSatisfy(
        ([from, to]: [number, number]) => to <= 90 + 1e-6 || from >= 110 - 1e-6,
      );
    }
  });

  test("the cuts close: as many starts as ends at each corner", () => {
    const [mark] = drawBlank(job, answer).marks;
    if (mark?.kind !== "outline") throw new Error("the outline comes first");
    expect(outlinePath(mark.outline).match(/Z/gu)).toHaveLength(1);
    const { job: windowed, answer: found } = exampleWith((part) => {
      part.cutOuts = [{ across: [40, 60], along: [40, 60] }];
    });
    const [holed] = drawBlank(windowed, found).marks;
    expect(holed?.kind === "outline" && outlinePath(holed.outline).match(/Z/gu)).toHaveLength(2);
  });

  test("the full-size template has the window, and each hole within a tenth, measured on the page", async () => {
    const { job: windowed, answer: found } = exampleWith((part) => {
      part.cutOuts = [
        { across: [0, 25.32], along: [0, 20] },
        { across: [40, 60], along: [45, 65] },
      ];
      part.length = 120;
    });
    const drawing = drawBlank(windowed, found);
    const pages = await readPdf(await writePdf(templatePages(drawing, A4, "blank", "mm"), "blank"));
    const runs = pages.flatMap((page) => page.runs);
    const sizes = runs.map(({ points }) => [0, 1].map((way) => span(points.map((point) => point[way]!))));
    const near = (wide: number, high: number) =>
      sizes.filter(([x, y]) => Math.abs(x! - wide) < 0.1 && Math.abs(y! - high) < 0.1).length;
    // Two sides each way; the corner's cuts are shorter by the hole.
    expect(near(20, 0)).toBeGreaterThanOrEqual(2);
    expect(near(0, 20)).toBeGreaterThanOrEqual(2);
    expect(near(0, 20 - 25.4 / 16)).toBeGreaterThanOrEqual(1);
    // The hole's three quarters at (25.32, 20): each point of a curve lies 1/16 in from one centre.
    const curves = runs.filter(({ curved }) => curved).flatMap(({ points }) => points);
    expect(curves.length).toBeGreaterThan(8);
    const [left, low] = [0, 1].map((way) => Math.min(...curves.map((point) => point[way]!)));
    const center = [left! + 25.4 / 16, low! + 25.4 / 16];
    const onHole = curves.filter(
      ([x, y]) => Math.abs(Math.hypot(x - center[0]!, y - center[1]!) - 25.4 / 16) < 0.1,
    );
    expect(onHole.length).toBeGreaterThan(8);
  });

  test("the sentence counts them, and labels tell their places along the blank", () => {
    const drawing = drawBlank(job, answer);
    expect(drawing.sentence).toContain("two bends".replace("two", "2"));
    expect(drawing.sentence).toContain("5 cut-outs and 6 relief holes");
    const words = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.words] : []));
    expect(words).toContain("20.00 mm  hole 3.17 mm wide, cut-out 1, cut-out 3");
    expect(words).toContain("32.00 mm  cut-out 5");
    expect(words).toContain("25.32 mm  cut-out 1, cut-out 2");
    expect(words).toContain("grain");
  });

  test("everything stands within the window", () => {
    const { marks, window } = drawBlank(job, answer);
    for (const mark of marks) {
      if (mark.kind !== "line") continue;
      for (const { x, y } of [mark.from, mark.to]) {
        expect(x).toBeGreaterThanOrEqual(window.min.x);
        expect(x).toBeLessThanOrEqual(window.max.x);
        expect(y).toBeGreaterThanOrEqual(window.min.y);
        expect(y).toBeLessThanOrEqual(window.max.y);
      }
    }
  });

  test("without the keys the drawing is as it was", () => {
    const { job: plain, answer: found } = exampleWith((part) => {
      for (const key of ["grain", "doubts", "cutOuts"]) delete part[key];
    });
    const kinds = drawBlank(plain, found).marks.map(({ kind, layer }) => `${layer} ${kind}`);
    expect(kinds.filter((kind) => kind === "cut outline")).toHaveLength(1);
    expect(kinds).not.toContain("note cross");
    expect(kinds.filter((kind) => kind === "grain line")).toEqual([]);
  });
});

function span(places: readonly number[]): number {
  return Math.max(...places) - Math.min(...places);
}

/** How far round an arc of the DXF runs, in radians. */
function sweep({ startAngle = 0, endAngle = 0 }: { startAngle?: number; endAngle?: number }): number {
  const turned = endAngle - startAngle;
  return turned < 0 ? turned + 2 * Math.PI : turned;
}

describe("grain", () => {
  const ends = (marks: readonly Mark[]) => {
    const [shaft] = marks;
    if (shaft?.kind !== "line") throw new Error("the shaft comes first");
    return [shaft.to.x - shaft.from.x, shaft.to.y - shaft.from.y];
  };

  test.each([
    [0, 0, 10],
    [90, 10, 0],
    [30, 5, 8.660254],
  ])("the arrow at %d° to the bend lines, which run up the page", (deg, x, y) => {
    const [dx, dy] = ends(grainArrow({ x: 3, y: 4 }, deg, 5));
    expect(dx).toBeCloseTo(x, 6);
    expect(dy).toBeCloseTo(y, 6);
  });

  test.each([
    [undefined, "Lay the blank so that its bends cross the grain of the sheet."],
    [90, "Grain across the bend lines, as it should be."],
    [120, "Grain across the bend lines, 60° from them, as it should be."],
    [0, "Grain along the bend lines: the outside of a bend may crack."],
    [170, "Grain along the bend lines, 10° from them: the outside of a bend may crack."],
  ])("%s degrees in words", (deg, words) => {
    expect(grainWords(deg)).toBe(words);
  });
});

describe("the shop sheet", () => {
  const { job, answer } = exampleWith();

  test("its strip has the cut-outs, and no bend line in them", () => {
    const { marks } = blankStrip(job, answer, 180).put(0, 0);
    // Four corners and a notch: 4 edges, two more for each corner, four more for the notch.
    expect(marks.filter(({ layer }) => layer === "cut")).toHaveLength(4 + 4 * 2 + 4);
    const tangents = marks.filter(({ layer }) => layer === "bendTangent");
    // Bend 1 is parted by the notch; its web-side line lies on a cut nowhere but beside the corners.
    expect(tangents).toHaveLength(2 * 2 + 2);
  });

  test("its table tells where to drill", () => {
    const { marks } = blankTable(job, answer, 180).put(0, 0);
    const words = marks.flatMap((mark) => (mark.kind === "text" ? [mark.words] : []));
    expect(words).toContain("Relief hole");
    expect(words.filter((one) => one === "3.17")).toHaveLength(6);
  });

  test("its set-up says how the grain lies and what comes first", () => {
    expect(setUpSentences(job, answer).slice(-3, -1)).toEqual([
      "Grain across the bend lines, as it should be.",
      "Drill the relief holes first, then cut out, smooth the edges, and bend.",
    ]);
  });
});
