import { describe, expect, it } from "vitest";
import { leastMoment } from "../../src/pictures/leastMoment.ts";
import { stepPicture } from "../../src/pictures/stepPicture.ts";
import { markText } from "../drawing/markText.ts";
import { hit, stepOf } from "../jobFile/answers.ts";
import { sceneWith } from "./shapes.ts";

const scenes = (toDeg: number) => Array.from({ length: 5 }, (_, i) => sceneWith((toDeg * i) / 4));
const common = { pivot: { x: 0, y: 0 }, bendCount: 2, units: "mm", clamp: "finger" } as const;

describe("stepPicture", () => {
  it("of a bend that hits shows tools, sheet before and at contact, its way, the contact in a cross and words", () => {
    const drawing = stepPicture({ ...common, scenes: scenes(75.2), step: hit });
    expect(drawing.sentence).toBe(
      "Bend 2, flat 3 in the throat, marked face up, leaf to 92°. Stops: at 75.2° the end of flat 1 meets the finger.",
    );
    expect(markText(drawing)).toMatchInlineSnapshot(`
      "swept outline ×16
      bed outline ×1
      leaf outline ×1
      clamp outline ×1
      partBefore outline ×1
      part outline ×2
      dimension arc ×1
      dimension line ×2
      dimension text ×1
      note text ×6
      contact outline ×1
      contact cross ×1
      contact text ×1
      note outline ×1
      note line ×1
      dimension outline ×1
      dimension: 75.2°
      note: bed
      note: leaf
      note: finger
      contact: the end of flat 1 meets the finger
      note: Bend 2 · flat 3 in the throat · marked face up · leaf to 92°
      note: Stops: at 75.2° the end of flat 1 meets the finger.
      note: 10 mm"
    `);
  });

  it("of a clear bend dimensions the least clearance between its points in the user's unit", () => {
    const drawing = stepPicture({ ...common, units: "in", scenes: scenes(92), step: stepOf() });
    const found = drawing.marks.filter((mark) => mark.layer === "clearance");
    expect(found).toEqual([
      {
        kind: "dimension",
        layer: "clearance",
        from: { x: -6, y: 9 },
        to: { x: -9, y: 8 },
        words: "0.041 in",
        offsetMm: 0,
      },
    ]);
    expect(drawing.marks.some((mark) => mark.layer === "contact")).toBe(false);
    expect(markText(drawing)).toContain("note: 1/2 in");
  });

  it("shows the sheet at rest and all that it passes over within the window", () => {
    const { window, marks } = stepPicture({ ...common, scenes: scenes(92), step: stepOf() });
    for (const mark of marks) {
      if (mark.kind !== "outline" || !["part", "partBefore", "swept"].includes(mark.layer)) continue;
      for (const { from } of mark.outline.edges) {
        expect(from.x).toBeGreaterThanOrEqual(window.min.x);
        expect(from.x).toBeLessThanOrEqual(window.max.x);
        expect(from.y).toBeGreaterThanOrEqual(window.min.y);
        expect(from.y).toBeLessThanOrEqual(window.max.y);
      }
    }
  });

  it("names the members where each lies open, not on the sheet and not under the title", () => {
    const { marks } = stepPicture({ ...common, scenes: scenes(92), step: stepOf() });
    const at = (words: string) => marks.find((mark) => mark.kind === "text" && mark.words === words);
    const clamp = at("finger");
    const place = clamp?.kind === "text" ? clamp.at : { x: Number.NaN, y: Number.NaN };
    // The clamp's body lies between y = 1 and 11, behind its sloping front; the words are about 1.5 high.
    expect(place.x).toBeLessThan(-12);
    expect(place.y).toBeGreaterThan(1.5);
    expect(place.y).toBeLessThan(9);
    expect(at("bed")).toBeDefined();
    expect(at("leaf")).toBeDefined();
    expect(at("frame")).toBeUndefined();
  });

  it("wants at least one scene", () => {
    expect(() => stepPicture({ ...common, scenes: [], step: hit })).toThrow(RangeError);
  });
});

describe("leastMoment", () => {
  it("finds the scene of a measured clearance", () => {
    // At 46° the flange's end (20, 1) stands at its turned place; the point on the clamp is its lower front corner.
    const turnedEnd = sceneWith(46).sheet.edges[3]!.from;
    const clearancePoints = [
      [turnedEnd.x, turnedEnd.y],
      [-2, 1],
    ] as const;
    expect(leastMoment(scenes(92), { clearancePoints, nearest: { member: "clamp" } })).toBe(2);
  });

  it("finds where the leaf stood then", () => {
    const leafCorner = sceneWith(69).leaf.edges[1]!.from;
    const clearancePoints = [
      [-15, 0.5],
      [leafCorner.x, leafCorner.y],
    ] as const;
    expect(leastMoment(scenes(92), { clearancePoints, nearest: { member: "leaf" } })).toBe(3);
  });
});
