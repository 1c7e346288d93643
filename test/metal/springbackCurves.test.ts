/**
 * Springback of named metals against the published factors (Tabellenbuch Metall, test/sources/bendHandbooks.ts), and the leaf
 * angles that follow in a job: likely, and the range beside it.
 */
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { metalNamed, metalNames } from "../../src/metal/metals.ts";
import { springbackRatio } from "../../src/metal/springback.ts";
import { keptShare } from "../../src/metal/springbackCurves.ts";
import { jobOfText, soundJob } from "../jobFile/jobs.ts";
import { springbackFactors, springbackHeadings } from "../sources/bendHandbooks.ts";

function metal(name: string) {
  const found = metalNamed(name);
  if (found === undefined) throw new Error(`${name} is not in the table`);
  return found;
}

describe("keptShare", () => {
  it.each([
    ["mild steel", "DC01"],
    ["DC01", "DC01"],
    ["304 stainless", "X12CrNi18-8"],
    ["316 stainless", "X12CrNi18-8"],
    ["1.4301", "X12CrNi18-8"],
    ["copper", "E-Cu"],
    ["brass", "CuZn33"],
    ["1100-O", "Al99.0"],
    ["2024-O", "AlCuMg1"],
    ["6061-T6", "AlSiMgMn"],
    ["6082-T6", "AlSiMgMn"],
  ])("of %s is the printed factor of %s in every column", (name, row) => {
    springbackFactors[row]!.forEach((factor, i) => {
      const { likely, least, most } = keptShare(metal(name), springbackHeadings[i]! * 0.8, 0.8);
      expect(likely).toBeCloseTo(factor, 12);
      // Printed to 0.01: half a step either way belongs to the range.
      expect(least).toBeLessThanOrEqual(factor - 0.005);
      expect(most).toBeGreaterThanOrEqual(Math.min(1, factor + 0.005));
    });
  });

  it("goes straight between columns, and holds the first column for sharper bends", () => {
    expect(keptShare(metal("304 stainless"), 3.25, 1).likely).toBeCloseTo(0.96, 12);
    expect(keptShare(metal("304 stainless"), 0.3, 1).likely).toBe(0.99);
  });

  it("goes on with the formula past the last printed factor, never above it", () => {
    const { likely } = keptShare(metal("304 stainless"), 80, 1);
    const { yieldMpa, modulusMpa } = metal("304 stainless");
    const formula = springbackRatio({ insideRadiusMm: 80, thicknessMm: 1, yieldMpa, modulusMpa });
    expect(likely).toBe(Math.min(0.63, formula));
  });

  it("keeps the formula for own metals and alloys that the table has not, with a wider range", () => {
    for (const name of ["4130 normalized", "2024-T3", "7075-T6"]) {
      const { yieldMpa, modulusMpa } = metal(name);
      const own = { name: "own", yieldMpa, modulusMpa };
      const byFormula = springbackRatio({ insideRadiusMm: 3, thicknessMm: 1, yieldMpa, modulusMpa });
      expect(keptShare(metal(name), 3, 1)).toEqual(keptShare(own, 3, 1));
      expect(keptShare(own, 3, 1).likely).toBe(byFormula);
    }
  });

  it("puts least, likely and most in that order for every metal and radius", () => {
    for (const name of metalNames()) {
      for (const ratio of [0.1, 1, 2, 5, 12, 30, 70, 150, 400]) {
        const { least, likely, most } = keptShare(metal(name), ratio, 1);
        expect(least).toBeGreaterThanOrEqual(0);
        expect(least).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(most);
        expect(most).toBeLessThanOrEqual(1);
      }
    }
  });
});

describe("the leaf angle of a 90° bend", () => {
  function overbends(material: string, ratio: number) {
    const job = soundJob();
    Object.assign(job.part, { material, insideRadius: ratio * 0.8, flats: [60, 60, 60] });
    for (const bend of job.part.bends) delete bend.overbend;
    Object.assign(job, { order: undefined });
    const [step] = check(jobOfText(JSON.stringify(job))).order;
    return [step!.overbend, step!.overbendRange] as const;
  }

  // Leaf angles to 0.1° from the published factors, at r/T 1, 2.5, 4 and 10.
  it.each([
    ["304 stainless", [90.9, 92.8, 94.7, 101.1]],
    ["mild steel", [90.9, 90.9, 92.8, 93.8]],
    ["6061-T6", [91.8, 92.8, 93.8, 96.8]],
  ])("of %s is what the factors say, and its range holds it", (material, leafDeg) => {
    [1, 2.5, 4, 10].forEach((ratio, i) => {
      const [overbend, [low, high]] = overbends(material, ratio);
      expect(Math.abs(overbend - leafDeg[i]!)).toBeLessThan(0.06);
      expect(low).toBeLessThan(overbend);
      expect(high).toBeGreaterThan(overbend);
    });
  });

  it("has no range where the job gives it", () => {
    const [step] = check(jobOfText(JSON.stringify(soundJob()))).order;
    expect([step!.overbend, step!.overbendRange]).toEqual([92, [92, 92]]);
  });
});
