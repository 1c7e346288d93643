/**
 * Job files typed by hand: what may be typed is understood, and of a hundred slips each is answered in one sentence
 * that says what to type instead. JSON5 (json5.org) says what may stand in such a file.
 */
import json5 from "json5";
import { describe, expect, it } from "vitest";
import { dataOf } from "../../src/jobFile/jsonText.ts";
import { jsonFault } from "../../src/jobFile/jsonWalk.ts";
import { problemSentence } from "../../src/jobFile/problem.ts";
import { textCoding } from "../../src/jobFile/textCoding.ts";
import { jobOfText, problemsOf } from "./jobs.ts";
import { TYPED, typedSlips } from "./typedSlips.ts";

describe("readJob of a file typed by hand", () => {
  it("understands remarks, commas too many, single quotes, bare keys, .625, capitals and units written out", () => {
    const { units, part, brake } = jobOfText(TYPED);
    expect([units, part.name, part.metal.name]).toEqual(["in", 'trough "A"', "mild steel"]);
    expect(part.thicknessMm).toBeCloseTo(0.032 * 25.4, 12);
    expect(part.bends.map((bend) => bend.turn)).toEqual(["up", "down"]);
    expect([brake.liftMm, brake.openEnds]).toEqual([38.1, true]);
    expect(jobOfText(`\uFEFF${TYPED}`)).toEqual(jobOfText(TYPED));
    expect(jobOfText(TYPED.replaceAll("\n", "\r\n"))).toEqual(jobOfText(TYPED));
  });

  it("understands a decimal comma inside quotes, and strengths in ksi", () => {
    const comma = TYPED.replace('"length": 12', '"length": "304,8 mm"');
    expect(jobOfText(comma).part.lengthMm).toBe(304.8);
    const own = TYPED.replace('"Mild Steel"', '{ name: "tin", yield: "35 ksi", modulus: "29000 ksi" }');
    expect(jobOfText(own).part.metal.yieldMpa).toBeCloseTo(241.3, 1);
  });

  it("has a hundred slips to answer", () => {
    expect(typedSlips.length).toBeGreaterThanOrEqual(100);
  });

  it.each(typedSlips)("%s: one sentence that says what to type", (_, from, to, says) => {
    expect(TYPED.split(from).length, `"${from}" stands in the job once`).toBeGreaterThan(1);
    const said = problemsOf(TYPED.replace(from, to)).map(problemSentence);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(says);
    expect(said[0]).not.toMatch(/undefined|NaN;|\[object|JSON5|\n/u);
    expect(said[0]!.length).toBeLessThan(300);
  });

  it("ends a tower of 50,000 brackets in one sentence", () => {
    for (const tower of [
      "[".repeat(50_000),
      "{a:".repeat(50_000),
      `${"[".repeat(50_000)}${"]".repeat(50_000)}`,
    ]) {
      expect(problemsOf(tower).map(problemSentence)).toEqual([
        expect.stringMatching(/nested at most 20 deep/u),
      ]);
    }
  });

  it("asks for a text file where the signs are no text", () => {
    expect(problemsOf("\u0000n\u0000").map(problemSentence)).toEqual([
      expect.stringMatching(/saved as UTF-8/u),
    ]);
  });
});

describe("jsonFault", () => {
  it.each([
    ["{a: 1,}", true],
    ["[1, 2,]", true],
    ["[,]", false],
    ["[1,,2]", false],
    ["[+.5, 5., -0.5e3]", true],
    ["[05]", false],
    ["{a b: 1}", false],
    ["{\u00e9: 'it\\'s \"so\"'}", true],
    ["[1] /* so */ // so", true],
    ["[1] /* so", false],
    ["{true: 1, $a_1: 2}", true],
    ["[5//so\n,6/*so*/]", true],
    ["", false],
  ])("takes what JSON5 takes: %s", (text, taken) => {
    let parses = true;
    try {
      json5.parse(text);
    } catch {
      parses = false;
    }
    expect(parses).toBe(taken);
    expect(jsonFault(text) === undefined).toBe(taken);
    if (taken) expect(dataOf(text, 100)).toEqual({ ok: true, value: json5.parse(text) });
  });
});

describe("textCoding", () => {
  const coded = (text: string, bigEnd: boolean, mark: boolean): number[] =>
    [...(mark ? `\uFEFF${text}` : text)].flatMap((sign) => {
      const [high, low] = [sign.charCodeAt(0) >> 8, sign.charCodeAt(0) & 255];
      return bigEnd ? [high, low] : [low, high];
    });

  it.each([
    [true, true, "utf-16be"],
    [true, false, "utf-16be"],
    [false, true, "utf-16le"],
    [false, false, "utf-16le"],
  ] as const)("knows UTF-16, big end first %s, with its mark %s: %s", (bigEnd, mark, coding) => {
    const bytes = Uint8Array.from(coded(TYPED, bigEnd, mark));
    expect(textCoding(bytes)).toBe(coding);
    expect(jobOfText(new TextDecoder(coding).decode(bytes))).toEqual(jobOfText(TYPED));
  });

  it("takes the rest for UTF-8, an empty file too", () => {
    expect(textCoding(new TextEncoder().encode("{}"))).toBe("utf-8");
    expect(textCoding([])).toBe("utf-8");
  });
});
