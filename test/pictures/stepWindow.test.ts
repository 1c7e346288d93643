import { describe, expect, it } from "vitest";
import type { Scene } from "../../src/motion/scene.ts";
import { stepWindow } from "../../src/pictures/stepWindow.ts";
import { polygon, sceneWith } from "./shapes.ts";

/** A sheet of thickness 1 that reaches `back` into the throat and 20 out of it. */
const flatScene = (back: number): Scene => ({
  ...sceneWith(0),
  sheet: polygon([-back, 0], [20, 0], [20, 1], [-back, 1]),
});

describe("stepWindow", () => {
  it("shows a sheet that lies flat in the throat only near the nose", () => {
    const { window } = stepWindow([flatScene(400)], 0.02);
    expect(window.min.x).toBeGreaterThan(-45);
    expect(window.min.x).toBeLessThan(-20);
  });

  it("goes back to what stands up behind the clamp, and to the points that the picture is about", () => {
    const standing = polygon([-400, 0], [20, 0], [20, 1], [-399, 1], [-399, 30], [-400, 30]);
    // The run of a sheet's edges closes with the free end in the throat, one thickness long.
    const ordered = {
      edges: [...standing.edges.slice(-1), ...standing.edges.slice(0, -2), standing.edges.at(-2)!],
    };
    expect(stepWindow([{ ...flatScene(400), sheet: ordered }], 0.02).window.min.x).toBeLessThan(-400);
    expect(stepWindow([flatScene(400)], 0.02, [{ x: -300, y: 5 }]).window.min.x).toBeLessThan(-300);
  });

  it("keeps a strip for the title above the picture", () => {
    const { window, groundMm } = stepWindow([flatScene(30)], 0.02);
    const textMm = (window.max.x - window.min.x) * 0.02;
    expect(window.max.y - groundMm).toBeCloseTo(3.8 * textMm, 9);
    expect(groundMm).toBeGreaterThan(1);
  });
});
