import { describe, expect, it } from "vitest";
import type { Layer } from "../../src/drawing/model.ts";
import { strokesOf } from "../../src/drawing/stroke.ts";
import { drawBlank } from "../../src/pictures/blankDrawing.ts";
import { markText } from "../drawing/markText.ts";
import { answerOf, jobOf, stepOf } from "../jobFile/answers.ts";

/** Tangents at 10, 12 and 30, 32 in both the answer and the job's own layout; bend 2 is made with the end clamped. */
const answer = answerOf("clear", stepOf());

function uprightAt(drawing: ReturnType<typeof drawBlank>, layer: Layer): number[] {
  return drawing.marks.flatMap((mark) => (mark.kind === "line" && mark.layer === layer ? [mark.from.x] : []));
}

describe("drawBlank", () => {
  it("has every line of the answer at its distance from the datum edge, on its layer", () => {
    const drawing = drawBlank(jobOf({ lengthMm: 100 }), answer);
    expect(uprightAt(drawing, "bendTangent")).toEqual([10, 12, 30, 32]);
    expect(uprightAt(drawing, "sightLine")).toEqual([11, 31]);
    expect(uprightAt(drawing, "bendUp")).toEqual([11]);
    expect(uprightAt(drawing, "bendDown")).toEqual([31]);
  });

  it("has the sight line of the step that makes a bend; of one that is not reached the start's", () => {
    const made = answerOf("clear", stepOf({ sightLine: 30.6 }));
    expect(uprightAt(drawBlank(jobOf(), made), "sightLine")).toEqual([11, 30.6]);
  });

  it("is cut as wide as developed and as long as the job says, at true size", () => {
    const drawing = drawBlank(jobOf({ lengthMm: 100 }), answer);
    const cut = drawing.marks.find((mark) => mark.layer === "cut");
    const corners = cut?.kind === "outline" ? cut.outline.edges.map(({ from }) => [from.x, from.y]) : [];
    expect(corners).toEqual([
      [0, 0],
      [50.8, 0],
      [50.8, 100],
      [0, 100],
    ]);
  });

  it("names every line with its running figure, in decimals of an inch", () => {
    // 10 mm = 25.197/64 in, 12 = 30.24/64, 30 = 75.59/64, 32 = 80.63/64, 11 = 27.7/64, 31 = 78.1/64; by division.
    expect(markText(drawBlank(jobOf({ units: "in" }), answer))).toMatchInlineSnapshot(`
      "cut outline ×1
      bendTangent line ×4
      bendUp line ×1
      bendDown line ×1
      sightLine line ×2
      grain text ×3
      dimension line ×9
      dimension text ×9
      dimension dimension ×2
      grain: flat 1, marked face
      grain: flat 2
      grain: flat 3
      dimension: 0, measure from this edge
      dimension: 0.394 in  tangent
      dimension: 0.433 in  sight
      dimension: 0.472 in  tangent
      dimension: 1.181 in  tangent
      dimension: 1.220 in  sight
      dimension: 1.260 in  tangent
      dimension: bend 1, up 90°
      dimension: bend 2, down 90°
      dimension: 2.000 in
      dimension: length as wanted"
    `);
  });

  it("says that a strip stands for a length the job does not give", () => {
    expect(markText(drawBlank(jobOf(), answer))).toContain("dimension: length as wanted");
    expect(markText(drawBlank(jobOf({ lengthMm: 100 }), answer))).toContain("dimension: 100.00 mm");
  });

  it("leaves room for the width's figure beside a blank that is narrower than the figure", () => {
    const narrow = { ...answer, blank: { ...answer.blank, developedWidth: 9 } };
    const { window, marks } = drawBlank(jobOf({ units: "in" }), narrow);
    const figure = marks.find((mark) => mark.kind === "dimension" && mark.from.y === mark.to.y);
    const strokes = figure === undefined ? [] : strokesOf(figure, 1);
    const words = strokes.find((stroke) => stroke.kind === "text");
    const reach = words?.kind === "text" ? words.at.x + (words.words.length * 3 * 0.55) / 2 : Number.NaN;
    expect(reach).toBeGreaterThan(9);
    expect(reach).toBeLessThan(window.max.x);
  });

  it("keeps all of its marks within its window", () => {
    const { window, marks } = drawBlank(jobOf({ lengthMm: 100 }), answer);
    for (const mark of marks) {
      if (mark.kind !== "text" && mark.kind !== "line") continue;
      const at = mark.kind === "text" ? mark.at : mark.to;
      expect(at.x).toBeGreaterThan(window.min.x);
      expect(at.x).toBeLessThan(window.max.x);
      expect(at.y).toBeGreaterThan(window.min.y);
      expect(at.y).toBeLessThan(window.max.y);
    }
  });
});
