/**
 * Hatches of section drawings: at 45° to the body's main outline, never along a working face, fixed to the body.
 * ISO 128-3 (from memory): hatching "preferably at 45° to the main outlines or lines of symmetry of the sections".
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { apartDeg, hatchOf, longEdgesDeg } from "../../src/drawing/hatch.ts";
import { polygon } from "../../src/drawing/polygon.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { turnedOutline } from "../../src/plane/move.ts";

const box = polygon([
  { x: 0, y: 0 },
  { x: 40, y: 0 },
  { x: 40, y: 10 },
  { x: 0, y: 10 },
]);

describe("hatchOf", () => {
  it("stands at 45° to a plain box, and turns with it", () => {
    expect(hatchOf("bed", box)?.angleDeg).toBeCloseTo(45, 9);
    for (const deg of [0, 17, 45, 90, 92, 135]) {
      const turned = turnedOutline(box, { x: 3, y: 1 }, (deg * Math.PI) / 180);
      expect(apartDeg(hatchOf("leaf", turned)!.angleDeg, deg + 45)).toBeCloseTo(0, 6);
    }
  });

  it("tells bed, clamp, leaf and frame of one shape apart by direction or pitch", () => {
    const hatches = (["bed", "clamp", "leaf", "frame"] as const).map((layer) => hatchOf(layer, box)!);
    expect(new Set(hatches.map(({ angleDeg, spacingMm }) => `${angleDeg} ${spacingMm}`)).size).toBe(4);
  });

  it.each(readdirSync("examples").filter((name) => name.endsWith(".json")))(
    "is within 10° of no long edge of any body of examples/%s, at any leaf angle",
    (name) => {
      const read = readJob(readFileSync(`examples/${name}`, "utf8"));
      if (!read.ok) throw new Error(name);
      const { clamp, bed, leaf, frame } = read.job.brake;
      const swung = [0, 30, 45, 75, 90, 92].map((deg) =>
        turnedOutline(leaf.outline, leaf.pivot, (deg * Math.PI) / 180),
      );
      const bodies = [
        ...clamp.outlines.map((body) => ["clamp", body] as const),
        ["bed", bed] as const,
        ...swung.map((body) => ["leaf", body] as const),
        ...frame.map((piece) => ["frame", piece] as const),
      ];
      for (const [layer, body] of bodies) {
        const angle = hatchOf(layer, body)!.angleDeg;
        for (const edge of longEdgesDeg(body)) expect(apartDeg(angle, edge)).toBeGreaterThan(10);
      }
    },
  );
});
