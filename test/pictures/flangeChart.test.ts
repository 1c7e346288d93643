/**
 * The return flange chart as marks: curves where the data say, the part's dot, a window that holds it all.
 */
import { describe, expect, it } from "vitest";
import { A4 } from "../../src/drawing/pageSize.ts";
import type { FlangeChart } from "../../src/jobFile/flangeChart.ts";
import { chartPages } from "../../src/pictures/chartPage.ts";
import { drawFlangeChart } from "../../src/pictures/flangeChart.ts";
import { flangeLimit } from "../../src/words/chartWords.ts";

const chart: FlangeChart = {
  brake: "finger brake",
  metal: "mild steel",
  thickness: 0.8,
  insideRadius: 0.8,
  mostFlange: 60,
  webs: [10, 20, 30],
  curves: [
    {
      angle: 90,
      overbend: 91,
      points: [
        { web: 4, flange: null },
        { web: 5, flange: 3 },
        { web: 30, flange: 28 },
        { web: 31, flange: 60 },
      ],
      row: [8, 18, 28],
    },
  ],
  part: [{ flat: 2, web: 15, flange: 12.5, angle: 90, longest: 13 }],
};

describe("drawFlangeChart", () => {
  const drawing = drawFlangeChart(chart, "mm");
  const lines = drawing.marks.filter((mark) => mark.kind === "line");
  const { min, max } = drawing.window;

  it("draws the curve at true size from the first web that can be made", () => {
    expect(lines).toContainEqual(
      expect.objectContaining({ from: { x: 5, y: 3 }, to: { x: 30, y: 28 }, layer: "cut" }),
    );
    expect(lines.some(({ from }) => from.x === 4)).toBe(false);
  });

  it("cuts a curve that runs off the top at the top", () => {
    const top = Math.max(...lines.map(({ from, to }) => Math.max(from.y, to.y)));
    expect(top).toBeLessThanOrEqual(31);
    const steep = lines.find(({ from }) => from.x === 30 && from.y === 28)!;
    expect(steep.to.y).toBeCloseTo(top, 9);
    // On the line from (30, 28) to (31, 60).
    expect(steep.to.x).toBeCloseTo(30 + (top - 28) / 32, 9);
  });

  it("puts the part's channel as a dot at its web and flange", () => {
    const dots = drawing.marks.filter((mark) => mark.kind === "outline");
    expect(dots).toHaveLength(1);
    const [arc] = dots[0]!.outline.edges;
    expect(arc).toMatchObject({ kind: "arc", center: { x: 15, y: 12.5 } });
  });

  it("keeps all lines and words in its window, and says in a sentence what is to be seen", () => {
    for (const { from, to } of lines) {
      for (const { x, y } of [from, to]) {
        expect(x >= min.x && x <= max.x && y >= min.y && y <= max.y).toBe(true);
      }
    }
    for (const mark of drawing.marks) {
      if (mark.kind === "text") {
        expect(mark.at.y > min.y && mark.at.y < max.y && mark.at.x > min.x && mark.at.x < max.x).toBe(true);
      }
    }
    expect(drawing.sentence).toBe(
      "Longest return flange for every web on finger brake at 90°. The part's own: flat 2, web 15.00 mm with flange 12.50 mm.",
    );
  });

  it("tells the units of both axes", () => {
    const words = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.words] : []));
    expect(words).toContain("web, outside, mm");
    expect(words).toContain("return flange, outside, mm");
    expect(words).toContain("90°");
  });
});

describe("the chart on paper", () => {
  it("is one page with the picture whole on it and a row for every web", () => {
    const pages = chartPages(chart, "mm", A4);
    expect(pages).toHaveLength(1);
    const [picture] = pages[0]!.placed;
    const { min, max } = picture!.drawing.window;
    expect(picture!.at.x).toBeGreaterThan(0);
    expect(picture!.at.x + (max.x - min.x) * picture!.scale).toBeLessThan(A4.widthMm);
    const words = pages[0]!.placed.flatMap(({ drawing }) =>
      drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.words] : [])),
    );
    for (const cell of ["web, mm", "at 90°", "10", "8", "18", "28"]) expect(words).toContain(cell);
  });

  it("rounds limits down, and tells none from any", () => {
    expect(flangeLimit(7.89, 60, "mm")).toBe("7.8");
    // 7.6 mm is 19.15 sixty-fourths.
    expect(flangeLimit(7.6, 60, "in")).toBe("19/64");
    expect(flangeLimit(null, 60, "in")).toBe("none");
    expect(flangeLimit(60, 60, "in")).toBe("any");
  });
});
