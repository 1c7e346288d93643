import { describe, expect, it } from "vitest";
import { DAY, NIGHT, styleRules } from "../../src/drawing/svgStyle.ts";

/** Relative luminance and contrast ratio as WCAG 2.2 (W3C) defines them. */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const [r, g, b] = channels.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

describe("styleRules", () => {
  it.each([
    ["day", DAY],
    ["night", NIGHT],
  ])("sets words by %s with at least 4.5 to 1 (WCAG 2.2, 1.4.3) on what they stand on", (_, palette) => {
    const ink: Readonly<Record<string, string>> = palette;
    for (const colour of Object.values(ink)) expect(styleRules(1)).toContain(colour);
    for (const [word, ground] of [
      ["ink", "paper"],
      ["ink", "steel"],
      ["ink", "tint"],
      ["signal", "paper"],
      ["signal", "steel"],
      ["scribe", "dye"],
    ]) {
      expect(contrast(ink[word!]!, ink[ground!]!), `${word} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
    // Lines that carry meaning: 3 to 1 (WCAG 2.2, 1.4.11).
    expect(contrast(ink.graphite!, ink.paper!)).toBeGreaterThanOrEqual(3);
    expect(contrast(ink.fine!, ink.steel!)).toBeGreaterThanOrEqual(3);
  });

  it("uses the signal colour for contact and nothing else", () => {
    const users = styleRules(1)
      .split(/\n|(?<=\})/u)
      .filter((rule) => rule.includes(DAY.signal) || rule.includes(NIGHT.signal));
    expect(users.length).toBeGreaterThan(0);
    for (const rule of users) expect(rule).toMatch(/^(@media \S+\{)?(\.contact|\.hatch)/u);
  });

  it("stands without variables, so that a reader of plain SVG knows every colour", () => {
    for (const onPaper of [false, true]) expect(styleRules(1, onPaper)).not.toMatch(/var\(|--\w/u);
    // The first rules are those by day, before any query that a plain reader would not understand.
    expect(styleRules(1).split("@media")[0]).toContain(`.part .face{fill:${DAY.ink}`);
  });
});
