/**
 * Gauge rules against printed tables (test/sources/gaugeTables.ts names each) and the wording of a thickness.
 */
import { describe, expect, it } from "vitest";
import { gaugeThickness, parseThickness, thicknessHint } from "../../src/units/gauge.ts";
import { galvanizedPoundsPerSquareFoot, gaugeTables } from "../sources/gaugeTables.ts";

describe.each(gaugeTables)("$family gauge against $source", ({ family, rows, printedToIn }) => {
  it.each(rows)(`${family} %s ga is %d in`, (written, printedIn) => {
    const thicknessMm = parseThickness(`${written} ga ${family}`, "mm") ?? Number.NaN;
    expect(Math.abs(thicknessMm / 25.4 - printedIn)).toBeLessThanOrEqual(printedToIn);
  });
});

describe("gaugeThickness", () => {
  it("gives galvanized sheet the weight that SMACNA's table prints, at 41.82 lb/ft² per inch", () => {
    for (const [gauge, pounds] of galvanizedPoundsPerSquareFoot) {
      const thicknessIn = (gaugeThickness(gauge, "galvanized") ?? Number.NaN) / 25.4;
      expect(Math.abs(thicknessIn * 41.82 - pounds)).toBeLessThanOrEqual(0.00051);
    }
  });

  it("gets thinner with every number, in every family", () => {
    for (const family of ["steel", "galvanized", "stainless", "aluminum"] as const) {
      const all = Array.from({ length: 60 }, (_, i) => gaugeThickness(i - 10, family)).filter(
        (t) => t !== undefined,
      );
      expect(all.length).toBeGreaterThan(20);
      expect(all.every((t, i) => i === 0 || t < (all[i - 1] ?? 0))).toBe(true);
    }
  });

  it("knows no number outside its family's gauge, and no half number", () => {
    expect(gaugeThickness(2, "steel")).toBeUndefined();
    expect(gaugeThickness(39, "steel")).toBeUndefined();
    expect(gaugeThickness(7, "galvanized")).toBeUndefined();
    expect(gaugeThickness(-7, "stainless")).toBeUndefined();
    expect(gaugeThickness(41, "aluminum")).toBeUndefined();
    expect(gaugeThickness(20.5, "steel")).toBeUndefined();
    expect(gaugeThickness(Number.NaN, "steel")).toBeUndefined();
  });
});

describe("parseThickness", () => {
  it.each([
    ["20 ga steel", 20, "steel"],
    ["20ga steel", 20, "steel"],
    ["20-gauge mild steel", 20, "steel"],
    ["No. 20 gage cold-rolled steel", 20, "steel"],
    ["#22 GA Galvanized", 22, "galvanized"],
    ["22 ga galvanised steel sheet", 22, "galvanized"],
    ["22 ga. galv", 22, "galvanized"],
    ["20 ga stainless", 20, "stainless"],
    ["20 ga 304 stainless steel", 20, "stainless"],
    ["16 ga aluminum", 16, "aluminum"],
    ["16 gauge aluminium sheet", 16, "aluminum"],
    ["16 ga brass", 16, "aluminum"],
    ["0 ga stainless", 0, "stainless"],
    ["000 ga stainless", -2, "stainless"],
    ["3/0 ga stainless", -2, "stainless"],
    ["7/0 ga stainless", -6, "stainless"],
  ] as const)("reads %s", (written, number, family) => {
    const expected = gaugeThickness(number, family);
    expect(expected).toBeDefined();
    expect(parseThickness(written, "in")).toBe(expected);
  });

  it("takes every length too", () => {
    expect(parseThickness("0.8 mm", "in")).toBe(0.8);
    expect(parseThickness(".032", "in")).toBe(0.8128);
    expect(parseThickness(0.05, "in")).toBeCloseTo(1.27, 12);
  });

  it.each(
    [
      "20 ga",
      "ga steel",
      "20 ga wood",
      "1 ga steel",
      "020 ga steel",
      "9/0 ga aluminum",
      "20 steel",
      `2${"0".repeat(1e6)} ga steel`,
    ].map((w) => [w.slice(0, 20), w] as const),
  )("calls %j no thickness", (_, written) => {
    expect(parseThickness(written, "in")).toBeUndefined();
  });

  it("has a hint whose examples all read", () => {
    const examples = [...thicknessHint.matchAll(/"([^"]+)"/g)].map((found) => found[1] ?? "");
    expect(examples.length).toBeGreaterThan(6);
    for (const example of examples) expect(parseThickness(example, "in"), example).toBeGreaterThan(0);
  });
});
