import { describe, expect, it } from "vitest";
import { labelPoint } from "../../src/drawing/labelPoint.ts";
import { polygon } from "../pictures/shapes.ts";

const window = { min: { x: -50, y: -50 }, max: { x: 50, y: 50 } };

describe("labelPoint", () => {
  it("stands in the middle of a square", () => {
    const found = labelPoint(polygon([0, 0], [40, 0], [40, 40], [0, 40]), [], window);
    expect(found?.at).toEqual({ x: 20, y: 20 });
    expect(found?.roomMm).toBeCloseTo(20, 9);
  });

  it("keeps within an L and away from the sheet that lies over it", () => {
    const ell = polygon([0, 0], [40, 0], [40, 10], [10, 10], [10, 40], [0, 40]);
    const sheet = polygon([-5, 20], [15, 20], [15, 45], [-5, 45]);
    const found = labelPoint(ell, [sheet], window);
    expect(found).toBeDefined();
    expect(found!.at.x < 10 || found!.at.y < 10).toBe(true);
    expect(found!.at.y).toBeLessThan(20);
  });

  it("is nowhere for a body out of the window", () => {
    expect(labelPoint(polygon([60, 0], [80, 0], [80, 20]), [], window)).toBeUndefined();
  });
});
