import { describe, expect, it } from "vitest";
import { scaleBar } from "../../src/drawing/scaleBar.ts";
import { parseLength } from "../../src/units/length.ts";

describe("scaleBar", () => {
  it.each([
    ["mm", 14, "10 mm"],
    ["mm", 49.9, "20 mm"],
    ["in", 14, "1/2 in"],
    ["in", 60, "2 in"],
    ["mm", 0.2, "1 mm"],
  ] as const)("in %s with room for %f mm is %s long and says so", (units, room, words) => {
    const marks = scaleBar({ x: 3, y: 4 }, room, 2, units);
    const text = marks.find((mark) => mark.kind === "text");
    expect(text).toMatchObject({ words });
    const xs = marks.flatMap((mark) =>
      mark.kind === "outline" ? mark.outline.edges.map(({ from }) => from.x) : [],
    );
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(parseLength(words, units) ?? Number.NaN, 9);
    expect(Math.min(...xs)).toBe(3);
  });
});
