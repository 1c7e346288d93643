/**
 * Lengths as written. Checks: the international inch (25.4 mm exactly, 1959 agreement) and plain arithmetic of fractions.
 * Round trips run on fixed seeds.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength, nearestSixtyFourth, parseLength } from "../../src/units/length.ts";

describe("parseLength", () => {
  it.each<[string | number, number]>([
    ["3/8", 9.525],
    ["1 1/2", 38.1],
    ["1-1/2", 38.1],
    ["1 - 1/2", 38.1],
    ["-1 1/2", -38.1],
    ["0.032", 0.8128],
    [".032", 0.8128],
    ["5.", 127],
    ["+2", 50.8],
    ["1/4 in", 6.35],
    ['3/8"', 9.525],
    ["12 in.", 304.8],
    ["1 inch", 25.4],
    ["2 inches", 50.8],
    ["½", 12.7],
    ["1½", 38.1],
    ["1 ½", 38.1],
    ["3⁄8", 9.525],
    ["1³⁄₈", 34.925],
    ["⅜ in", 9.525],
    ["−1/2", -12.7],
    ["5 mm", 5],
    ["5 millimeters", 5],
    ["12,5 mm", 12.5],
    ["0,625", 15.875],
    [",625", 15.875],
    ["1250,5 mm", 1250.5],
    ["5mm", 5],
    ["0.8 MM", 0.8],
    ["1/2 mm", 0.5],
    ["  3/8  ", 9.525],
    [0.5, 12.7],
    [0, 0],
  ])("reads %j in inches as %d mm, exactly", (written, mm) => {
    expect(parseLength(written, "in")).toBe(mm);
  });

  it("reads a bare number in the default unit and keeps a written unit", () => {
    expect(parseLength("1 1/2", "mm")).toBe(1.5);
    expect(parseLength(3.25, "mm")).toBe(3.25);
    expect(parseLength('3/8"', "mm")).toBe(9.525);
    expect(parseLength("0.032", "mm")).toBe(0.032);
  });

  const noLengths: readonly (string | number)[] = [
    "",
    "   ",
    "in",
    "mm",
    "about 3",
    "abc",
    "1e3",
    "1,500",
    "1,5,2",
    "--1",
    "1 2",
    "1/2 1/2",
    "1 5/4",
    "3/0",
    "1 1/0",
    "0/0",
    "1.5/2",
    "1/2/3",
    "5 cm",
    "5 mm mm",
    "3/8 in in",
    "1..2",
    ".",
    "-",
    "/8",
    "NaN",
    "Infinity",
    "__proto__",
    "1 __proto__",
    "1 constructor",
    "20 ga steel",
    `${"0".repeat(40)}1`,
    "9".repeat(10_000_000),
    " ".repeat(41) + "x".repeat(50),
    Number.NaN,
    Number.POSITIVE_INFINITY,
    1e308,
  ];
  it.each(noLengths.map((written) => [String(written).slice(0, 30), written] as const))(
    "calls %j no length in inches",
    (_, written) => {
      expect(parseLength(written, "in")).toBeUndefined();
    },
  );

  it("never throws, whatever the text, and answers with a finite number or undefined", () => {
    const text = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789 ./-½⁄in"m+') }));
    fc.assert(
      fc.property(text, (written) => {
        const mm = parseLength(written, "in");
        expect(mm === undefined || Number.isFinite(mm)).toBe(true);
      }),
      { seed: 41, numRuns: 3000 },
    );
  });
});

describe("formatLength", () => {
  it.each<[number, string]>([
    [9.525, "3/8"],
    [38.1, "1 1/2"],
    [25.4, "1"],
    [0, "0"],
    [-9.525, "-3/8"],
    [-38.1, "-1 1/2"],
    [0.01, "0"],
    [-0.01, "0"],
    [1.016, "0.040"],
    [0.4, "1/64"],
    [2.54, "0.100"],
    [304.8, "12"],
  ])("writes %d mm in inches as %s", (mm, words) => {
    expect(formatLength(mm, "in")).toBe(words);
  });

  it.each<[number, string]>([
    [12.7, "12.7"],
    [5, "5"],
    [0.8128, "0.81"],
    [-0.001, "0"],
    [-2.5, "-2.5"],
    [100, "100"],
  ])("writes %d mm in mm as %s", (mm, words) => {
    expect(formatLength(mm, "mm")).toBe(words);
  });

  it("writes a dash for what is no number", () => {
    expect(formatLength(Number.NaN, "in")).toBe("–");
    expect(formatLength(Number.POSITIVE_INFINITY, "mm")).toBe("–");
  });

  it("reads back what it wrote, within 0.003 in or half of its last place", () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), (mm) => {
        const inch = parseLength(formatLength(mm, "in"), "in") ?? Number.NaN;
        expect(Math.abs(inch - mm)).toBeLessThanOrEqual(0.003 * 25.4 + 1e-9);
        const metric = parseLength(formatLength(mm, "mm"), "mm") ?? Number.NaN;
        expect(Math.abs(metric - mm)).toBeLessThanOrEqual(0.005 + 1e-9);
      }),
      { seed: 42, numRuns: 2000 },
    );
  });
});

describe("nearestSixtyFourth", () => {
  it("names the fraction in lowest terms and tells what it adds", () => {
    expect(nearestSixtyFourth(9.525)).toEqual({ words: "3/8", roundingMm: 0 });
    expect(nearestSixtyFourth(10)).toEqual({ words: "25/64", roundingMm: -0.078125 });
    expect(nearestSixtyFourth(-10)).toEqual({ words: "-25/64", roundingMm: 0.078125 });
    expect(nearestSixtyFourth(40).words).toBe("1 37/64");
  });

  it("is never more than 1/128 in off, and the words read back to mark = exact + rounding", () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), (mm) => {
        const { words, roundingMm } = nearestSixtyFourth(mm);
        expect(Math.abs(roundingMm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
        expect(parseLength(words, "in")).toBeCloseTo(mm + roundingMm, 8);
      }),
      { seed: 43, numRuns: 2000 },
    );
  });
});
