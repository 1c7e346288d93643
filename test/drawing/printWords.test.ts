/**
 * Words on a PDF page. Widths: the published metrics of Helvetica and Helvetica-Bold (font metrics files: figure 556,
 * space 278, A 667 and 722 of 1000; from memory).
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printable, wordsWidth, wrapWords } from "../../src/drawing/printWords.ts";

describe("wordsWidth", () => {
  test.each([
    ["12", 3, (2 * 556 * 3) / 1000],
    [" ", 3, (278 * 3) / 1000],
    ["A", 3, (667 * 3) / 1000],
    ["A", 6, (722 * 6) / 1000],
  ])("%j at %f mm is %f mm wide", (words, height, width) => {
    expect(wordsWidth(words, height)).toBeCloseTo(width, 9);
  });
});

describe("printable", () => {
  test.each([
    ["3⁄8 in", "3/8 in"],
    ["−0.003", "-0.003"],
    ["90° ± 1", "90° ± 1"],
    ["½", "½"],
    ["⅜", " 3/8"],
    ["≈ 5", "about  5"],
    ["Łódź", "?ódz"],
    ["漢", "?"],
    ["tab\there", "tab?here"],
  ])("%j prints as %j", (words, printed) => {
    expect(printable(words)).toBe(printed);
  });

  test("whatever is typed can be measured and printed", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 40 }), (words) => {
        expect(Number.isFinite(wordsWidth(words, 3))).toBe(true);
        expect(printable(printable(words))).toBe(printable(words));
      }),
      { numRuns: 500, seed: 4 },
    );
  });
});

describe("wrapWords", () => {
  test("a whole number and its fraction stay on one line", () => {
    const width = wordsWidth("face 1 11/16", 3);
    expect(wrapWords("front face 1 11/16 in behind", 3, width)).toEqual([
      "front face",
      "1 11/16 in",
      "behind",
    ]);
  });

  test("no line is wider than asked, and no letter is lost", () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 120 }),
        fc.double({ min: 8, max: 80, noNaN: true }),
        (words, width) => {
          const lines = wrapWords(words, 3, width);
          for (const line of lines) expect(wordsWidth(line, 3)).toBeLessThanOrEqual(width + 1e-9);
          expect(lines.join("").replace(/\s/gu, "")).toBe(words.replace(/\s/gu, ""));
        },
      ),
      { numRuns: 300, seed: 4 },
    );
  });
});
