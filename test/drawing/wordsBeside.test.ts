import { describe, expect, it } from "vitest";
import { wordsBeside } from "../../src/drawing/wordsBeside.ts";
import { polygon } from "../pictures/shapes.ts";

const window = { min: { x: -50, y: -50 }, max: { x: 50, y: 50 } };

describe("wordsBeside", () => {
  it("stays close, on the inner side, where nothing is in the way", () => {
    const far = polygon([0, -40], [1, -40], [1, -39]);
    expect(wordsBeside({ x: -20, y: 0 }, 10, 2, far, window)).toMatchObject({
      anchor: "start",
      at: { x: -16.8 },
    });
    expect(wordsBeside({ x: 20, y: 0 }, 10, 2, far, window)).toMatchObject({
      anchor: "end",
      at: { x: 16.8 },
    });
  });

  it("steps off a sheet that runs where the words would stand", () => {
    // A level strip from the point to the right, just where words above the point would be.
    const strip = polygon([-20, 1], [40, 1], [40, 4], [-20, 4]);
    const { at, anchor } = wordsBeside({ x: -20, y: 0 }, 10, 2, strip, window);
    expect(anchor === "end" || at.y > 4 || at.y + 2 < 1).toBe(true);
    // With nothing free to the left it must go above or below.
    const tight = { min: { x: -24, y: -50 }, max: { x: 50, y: 50 } };
    const forced = wordsBeside({ x: -20, y: 0 }, 10, 2, strip, tight);
    expect(forced.anchor).toBe("start");
    expect(forced.at.y > 4 || forced.at.y + 2 < 1).toBe(true);
  });

  it("turns inward at the window's edge", () => {
    const far = polygon([0, -40], [1, -40], [1, -39]);
    const narrow = { min: { x: -10, y: -50 }, max: { x: 90, y: 50 } };
    expect(wordsBeside({ x: 38, y: 0 }, 30, 2, far, narrow).anchor).toBe("start");
  });
});
