import { describe, expect, it } from "vitest";
import { sweptBand } from "../../src/pictures/sweptBand.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { stripAt } from "./shapes.ts";

function area(outline: Outline): number {
  return outline.edges.reduce((sum, { from, to }) => sum + (from.x * to.y - to.x * from.y) / 2, 0);
}

function inside(outline: Outline, x: number, y: number): boolean {
  const sides = outline.edges.map(
    ({ from, to }) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x),
  );
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

const poses = Array.from({ length: 31 }, (_, i) => stripAt(i * 3));

describe("sweptBand", () => {
  it("covers the sector that the flange's face runs through: R²·α/2 of plane geometry", () => {
    // The face from the origin to R = 20 through a quarter turn; its triangles stay under the sector by sin 3°/3°.
    const face = sweptBand(poses).filter(
      ({ edges }) => Math.hypot(edges[0]!.from.x, edges[0]!.from.y) < 1e-9,
    );
    const swept = face.reduce((sum, piece) => sum + Math.abs(area(piece)), 0);
    expect(swept).toBeGreaterThan(((20 * 20 * Math.PI) / 4) * 0.999);
    expect(swept).toBeLessThanOrEqual((20 * 20 * Math.PI) / 4);
  });

  it("leaves the clamped side alone", () => {
    expect(sweptBand(poses).some((piece) => inside(piece, -15, 0.5))).toBe(false);
  });

  it("has nothing to show of a sheet that has not moved", () => {
    expect(sweptBand([stripAt(0)])).toEqual([]);
    expect(sweptBand([stripAt(40), stripAt(40)]).every((piece) => Math.abs(area(piece)) < 1e-12)).toBe(true);
  });
});
